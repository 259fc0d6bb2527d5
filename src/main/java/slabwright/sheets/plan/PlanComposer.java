package slabwright.sheets.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.drawing.Clip;
import slabwright.drawing.Colour;
import slabwright.drawing.CoordinateFrame;
import slabwright.drawing.Dimension;
import slabwright.drawing.Drawing;
import slabwright.drawing.Fill;
import slabwright.drawing.Ink;
import slabwright.drawing.InkIndex;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Symbol;
import slabwright.drawing.Text;
import slabwright.drawing.TextBox;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.drawing.View;
import slabwright.drawing.label.Label;
import slabwright.drawing.label.LabelPlacer;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.sheets.page.TypeSizes;

/**
 * One plan in one field of a page: geometry first, then dimensions and labels, which find room for
 * themselves. Points are given on the model and drawn at the view's scale.
 */
public final class PlanComposer {
  private static final double NEXT_ROW = 6.5;

  /** What lies farther off the field than this is left out, mm of paper. */
  private static final double SLACK = 10;

  /** Lines through a region that words keep off are no farther apart, mm of paper. */
  private static final double INSIDE = 2;

  private final View view;
  private final Bounds field;
  private final TypeSizes type;
  private final LabelPlacer labels;
  private final DimensionFit lines;
  private final List<Ink> under = new ArrayList<>();
  private final List<Ink> over = new ArrayList<>();

  PlanComposer(View view, Bounds field, TypeSizes type) {
    this.view = view;
    this.field = field;
    this.type = type;
    this.labels = new LabelPlacer(field, 0.7 * type.k());
    this.lines = new DimensionFit(labels);
  }

  public View view() {
    return view;
  }

  TypeSizes type() {
    return type;
  }

  /** Adds inks in the model's frame. */
  public PlanComposer addInks(List<? extends Ink> inks) {
    for (Ink ink : inks) {
      Ink placed = ink.placed(view);
      if (placed.reach().grown(SLACK).meets(field)) {
        under.add(placed);
      }
    }
    return this;
  }

  /** Adds of inks in the model's frame what can show on the field. */
  public PlanComposer addInks(InkIndex inks) {
    Bounds seen = field.grown(2 * SLACK);
    Vec corner = view.onModel(new Vec(seen.minX(), seen.minY()));
    Vec opposite = view.onModel(new Vec(seen.maxX(), seen.maxY()));
    return addInks(inks.near(Bounds.of(List.of(corner, opposite))));
  }

  /** Keeps words off these lines of the model. */
  public PlanComposer keepOff(List<Ring> rings) {
    for (Ring ring : rings) {
      Ring placed = ring.map(view.map());
      if (placed.bounds().meets(field)) {
        labels.avoid(placed);
      }
    }
    return this;
  }

  /** Keeps words off a straight line of the model. */
  public PlanComposer keepOff(Vec from, Vec to) {
    labels.avoid(view.onPaper(from), view.onPaper(to));
    return this;
  }

  /** Keeps words off a whole quadrilateral of the model, but for a hair along its rim. */
  public PlanComposer keepOffWhole(Ring quad) {
    Ring placed = quad.map(view.map());
    Vec middle = placed.bounds().middle();
    labels.avoid(
        new TextBox(
            "", new Ring(placed.points().stream().map(p -> p.towards(middle, 0.02)).toList())));
    return this;
  }

  /** Whether something of the model within these bounds can show on the field. */
  public boolean shows(Bounds model) {
    Bounds paper =
        Bounds.of(
            List.of(
                view.onPaper(new Vec(model.minX(), model.minY())),
                view.onPaper(new Vec(model.maxX(), model.maxY()))));
    return paper.grown(SLACK).meets(field);
  }

  /** Keeps words off all of a region of the model, not only its rim. */
  public PlanComposer keepOffInside(Region region) {
    Bounds b = region.bounds();
    if (!shows(b)) {
      return this;
    }
    keepOff(region.rings());
    double step = INSIDE / view.scale();
    for (double y = b.minY() + step / 2; y < b.maxY(); y += step) {
      Line level = Line.of(new Vec(b.minX() - 1, y), new Vec(b.maxX() + 1, y));
      region.clip(level).forEach(l -> keepOff(l.points().get(0), l.points().get(1)));
    }
    return this;
  }

  /** Keeps words off a sign that lies on the paper already. */
  PlanComposer keepOff(Symbol placed) {
    labels.avoid(Bounds.EMPTY.including(placed.at()).grown(placed.size() / 2));
    return this;
  }

