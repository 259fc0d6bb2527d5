package slabwright.inlay.artwork.picture;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Vec;

/**
 * What a tracer is measured against: the contour of the pixels nearer to the colour than to any
 * other, by threshold, simplified and smoothed.
 */
final class PlainContour {
  private static final double SIMPLIFIED = 0.75;

  private PlainContour() {}

  static List<Shape> trace(Pixels pixels, LabelMap map, int colours) {
    List<Path2D> paths = new ArrayList<>();
    for (int k = 0; k < colours; k++) {
      paths.add(new Path2D.Double(Path2D.WIND_EVEN_ODD));
    }
    for (int k = 0; k < colours; k++) {
      byte[] one = new byte[map.label().length];
      for (int i = 0; i < one.length; i++) {
        one[i] = (byte) (map.label()[i] == k ? 1 : 0);
      }
      int[] two = {map.palette()[(k + 1) % map.palette().length], map.palette()[k]};
      LabelMap alone = new LabelMap(map.width(), map.height(), one, two);
      for (BoundaryChain c : BoundaryTracer.chains(alone, pixels)) {
        if (c.closed() && !c.onRim()) {
          append(smoothed(simplified(middles(c))), paths.get(k));
        }
      }
    }
    return List.copyOf(paths);
  }

  private static List<Vec> middles(BoundaryChain c) {
    List<Vec> out = new ArrayList<>();
    for (int i = 0; i < c.steps(); i++) {
      out.add(new Vec((c.x()[i] + c.x()[i + 1]) / 2.0, (c.y()[i] + c.y()[i + 1]) / 2.0));
    }
    return out;
  }

  private static List<Vec> simplified(List<Vec> ring) {
    int n = ring.size();
    if (n < 8) {
      return ring;
    }
    List<Vec> out = new ArrayList<>(part(ring.subList(0, n / 2 + 1)));
    out.remove(out.size() - 1);
    List<Vec> rest = new ArrayList<>(ring.subList(n / 2, n));
    rest.add(ring.get(0));
    out.addAll(part(rest));
    out.remove(out.size() - 1);
    return out;
  }

  private static List<Vec> part(List<Vec> line) {
    Vec a = line.get(0);
    Vec b = line.get(line.size() - 1);
    int far = -1;
    double most = SIMPLIFIED;
    for (int i = 1; i + 1 < line.size(); i++) {
      Vec w = b.minus(a);
      double t = Math.max(0, Math.min(1, line.get(i).minus(a).dot(w) / w.dot(w)));
      double d = line.get(i).distanceTo(a.towards(b, t));
      if (d > most) {
        most = d;
        far = i;
      }
    }
    if (far < 0) {
      return List.of(a, b);
    }
    List<Vec> out = new ArrayList<>(part(line.subList(0, far + 1)));
    out.remove(out.size() - 1);
    out.addAll(part(line.subList(far, line.size())));
    return out;
  }

  /** Chaikin's corner cutting, twice. */
  private static List<Vec> smoothed(List<Vec> ring) {
    List<Vec> now = ring;
    for (int round = 0; round < 2; round++) {
      List<Vec> next = new ArrayList<>();
      for (int i = 0; i < now.size(); i++) {
        Vec p = now.get(i);
        Vec q = now.get((i + 1) % now.size());
        next.add(p.towards(q, 0.25));
        next.add(p.towards(q, 0.75));
      }
      now = next;
    }
    return now;
  }

  private static void append(List<Vec> ring, Path2D path) {
    path.moveTo(ring.get(0).x(), ring.get(0).y());
    ring.forEach(p -> path.lineTo(p.x(), p.y()));
    path.closePath();
  }
}
