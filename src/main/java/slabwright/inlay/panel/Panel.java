package slabwright.inlay.panel;

import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * One piece of film.
 *
 * @param name A, B, C… as read; A1, A2… where a strip has inner joints
 * @param box where it lies on the blank, overlap included
 */
public record Panel(String name, Bounds box) {
  /** Twice a step of the grid, mm. */
  private static final double LOST = 0.002;

  /** The part of a stencil's openings that is cut out of this panel, in the blank's frame. */
  public Region openings(Stencil stencil) {
    return stencil.openings().intersect(Region.rectangle(box));
  }

  /**
   * Whether anything of a stencil is cut out of this panel: the same as asking whether {@link
   * #openings} has something, without cutting where an opening lies wholly inside, or where more
   * lies inside than could be lost to the grid along the whole boundary.
   */
  boolean opens(Stencil stencil) {
    boolean meets = false;
    for (Ring shell : stencil.openings().shells()) {
      Bounds b = shell.bounds();
      if (box.contains(new Vec(b.minX(), b.minY())) && box.contains(new Vec(b.maxX(), b.maxY()))) {
        return true;
      }
      meets |= box.meets(b);
    }
    Region open = stencil.openings();
    return meets
        && (open.areaIn(box) > LOST * open.boundaryLength() || !openings(stencil).isEmpty());
  }
}
