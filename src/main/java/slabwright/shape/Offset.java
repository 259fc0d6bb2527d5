package slabwright.shape;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.PrecisionReducer;

/** Round offsets whose arcs stay within a tolerance. */
final class Offset {
  /** Bends sharper than about 29° are cut off square. */
  private static final double STRIP_MITRE_LIMIT = 4;

  private Offset() {}

  static Geometry of(Geometry g, double mm, double tolerance) {
    if (mm == 0 || g.isEmpty()) {
      return g;
    }
    BufferParameters p = new BufferParameters(quadrantSegments(Math.abs(mm), tolerance));
    p.setSimplifyFactor(Math.min(0.01, tolerance / (4 * Math.abs(mm))));
    Geometry raw = BufferOp.bufferOp(g, mm, p);
    return Overlay.polygonal(PrecisionReducer.reducePrecision(raw, Jts.GRID));
  }

  static Geometry strip(Line line, double halfWidth) {
    Coordinate[] path = line.points().stream().map(Jts::coordinate).toArray(Coordinate[]::new);
    BufferParameters p =
        new BufferParameters(
            8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, STRIP_MITRE_LIMIT);
    Geometry raw = BufferOp.bufferOp(Jts.FACTORY.createLineString(path), halfWidth, p);
    return Overlay.polygonal(PrecisionReducer.reducePrecision(raw, Jts.GRID));
  }

  /**
   * Fewest segments a quadrant whose sag {@code r (1 - cos(pi / 4q))} stays within the tolerance.
   */
  static int quadrantSegments(double radius, double tolerance) {
    if (tolerance >= radius) {
      return 1;
    }
    double step = Math.acos(1 - tolerance / radius);
    return Math.max(2, (int) Math.ceil(Math.PI / (4 * step)));
  }
}
