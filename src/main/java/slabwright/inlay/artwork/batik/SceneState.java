package slabwright.inlay.artwork.batik;

import java.awt.geom.AffineTransform;
import java.util.List;
import java.util.stream.Stream;
import slabwright.inlay.artwork.ClipOutlines;
import slabwright.inlay.artwork.SoftMask;

/**
 * What applies at one place of the tree.
 *
 * @param toPage from the place's user space to the page's pixels
 * @param alpha product of all group opacities so far
 */
record SceneState(
    AffineTransform toPage, double alpha, List<ClipOutlines> clips, List<SoftMask> masks) {
  static SceneState start(AffineTransform toPage) {
    return new SceneState(toPage, 1, List.of(), List.of());
  }

  SceneState within(AffineTransform transform) {
    if (transform == null) {
      return this;
    }
    AffineTransform next = new AffineTransform(toPage);
    next.concatenate(transform);
    return new SceneState(next, alpha, clips, masks);
  }

  SceneState faded(double by) {
    return new SceneState(toPage, alpha * by, clips, masks);
  }

  SceneState clipped(ClipOutlines clip) {
    List<ClipOutlines> more = Stream.concat(clips.stream(), Stream.of(clip)).toList();
    return new SceneState(toPage, alpha, more, masks);
  }

  SceneState masked(SoftMask mask) {
    return new SceneState(
        toPage, alpha, clips, Stream.concat(masks.stream(), Stream.of(mask)).toList());
  }
}
