package slabwright.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Vec;
import slabwright.shape.fit.Homography;

/**
 * How a photo shows the floor's plane.
 *
 * @param toPhoto from the site to pixels, its depth positive where the floor is seen
 * @param nearest the depth that counts as right before the camera
 */
record PhotoView(Homography toPhoto, double nearest) {
  /** Share of the depth at the nearest of the four points. */
  private static final double NEAREST = 0.03;

  /** By four places known on the floor and in the photo, in any order. */
  static Optional<PhotoView> of(List<Vec> floor, List<Vec> pixels) {
    if (floor.size() != 4 || pixels.size() != 4) {
      return Optional.empty();
    }
    Vec middle = floor.stream().reduce(Vec.ZERO, Vec::plus).times(0.25);
    List<Integer> order = new ArrayList<>(List.of(0, 1, 2, 3));
    order.sort(Comparator.comparingDouble(i -> floor.get(i).minus(middle).angle()));
    List<Vec> from = order.stream().map(floor::get).toList();
    List<Vec> to = order.stream().map(pixels::get).toList();
    return Homography.of(from, to).flatMap(h -> facing(h, floor));
  }

  /** Of one sign at all four points and not mirrored, or it is no view of them from above. */
  private static Optional<PhotoView> facing(Homography h, List<Vec> floor) {
    double side = Math.signum(h.depth(floor.get(0)));
    double least = floor.stream().mapToDouble(p -> h.depth(p) * side).min().orElseThrow();
    double most = floor.stream().mapToDouble(p -> h.depth(p) * side).max().orElseThrow();
    boolean fromAbove = h.areaScale(floor.get(0)) < 0;
    return least > 0 && fromAbove
        ? Optional.of(new PhotoView(times(h, side), NEAREST * Math.max(least, 0.1 * most)))
        : Optional.empty();
  }

  private static Homography times(Homography h, double k) {
    return new Homography(
        k * h.a(), k * h.b(), k * h.c(), k * h.d(), k * h.e(), k * h.f(), k * h.g(), k * h.h(),
        k * h.i());
  }
}
