package slabwright.floor;

import slabwright.shape.Region;
import slabwright.shape.Vec;

/** One connected piece of hand work of one kind. */
public record HandWorkPiece(HandWorkKind kind, Region region) {
  /** Area in mm². */
  public double area() {
    return region.area();
  }

  /** A place well inside it, for a label. */
  public Vec place() {
    return region.labelPoint();
  }
}
