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
  /** The part of a stencil's openings that is cut out of this panel, in the blank's frame. */
  public Region openings(Stencil stencil) {
    return stencil.openings().intersect(Region.rectangle(box));
  }

  /**
   * Whether anything of a stencil is cut out of this panel: the same as asking whether {@link
   * #openings} has something, without cutting where an opening lies wholly inside.
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
    return meets && !openings(stencil).isEmpty();
  }
}
