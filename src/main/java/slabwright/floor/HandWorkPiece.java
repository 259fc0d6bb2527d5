package slabwright.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/** One connected piece of hand work of one kind. */
public record HandWorkPiece(HandWorkKind kind, Region region) {
  /** What a disc of radius 1 leaves in a corner of 60°: cot 30° − π/3. */
  private static final double CORNER = Math.sqrt(3) - Math.PI / 3;

  /** Pieces smaller than this are rounding; mm². */
  private static final double CRUMB = 1;

  /** Area in mm². */
  public double area() {
    return region.area();
  }

  /** A place well inside it, for a label. */
  public Vec place() {
    return region.labelPoint();
  }

  /**
   * Sorts hand work. What the body covers but the head does not grind is an edge strip. Of the
   * rest, a piece no larger than what a machine leaves in a corner of 60° is a corner, a larger one
   * a pocket.
   *
   * @param regions by kind, corners still among the pockets
   * @param half half the gap that the smallest machine needs, mm; 0 when there is none
   */
  static List<HandWorkPiece> sorted(Map<HandWorkKind, Region> regions, double half) {
    List<HandWorkPiece> pieces = new ArrayList<>();
    for (HandWorkKind kind :
        List.of(
            HandWorkKind.TRENCH,
            HandWorkKind.HAND_ONLY,
            HandWorkKind.EDGE_STRIP,
            HandWorkKind.POCKET)) {
      for (Region part : regions.getOrDefault(kind, Region.empty()).parts()) {
        if (part.area() >= CRUMB) {
          boolean corner = kind == HandWorkKind.POCKET && part.area() <= CORNER * half * half;
          pieces.add(new HandWorkPiece(corner ? HandWorkKind.CORNER : kind, part));
        }
      }
    }
    return pieces;
  }
}
