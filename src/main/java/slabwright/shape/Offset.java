package slabwright.shape;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.PrecisionReducer;

/**
 * Round offsets whose boundary stays within a tolerance of the true one, on both sides.
 *
 * <p>JTS's own buffer drops corners whose gap is under a twentieth of the distance, which is a
 * millimetre or more at the size of a floor machine; so the curve is ours.
 */
final class Offset {
  /** Bends sharper than about 29° are cut off square. */
  private static final double STRIP_MITRE_LIMIT = 4;

  private Offset() {}

  static Region of(Region region, double mm, double tolerance) {
    if (mm == 0 || region.isEmpty()) {
      return region;
    }
    List<Ring> curves = region.rings().stream().map(r -> OffsetCurve.of(r, mm, tolerance)).toList();
    return RingFill.positive(curves);
  }

  /** The part of it inside a window: what of the curve lies beyond is drawn straight. */
  static Region of(Region region, double mm, double tolerance, BoxArea inside) {
    if (region.isEmpty() || inside.boxes().isEmpty()) {
      return Region.empty();
    }
    Bounds seen = inside.bounds();
    List<Ring> curves = new ArrayList<>();
    for (Ring ring : region.rings()) {
      // Told of the whole ring, so that a part of it is offset as the whole is.
      boolean rugged = OffsetBays.isRugged(ring, mm);
      RingWindow.ring(ring, seen.grown(Math.abs(mm) + 1))
          .map(near -> OffsetCurve.of(near, mm, tolerance, rugged))
          .flatMap(curve -> RingWindow.ring(curve, seen))
          .ifPresent(curves::add);
    }
    return RingFill.positive(curves, inside);
  }

  static Region around(Line line, double halfWidth, boolean roundEnds, double tolerance) {
    if (line.length() == 0) {
      return line.points().isEmpty() || !roundEnds
          ? Region.empty()
          : Region.of(Arcs.circle(line.points().get(0), halfWidth, tolerance));
    }
    return RingFill.positive(List.of(OffsetCurve.around(line, halfWidth, roundEnds, tolerance)));
  }

  static Geometry strip(Line line, double halfWidth) {
    Coordinate[] path = line.points().stream().map(Jts::coordinate).toArray(Coordinate[]::new);
    BufferParameters p =
        new BufferParameters(
            8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, STRIP_MITRE_LIMIT);
    Geometry raw = BufferOp.bufferOp(Jts.FACTORY.createLineString(path), halfWidth, p);
    return Overlay.polygonal(PrecisionReducer.reducePrecision(raw, Jts.GRID));
  }
}
