package slabwright.desk.canvas;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.Selection;
import slabwright.desk.model.input.Viewport;
import slabwright.desk.model.scene.FloorPicture;
import slabwright.desk.model.scene.FloorPictureMaker;
import slabwright.drawing.Dimension;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.drawing.label.DimensionStandOffs;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.units.LengthFormat;
import slabwright.units.UnitSystem;

/** The length of every wall beside it; each can be clicked and typed over. */
final class LiveDimensions {
  private static final TextStyle WORDS = TextStyle.bold(3.1);
  private static final double AWAY = 7;

  /** How far from a wall the words of its dimension reach, px, when it has one row of them. */
  static final double HEIGHT = (AWAY + 3.1 / 2) * FxPainter.SCREEN;

  /**
   * A dimension that can be clicked.
   *
   * @param box of its words, pixels
   * @param line of the dimension, pixels
   */
  record Target(int wall, Bounds box, String words, Line line) {}

  private final List<Target> targets = new ArrayList<>();

  /** The dimensions that have room at this scale. */
  List<Ink> inks(FloorPicture p, Viewport v, UnitSystem units, Selection focus) {
    targets.clear();
    List<Ink> inks = new ArrayList<>();
    double side = p.shape().floorOnLeft() ? -1 : 1;
    List<Double> off =
        DimensionStandOffs.compute(
            p.shape().pieces(), p.shape().floorOnLeft(), v.scale() / FxPainter.SCREEN);
    for (int i = 0; i < p.shape().pieces().size(); i++) {
      Line wall = p.shape().pieces().get(i);
      Vec a = wall.points().get(0);
      Vec b = wall.points().get(wall.points().size() - 1);
      String words = LengthFormat.show(a.distanceTo(b), units);
      double paper = a.distanceTo(b) * v.scale() / FxPainter.SCREEN;
      if (paper > TextMeasure.width(words, WORDS) + 5) {
        boolean held = focus.selected().contains(new PlanItem.OfWall(i));
        double away = pastArrow(p, i, AWAY + off.get(i), words, v.scale() / FxPainter.SCREEN);
        double out = side * away;
        TextStyle style = held ? WORDS.in(Palette.BLUE) : WORDS;
        inks.add(new Dimension(a, b, out, words, style));
        targets.add(new Target(i, box(v, a, b, out, words), words, line(v, a, b, out)));
      }
    }
    return inks;
  }

  /**
   * So far out, mm of paper, that the words don't lie on the arrow of a way in.
   *
   * @param paper mm of paper to one mm of the site
   */
  private static double pastArrow(
      FloorPicture p, int wall, double away, String words, double paper) {
    double arrow = FloorPictureMaker.ARROW_OUT * paper;
    double half = FloorPictureMaker.ARROW / 2;
    double clear = half + WORDS.size();
    Vec middle = middle(p.shape().pieces().get(wall));
    boolean meets =
        Math.abs(arrow - away) < clear
            && p.area().doorways().stream()
                .filter(d -> d.wayIn() && d.piece() == wall)
                .map(d -> middle(p.shape().doorway(d)))
                .anyMatch(
                    m -> m.distanceTo(middle) * paper < TextMeasure.width(words, WORDS) / 2 + half);
    return meets ? arrow + clear : away;
  }

  private static Vec middle(Line line) {
    List<Vec> all = line.points();
    return all.get(0).towards(all.get(all.size() - 1), 0.5);
  }

  private static Line line(Viewport v, Vec a, Vec b, double out) {
    Vec p = v.toScreen(a);
    Vec q = v.toScreen(b);
    Vec along = q.minus(p).unit();
    Vec away = new Vec(along.y(), -along.x()).times(out * FxPainter.SCREEN);
    return Line.of(p.plus(away), q.plus(away));
  }

  /** What names keep clear of, mm on the site: the words of dimensions, and their lines. */
  NameInks.Taken taken(Viewport v) {
    List<Bounds> boxes = new ArrayList<>();
    List<Line> lines = new ArrayList<>();
    for (Target t : targets) {
      Bounds b = t.box();
      boxes.add(Bounds.of(List.of(v.toSite(b.minX(), b.minY()), v.toSite(b.maxX(), b.maxY()))));
      lines.add(new Line(t.line().points().stream().map(p -> v.toSite(p.x(), p.y())).toList()));
    }
    return new NameInks.Taken(boxes, lines);
  }

  private static Bounds box(Viewport v, Vec a, Vec b, double out, String words) {
    Vec p = v.toScreen(a);
    Vec q = v.toScreen(b);
    Vec along = q.minus(p).unit();
    Vec left = new Vec(along.y(), -along.x());
    Vec mid = p.towards(q, 0.5).plus(left.times(out * FxPainter.SCREEN));
    double w = TextMeasure.width(words, WORDS) * FxPainter.SCREEN / 2 + 8;
    boolean upright = Math.abs(along.y()) > 0.7;
    double hw = upright ? 13 : w;
    double hh = upright ? w : 13;
    return new Bounds(mid.x() - hw, mid.y() - hh, mid.x() + hw, mid.y() + hh);
  }

  /** The dimension under a pixel. */
  Optional<Target> at(double x, double y) {
    return targets.stream().filter(t -> t.box().contains(new Vec(x, y))).findFirst();
  }

  List<Target> targets() {
    return List.copyOf(targets);
  }
}
