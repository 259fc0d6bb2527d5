package slabwright.desk.canvas;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import slabwright.desk.model.scene.PaleFloor;
import slabwright.drawing.Fill;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.OutlineShape;
import slabwright.site.Site;

/** The floor areas beside the one looked at, and which doorway leads to which. */
final class PaleLayer {
  /** How much of a pale floor's lines and of its ground is seen. */
  static final double LINES = 0.38;

  private static final double NEAR = 1;
  private static final TextStyle NAME = TextStyle.bold(3.6).in(Palette.SOFT);
  private static final Pen LEADS = Pen.of(0.55, Palette.BLUE).dashed(1.6, 1);
  private static final Pen SEALED = Pen.of(0.9, Palette.RED);

  private PaleLayer() {}

  static List<Ink> floors(List<PaleFloor> others) {
    List<Ink> inks = new ArrayList<>();
    for (PaleFloor f : others) {
      inks.add(Fill.of(Palette.WHITE, f.floor()));
      inks.addAll(f.inks());
    }
    return inks;
  }

  /**
   * Their names, clear of other words; none where too little is seen of one, or no room is left.
   *
   * @param seen the part of the site that nothing lies over, mm
   * @param taken boxes of words, mm on the site
   * @param paper site mm to one of paper
   */
  static List<Ink> names(List<PaleFloor> others, Bounds seen, List<Bounds> taken, double paper) {
    return others.stream().flatMap(f -> name(f, seen, taken, paper).stream()).toList();
  }

  private static Optional<Ink> name(PaleFloor f, Bounds seen, List<Bounds> taken, double paper) {
    Bounds b = common(f.floor().bounds(), seen);
    double wide = TextMeasure.width(f.area().name(), NAME) * paper / 2;
    double high = NAME.size() * paper;
    if (b.isEmpty() || b.width() < 2 * wide || b.height() < 2 * high) {
      return Optional.empty();
    }
    return DoubleStream.of(0, -0.25, 0.25)
        .mapToObj(k -> b.middle().plus(new Vec(0, k * b.height())))
        .filter(v -> taken.stream().noneMatch(box(v, wide, high)::meets))
        .findFirst()
        .map(v -> Text.middle(v, f.area().name(), NAME));
  }

  private static Bounds common(Bounds a, Bounds b) {
    return a.meets(b)
        ? new Bounds(
            Math.max(a.minX(), b.minX()),
            Math.max(a.minY(), b.minY()),
            Math.min(a.maxX(), b.maxX()),
            Math.min(a.maxY(), b.maxY()))
        : Bounds.EMPTY;
  }

  private static Bounds box(Vec middle, double wide, double high) {
    return new Bounds(middle.x() - wide, middle.y() - high, middle.x() + wide, middle.y() + high);
  }

  /**
   * A broken line from each doorway to the one that it leads to; a bar across where it is sealed.
   *
   * @param paper site mm to one of paper
   */
  static List<Ink> links(Site site, double paper) {
    List<Ink> inks = new ArrayList<>();
    for (FloorArea a : site.areas()) {
      for (Doorway d : a.doorways()) {
        Optional<Vec> from = middle(a, d);
        Optional<Vec> to =
            d.passage()
                .leadsTo()
                .flatMap(
                    l ->
                        site.area(l.area())
                            .flatMap(o -> o.doorway(l.doorway()).flatMap(e -> middle(o, e))));
        if (from.isPresent() && to.isPresent() && from.get().distanceTo(to.get()) > NEAR) {
          inks.add(Stroke.lines(LEADS, List.of(new Line(List.of(from.get(), to.get())))));
        }
        if (d.passage().sealed()) {
          inks.add(Stroke.lines(SEALED, List.of(OutlineShape.of(a.outline(), 1).doorway(d))));
        } else {
          from.filter(f -> d.passage().leadsTo().isPresent())
              .ifPresent(f -> inks.add(dot(f, paper)));
        }
      }
    }
    return inks;
  }

  private static Ink dot(Vec at, double paper) {
    double r = 0.8 * paper;
    return Fill.of(Palette.BLUE, Ring.rectangle(at.x() - r, at.y() - r, at.x() + r, at.y() + r));
  }

  private static Optional<Vec> middle(FloorArea a, Doorway d) {
    List<Vec> gap = OutlineShape.of(a.outline(), 1).doorway(d).points();
    return gap.size() < 2
        ? Optional.empty()
        : Optional.of(gap.get(0).towards(gap.get(gap.size() - 1), 0.5));
  }
}
