package slabwright.sheets.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import slabwright.drawing.Colour;
import slabwright.drawing.Palette;
import slabwright.drawing.Symbol;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.drawing.label.DimensionStandOffs;
import slabwright.figures.AreaInks;
import slabwright.figures.MarkStyles;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.sheets.page.SheetContext;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.OutlineShape;
import slabwright.units.LetterNumbering;

/** Dimensions, doorway names and way-in arrows around a floor area's outline. */
public final class OutlineLabels {
  private static final double FIRST_ROW = 7;

  private final FloorArea area;
  private final OutlineShape shape;
  private final SheetContext context;
  private final PlanComposer sketch;
  private final double outside;

  public OutlineLabels(FloorArea area, SheetContext context, PlanComposer sketch) {
    this.area = area;
    this.shape = OutlineShape.of(area.outline(), AreaInks.TOLERANCE);
    this.context = context;
    this.sketch = sketch;
    this.outside = shape.floorOnLeft() ? -1 : 1;
  }

  /** Where a doorway's name would be read as the name of what is marked there. */
  private List<Region> marked() {
    return area.marks().stream()
        .filter(m -> sketch.shows(m.form().room()))
        .map(m -> m.form().region(AreaInks.TOLERANCE))
        .filter(r -> !r.isEmpty())
        .toList();
  }

  /** Words keep off the walls from here on. */
  public OutlineLabels avoidWalls() {
    sketch.keepOff(List.of(shape.ring()));
    return this;
  }

  public OutlineLabels labelDoorways() {
    List<Region> marked = marked();
    for (Doorway d : area.doorways()) {
      Line line = LabelCandidates.chord(shape.doorway(d));
      String width = context.length(d.width().mm());
      String words =
          d.wayIn()
              ? context.say("sheets.outline-labels.way-in", d.name(), width)
              : context.say("sheets.outline-labels.doorway", d.name(), width);
      beside(line, words, d.wayIn() ? MarkStyles.WAY_IN.colour() : Palette.SOFT, marked);
      if (d.wayIn()) {
        arrow(line);
      }
    }
    return this;
  }

  /** The letter of each wall by its middle, as on every sheet. */
  public OutlineLabels labelWalls() {
    TextStyle style = sketch.type().strong();
    for (int i = 0; i < shape.pieces().size(); i++) {
      List<Vec> p = shape.pieces().get(i).points();
      int side = (p.size() - 1) / 2;
      Vec middle = p.get(side).towards(p.get(side + 1), 0.5);
      sketch.placeLabel(
          PlanLabel.of(middle, LetterNumbering.of(i), style).nearBy(8).on(Palette.WHITE));
    }
    return this;
  }

  private void arrow(Line line) {
    Vec out = line.points().get(1).minus(line.points().get(0)).unit().left().times(outside);
    Vec middle = line.points().get(0).towards(line.points().get(1), 0.5);
    List<Vec> places = new ArrayList<>();
    for (double mm = 4; mm < 60; mm += 0.5) {
      places.add(middle.plus(out.times(mm / sketch.view().scale())));
    }
    double degrees = Math.toDegrees(out.times(-1).angle()) - 90;
    sketch.placeSign(
        new Symbol(Symbol.Kind.WAY_IN, middle, 6, degrees, MarkStyles.WAY_IN.colour(), ""), places);
  }

  private void beside(Line line, String words, Colour colour, List<Region> marked) {
    TextStyle style = sketch.type().label().in(colour);
    Vec from = sketch.view().onPaper(line.points().get(0));
    Vec to = sketch.view().onPaper(line.points().get(1));
    double wide = TextMeasure.width(words, style);
    List<Vec> wishes = LabelCandidates.beside(from, to, outside, style.size(), wide);
    Vec middle = line.points().get(0).towards(line.points().get(1), 0.5);
    sketch.placeLabel(
        PlanLabel.of(middle, words, style)
            .wishing(wishes)
            .nearBy(4)
            .on(Palette.WHITE)
            .withOff(marked));
  }

  /** Every straight piece that has room, longest first, then the whole width and height. */
  public OutlineLabels placeDimensions() {
    Bounds b = shape.ring().bounds();
    List<Line> pieces = new ArrayList<>(shape.pieces().stream().filter(l -> straight(l)).toList());
    pieces.sort(Comparator.comparingDouble(Line::length).reversed());
    List<Double> off =
        DimensionStandOffs.compute(shape.pieces(), shape.floorOnLeft(), sketch.view().scale());
    for (Line piece : pieces) {
      Vec from = piece.points().get(0);
      Vec to = piece.points().get(1);
      double first = FIRST_ROW + off.get(shape.pieces().indexOf(piece)) / sketch.type().k();
      sketch.placeDimension(from, to, outside, first, show(from.distanceTo(to)));
    }
    Vec topLeft = new Vec(b.minX(), b.maxY());
    if (pieces.stream().noneMatch(l -> spans(l, b.width(), true))) {
      sketch.placeDimension(topLeft, new Vec(b.maxX(), b.maxY()), 1, FIRST_ROW, show(b.width()));
    }
    if (pieces.stream().noneMatch(l -> spans(l, b.height(), false))) {
      sketch.placeDimension(new Vec(b.minX(), b.minY()), topLeft, 1, FIRST_ROW, show(b.height()));
    }
    return this;
  }

  /** Whether a level (or upright) piece already shows the whole width (or height). */
  private static boolean spans(Line l, double length, boolean level) {
    Vec run = l.points().get(1).minus(l.points().get(0));
    return Math.abs(Math.abs(level ? run.x() : run.y()) - length) < 0.5;
  }

  private static boolean straight(Line line) {
    return line.points().size() == 2;
  }

  private String show(double mm) {
    return context.length(mm);
  }
}
