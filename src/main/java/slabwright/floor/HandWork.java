package slabwright.floor;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Region;

/**
 * Sorts hand work. What the body covers but the head does not grind is an edge strip. Of the rest,
 * a piece no larger than what a machine leaves in a corner of 60° is a corner, a larger one a
 * pocket.
 */
final class HandWork {
  /** What a disc of radius 1 leaves in a corner of 60°: cot 30° − π/3. */
  private static final double CORNER = Math.sqrt(3) - Math.PI / 3;

  /** Pieces smaller than this are rounding; mm². */
  private static final double CRUMB = 1;

  private HandWork() {}

  /**
   * Sorts the pieces.
   *
   * @param half half the gap that the smallest machine needs, mm; 0 when there is none
   */
  static List<HandPiece> sort(GrindingFaces faces, double half, double tolerance) {
    List<HandPiece> pieces = new ArrayList<>();
    add(pieces, HandKind.TRENCH, faces.trenches());
    add(pieces, HandKind.HAND_ONLY, faces.handOnly());
    List<Region> out = outOfBody(faces.uncovered(), tolerance);
    add(pieces, HandKind.EDGE_STRIP, faces.open().minus(Region.union(out)));
    for (Region part : out) {
      boolean corner = part.area() <= CORNER * half * half;
      add(pieces, corner ? HandKind.CORNER : HandKind.POCKET, part);
    }
    return pieces;
  }

  /** The uncovered floor without the seam of two tolerances that runs along every edge. */
  private static List<Region> outOfBody(Region uncovered, double tolerance) {
    List<Region> out = new ArrayList<>();
    double seam = 1.25 * tolerance;
    for (Region core : uncovered.offset(-seam, tolerance / 4).parts()) {
      out.add(core.offset(seam, tolerance / 4).intersect(uncovered));
    }
    return out;
  }

  private static void add(List<HandPiece> pieces, HandKind kind, Region region) {
    for (Region part : region.parts()) {
      if (part.area() >= CRUMB) {
        pieces.add(new HandPiece(kind, part));
      }
    }
  }
}
