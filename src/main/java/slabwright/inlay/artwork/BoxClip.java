package slabwright.inlay.artwork;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * Rings cut by an upright box, side after side (Sutherland and Hodgman 1974). Winding numbers
 * inside the box stay as they are; edges that run along its sides to and fro enclose nothing.
 */
final class BoxClip {
  private BoxClip() {}

  static List<Ring> clip(List<Ring> rings, Bounds box) {
    List<Ring> out = new ArrayList<>();
    for (Ring ring : rings) {
      List<Vec> p = ring.points();
      p = side(p, v -> v.x() - box.minX());
      p = side(p, v -> box.maxX() - v.x());
      p = side(p, v -> v.y() - box.minY());
      p = side(p, v -> box.maxY() - v.y());
      if (p.size() >= 3) {
        out.add(new Ring(p));
      }
    }
    return out;
  }

  /** Keeps what has {@code inside >= 0}; {@code inside} is linear in the point. */
  private static List<Vec> side(List<Vec> points, ToDoubleFunction<Vec> inside) {
    List<Vec> kept = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      Vec a = points.get(i);
      Vec b = points.get((i + 1) % points.size());
      double da = inside.applyAsDouble(a);
      double db = inside.applyAsDouble(b);
      if (da >= 0) {
        kept.add(a);
      }
      if ((da >= 0) != (db >= 0)) {
        kept.add(a.towards(b, da / (da - db)));
      }
    }
    return kept;
  }
}