  /** A sign on the model that words keep off. */
  public PlanComposer placeSign(Symbol symbol) {
    Symbol placed = symbol.placed(view);
    double half = placed.size() / 2;
    Vec at = placed.at();
    labels.avoid(new Bounds(at.x() - half, at.y() - half, at.x() + half, at.y() + half));
    if (field.contains(at)) {
      over.add(placed);
    }
    return this;
  }

  /** A sign at the first of the places where nothing lies; at the last one when all are taken. */
  PlanComposer placeSign(Symbol symbol, List<Vec> places) {
    for (Vec at : places) {
      Vec p = view.onPaper(at);
      double half = symbol.size() / 2 + 0.3;
      Bounds box = new Bounds(p.x() - half, p.y() - half, p.x() + half, p.y() + half);
      Ring ring = Ring.rectangle(box.minX(), box.minY(), box.maxX(), box.maxY());
      if (labels.isFree(new TextBox("", ring)) || at.equals(places.get(places.size() - 1))) {
        return placeSign(symbol.movedTo(at));
      }
    }
    return this;
  }

  /**
   * A dimension outside the floor, in the first free row.
   *
   * @param side 1 when outside is to the left of going from one to the other, else -1
   * @return false when no row has room for it
   */
  public boolean placeDimension(Vec from, Vec to, double side, double first, String words) {
    for (int row = 0; row < 4; row++) {
      double offset = side * (first + row * NEXT_ROW) * type.k();
      Dimension d = new Dimension(from, to, offset, words, type.dimension()).placed(view);
      if (lines.fits(d)) {
        lines.reserve(d);
        over.add(d);
        return true;
      }
    }
    return false;
  }

  /** A dimension right between two points; false when there is no room for its words. */
  public boolean placeDimensionAt(Vec from, Vec to, String words) {
    Dimension d = new Dimension(from, to, 0, words, type.dimension()).placed(view);
    boolean good = lines.fits(d);
    if (good) {
      lines.reserve(d);
      over.add(d);
    }
    return good;
  }

  /** Words about a point of the model, in one of its wished places (paper mm) or near it. */
  public boolean placeLabel(PlanLabel w) {
    if (!field.grown(SLACK).contains(view.onPaper(w.about()))) {
      return false;
    }
    TextStyle style = w.style();
    Label label =
        Label.of(view.onPaper(w.about()), w.words(), style, w.reach() * type.k())
            .wishing(w.wishes())
            .nearBy(w.near());
    Optional<Label.Placed> placed =
        labels
            .place(label, p -> w.off().stream().noneMatch(r -> r.contains(view.onModel(p))))
            .or(() -> labels.place(label));
    placed.ifPresent(
        p -> {
          leader(p);
          w.backing()
              .ifPresent(c -> backing(p.middle(), label, p.leader().isEmpty() ? c : Palette.WHITE));
          double up = (TextMeasure.CAP_HEIGHT - TextMeasure.DESCENT) * style.size() / 2;
          over.add(Text.middle(p.middle().plus(new Vec(0, up)), w.words(), style));
        });
    return placed.isPresent();
  }

  /** A number in a ring about a point of the model. */
  public boolean placeNumber(Vec about, List<Vec> wishes, String words) {
    return placeNumber(about, wishes, words, 5.2);
  }

  /** The same with a ring of this width at type size 1. */
  public boolean placeNumber(Vec about, List<Vec> wishes, String words, double width) {
    if (!field.contains(view.onPaper(about))) {
      return false;
    }
    double size = type.ring(words, width);
    Label label = Label.box(view.onPaper(about), size, size, 40 * type.k()).wishing(wishes);
    Optional<Label.Placed> placed = labels.place(label);
    placed.ifPresent(
        p -> {
          leader(p);
          over.add(Symbol.number(p.middle(), words, size));
        });
    return placed.isPresent();
  }

  private void leader(Label.Placed placed) {
    if (!placed.leader().isEmpty()) {
      Pen pen = Pen.of(0.18, Palette.INK);
      over.add(Stroke.line(pen, placed.leader().toArray(new Vec[0])));
    }
  }

  /** A little of the field's colour behind words, so that a pattern does not run through them. */
  private void backing(Vec middle, Label label, Colour colour) {
    double w = label.width() / 2 + 0.5;
    double h = label.height() / 2 + 0.2;
    over.add(
        Fill.of(
            colour, new Bounds(middle.x() - w, middle.y() - h, middle.x() + w, middle.y() + h)));
  }

  /** Everything, cut to the field. */
  public List<Ink> inks() {
    List<Ink> all = new ArrayList<>(under);
    all.addAll(over);
    return List.copyOf(Clip.of(new Drawing(CoordinateFrame.PAPER, field, all), field));
  }
}
