package slabwright.desk.canvas;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.scene.FloorPicture;
import slabwright.desk.model.scene.FloorPictureMaker;
import slabwright.desk.model.scene.PlanItemShape;
import slabwright.drawing.Fill;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.drawing.label.Label;
import slabwright.drawing.label.LabelPlacer;
import slabwright.figures.MarkStyles;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.Mark;

/**
 * The names of marks and doorways, each on a plate clear of the others; one that finds no room at
 * the scale is left out until one looks closer. Frame: the site's; kept for one scale.
 */
final class NameInks {
  private static final TextStyle WORDS = TextStyle.bold(2.5);
  private static final TextStyle DOOR = TextStyle.bold(2.6).in(MarkStyles.WAY_IN.colour());
  private static final int MOST = 60;

  /** Height of a name's box, and what is kept free beside an arrow, mm of paper. */
  private static final double HIGH = 3.4;

  private static final double CLEAR = 1;

  /** Half the width of the sign of a mark that is a place, mm. */
  private static final double SIGN = 2.2;

  /**
   * What is written there before, mm on the site.
   *
   * @param boxes of words
   * @param lines that no name lies on
   */
  public record Taken(List<Bounds> boxes, List<Line> lines) {
    public static final Taken NOTHING = new Taken(List.of(), List.of());

    public Taken {
      boxes = List.copyOf(boxes);
      lines = List.copyOf(lines);
    }
  }

  private int lengths;
  private Optional<FloorPicture> of = Optional.empty();
  private double at;
  private boolean withMarks = true;
  private List<Ink> inks = List.of();

  /**
   * The names at a scale.
   *
   * @param mm site millimetres to one of paper
   * @param marks whether marks are named too, or doorways alone
   * @param dimensions how many lengths are written; names are placed anew when that changes
   * @param taken what they keep clear of
   */
  public List<Ink> of(
      FloorPicture picture, double mm, boolean marks, int dimensions, Supplier<Taken> taken) {
    boolean same = at == mm && withMarks == marks && lengths == dimensions;
    if (of.isEmpty() || !same || !of.get().equals(picture)) {
      lengths = dimensions;
      withMarks = marks;
      of = Optional.of(picture);
      at = mm;
      inks = new Placing(picture, mm, taken.get()).place(marks);
    }
    return inks;
  }

  /** Places the names of one picture; paper frame is the site's shrunk by the scale, y down. */
  private static final class Placing {
    private final FloorPicture picture;
    private final double mm;
    private final LabelPlacer labels;
    private final List<Ink> inks = new ArrayList<>();

    Placing(FloorPicture picture, double mm, Taken taken) {
      this.picture = picture;
      this.mm = mm;
      Bounds b = picture.bounds().grown(60 * mm);
      this.labels = new LabelPlacer(box(b), 0.6);
      taken.boxes().forEach(t -> labels.avoid(box(t)));
      for (Line line : taken.lines()) {
        List<Vec> ends = line.points();
        labels.avoid(paper(ends.get(0)), paper(ends.get(ends.size() - 1)));
      }
      picture.things().stream()
          .filter(t -> t.path().size() == 1)
          .map(t -> paper(t.path().get(0)))
          .forEach(v -> labels.avoid(around(v, SIGN)));
      picture.area().doorways().forEach(d -> way(d).ifPresent(this::keepClear));
    }

    private static Bounds around(Vec v, double by) {
      return new Bounds(v.x() - by, v.y() - by, v.x() + by, v.y() + by);
    }

    /** The dashes of a way in and its arrow stay clear of all names. */
    private void keepClear(Way w) {
      labels.avoid(w.from(), w.to());
      labels.avoid(around(w.arrow(), FloorPictureMaker.ARROW / 2));
    }

    /** A way in on paper: its opening, the middle of its arrow, and which way is out, length 1. */
    private record Way(Vec from, Vec to, Vec arrow, Vec out) {}

    private Optional<Way> way(Doorway d) {
      List<Vec> gap = picture.shape().doorway(d).points();
      if (gap.size() < 2 || !d.wayIn()) {
        return Optional.empty();
      }
      Vec a = gap.get(0);
      Vec b = gap.get(gap.size() - 1);
      Vec out = b.minus(a).unit().left().times(picture.shape().floorOnLeft() ? -1 : 1);
      Vec arrow = a.towards(b, 0.5).plus(out.times(FloorPictureMaker.ARROW_OUT));
      return Optional.of(new Way(paper(a), paper(b), paper(arrow), new Vec(out.x(), -out.y())));
    }

