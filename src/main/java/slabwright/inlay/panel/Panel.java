package slabwright.inlay.panel;

import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Bounds;
import slabwright.shape.Region;

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
}
