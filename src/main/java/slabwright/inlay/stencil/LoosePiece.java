package slabwright.inlay.stencil;

import slabwright.shape.Region;
import slabwright.shape.Vec;

/** Mask standing alone inside an opening: it must be carried over on transfer tape or tied. */
public record LoosePiece(Region region) {
  /** Area in mm². */
  public double area() {
    return region.area();
  }

  /** A point well inside the piece, for a label. */
  public Vec place() {
    return region.labelPoint();
  }
}
