package slabwright.sheets.packet.client;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Colour;
import slabwright.drawing.Fill;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.units.UnitSystem;

/** Something everybody knows the size of, to stand beside a graphic at its scale. */
enum ScaleFigure {
  /** A grown person. */
  PERSON(1750, 5.75 * 304.8, 0.28),
  /** A shoe from above. */
  SHOE(300, 304.8, 0.36);

  private static final int ROUND = 28;
  private static final Colour LOOK = Palette.RULE;

  private final double metric;
  private final double feet;
  private final double slim;

  ScaleFigure(double metric, double feet, double slim) {
    this.metric = metric;
    this.feet = feet;
    this.slim = slim;
  }

  /** Its height in mm, a round one in the units it is told in. */
  double height(UnitSystem units) {
    return units == UnitSystem.METRIC ? metric : feet;
  }

  /** Its width at so many mm of height. */
  double widthAt(double high) {
    return slim * high;
  }

  /** Drawn with the middle of its foot at the point, so many mm high. */
  List<Ink> standing(Vec foot, double high) {
    Ring[] parts = this == PERSON ? person() : shoe();
    List<Ink> inks = new ArrayList<>();
    for (Ring part : parts) {
      List<Vec> points =
          part.points().stream()
              .map(p -> new Vec(foot.x() + p.x() * high, foot.y() - p.y() * high))
              .toList();
      inks.add(Fill.of(LOOK, new Ring(points)));
    }
    return inks;
  }

  /** In shares of the height, y up from the foot. */
  private static Ring[] person() {
    return new Ring[] {
      oval(0, 0.93, 0.055, 0.07),
      Ring.of(-0.035, 0.87, 0.035, 0.87, 0.035, 0.8, -0.035, 0.8),
      Ring.of(-0.125, 0.8, -0.09, 0.83, 0.09, 0.83, 0.125, 0.8, 0.095, 0.5, -0.095, 0.5),
      Ring.of(-0.125, 0.8, -0.14, 0.46, -0.105, 0.45, -0.08, 0.75),
      Ring.of(0.125, 0.8, 0.14, 0.46, 0.105, 0.45, 0.08, 0.75),
      Ring.of(-0.095, 0.51, -0.005, 0.51, -0.025, 0, -0.085, 0),
      Ring.of(0.005, 0.51, 0.095, 0.51, 0.085, 0, 0.025, 0)
    };
  }

  private static Ring[] shoe() {
    return new Ring[] {
      oval(0, 0.68, 0.18, 0.32),
      oval(0, 0.17, 0.13, 0.17),
      Ring.of(-0.14, 0.5, 0.14, 0.5, 0.11, 0.2, -0.11, 0.2)
    };
  }

  private static Ring oval(double x, double y, double rx, double ry) {
    List<Vec> points = new ArrayList<>();
    for (int i = 0; i < ROUND; i++) {
      double a = 2 * Math.PI * i / ROUND;
      points.add(new Vec(x + rx * Math.cos(a), y + ry * Math.sin(a)));
    }
    return new Ring(points);
  }
}
