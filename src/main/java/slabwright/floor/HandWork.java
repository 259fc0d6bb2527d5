package slabwright.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slabwright.shape.Arrangement;
import slabwright.shape.Layer;
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
    Map<Boolean, Region> covered = byCover(faces.open(), faces.uncovered(), tolerance);
    add(pieces, HandKind.EDGE_STRIP, covered.getOrDefault(true, Region.empty()));
    for (Region part : covered.getOrDefault(false, Region.empty()).parts()) {
      boolean corner = part.area() <= CORNER * half * half;
      add(pieces, corner ? HandKind.CORNER : HandKind.POCKET, part);
    }
    return pieces;
  }

  /**
   * Open floor under a body (true) or not (false). The uncovered floor has a seam of two tolerances
   * along every edge; opening with a slightly larger disc takes it off and gives it to the strip.
   */
  private static Map<Boolean, Region> byCover(Region open, Region uncovered, double tolerance) {
    double seam = 1.25 * tolerance;
    Region core = uncovered.opened(seam, tolerance / 4);
    Arrangement faces =
        Arrangement.of(List.of(Layer.of(0, open), Layer.of(1, uncovered), Layer.of(2, core)));
    return faces.partition(
        a -> a.contains(0) ? Optional.of(!(a.contains(1) && a.contains(2))) : Optional.empty());
  }

  private static void add(List<HandPiece> pieces, HandKind kind, Region region) {
    for (Region part : region.parts()) {
      if (part.area() >= CRUMB) {
        pieces.add(new HandPiece(kind, part));
      }
    }
  }
}