    private Bounds box(Bounds b) {
      return new Bounds(b.minX() / mm, -b.maxY() / mm, b.maxX() / mm, -b.minY() / mm);
    }

    private Vec paper(Vec site) {
      return new Vec(site.x() / mm, -site.y() / mm);
    }

    private Vec site(Vec paper) {
      return new Vec(paper.x() * mm, -paper.y() * mm);
    }

    List<Ink> place(boolean marks) {
      picture.area().doorways().forEach(this::doorway);
      picture.area().marks().stream()
          .filter(m -> marks && !m.name().isBlank())
          .filter(m -> picture.area().marks().size() <= MOST || fits(m))
          .forEach(this::mark);
      return inks;
    }

    private boolean fits(Mark m) {
      return thing(m).map(t -> t.bounds().width() / mm > width(m.name())).orElse(false);
    }

    private static double width(String words) {
      return TextMeasure.width(words, WORDS) + 1.6;
    }

    private Optional<PlanItemShape> thing(Mark m) {
      return picture.thing(new PlanItem.OfMark(m.id()));
    }

    private void mark(Mark m) {
      thing(m).ifPresent(t -> mark(m, t));
    }

    private void mark(Mark m, PlanItemShape t) {
      Bounds b = box(t.bounds());
      double w = width(m.name());
      double away = t.path().size() == 1 ? 4.6 : 2.4;
      Vec below = new Vec(b.middle().x(), b.maxY() + away);
      Vec above = new Vec(b.middle().x(), b.minY() - away);
      boolean inside = !t.region().isEmpty() && b.width() > w && b.height() > 3.4;
      Vec middle = inside ? paper(t.middle()) : below;
      if (inside && (middle.x() - w / 2 < b.minX() || middle.x() + w / 2 > b.maxX())) {
        middle = new Vec(b.middle().x(), middle.y());
      }
      Vec right = new Vec(b.maxX() + w / 2 + away - 0.6, b.middle().y());
      Vec left = new Vec(b.minX() - w / 2 - away + 0.6, b.middle().y());
      Label label =
          Label.box(middle, w, 3.4, 0).wishing(List.of(middle, below, above, right, left));
      labels.place(label).ifPresent(p -> plate(p.middle(), m.name(), WORDS, w));
    }

    private void doorway(Doorway d) {
      if (!d.name().isBlank()) {
        way(d).ifPresent(w -> name(d.name(), w));
      }
    }

    /** Beside the arrow, where no line to another floor's doorway runs; else beyond it. */
    private void name(String words, Way way) {
      double w = TextMeasure.width(words, DOOR) + 1.6;
      Vec out = way.out();
      Vec along = out.left();
      double half = Math.abs(along.x()) * w / 2 + Math.abs(along.y()) * HIGH / 2;
      double deep = Math.abs(out.x()) * w / 2 + Math.abs(out.y()) * HIGH / 2;
      double aside = FloorPictureMaker.ARROW / 2 + CLEAR + half;
      Vec door = way.from().towards(way.to(), 0.5).plus(out.times(deep + CLEAR));
      Vec arrow = way.arrow();
      List<Vec> wishes =
          List.of(
              arrow.plus(along.times(aside)),
              arrow.minus(along.times(aside)),
              door.plus(along.times(aside)),
              door.minus(along.times(aside)),
              arrow.plus(out.times(FloorPictureMaker.ARROW / 2 + CLEAR + deep)));
      labels
          .place(Label.box(arrow, w, HIGH, 9).wishing(wishes).nearBy(12))
          .ifPresent(p -> inks.add(Text.middle(foot(p.middle()), words, DOOR)));
    }

    private Vec foot(Vec middle) {
      return site(new Vec(middle.x(), middle.y() + WORDS.size() * TextMeasure.CAP_HEIGHT / 2));
    }

    private void plate(Vec middle, String words, TextStyle style, double w) {
      Vec a = site(new Vec(middle.x() - w / 2, middle.y() + 1.75));
      Vec b = site(new Vec(middle.x() + w / 2, middle.y() - 1.75));
      Bounds box = new Bounds(a.x(), a.y(), b.x(), b.y());
      inks.add(Fill.of(Palette.WHITE, box));
      inks.add(
          Stroke.rings(
              Pen.of(0.12, Palette.RULE),
              List.of(
                  slabwright.shape.Ring.rectangle(
                      box.minX(), box.minY(), box.maxX(), box.maxY()))));
      inks.add(Text.middle(foot(middle), words, style));
    }
  }
}
