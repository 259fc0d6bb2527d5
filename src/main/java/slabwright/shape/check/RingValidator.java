package slabwright.shape.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.shape.Jts;
import slabwright.shape.Layer;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** Says which rings an {@link Arrangement} will put right, and where. */
public final class RingValidator {
  private static final Comparator<Vec> ORDER =
      Comparator.comparingDouble(Vec::x).thenComparingDouble(Vec::y);

  private RingValidator() {}

  /** At most one note for each ring, in the order of the rings. */
  public static List<RingFault> of(List<Layer> layers) {
    List<RingFault> notes = new ArrayList<>();
    for (Layer layer : layers) {
      Set<List<Vec>> seen = new HashSet<>();
      for (int i = 0; i < layer.rings().size(); i++) {
        int ring = i;
        kind(layer.rings().get(i), seen)
            .ifPresent(k -> notes.add(note(k, layer.id(), ring, layer.rings().get(ring))));
      }
    }
    return notes;
  }

  private static RingFault note(RingFault.Kind kind, int layer, int index, Ring ring) {
    Vec first = ring.points().isEmpty() ? Vec.ZERO : ring.points().get(0);
    Vec at =
        kind == RingFault.Kind.CROSSES_ITSELF
            ? RingSelfCrossing.selfCrossing(ring).orElse(first)
            : first;
    return new RingFault(kind, layer, index, at);
  }

  private static Optional<RingFault.Kind> kind(Ring ring, Set<List<Vec>> seen) {
    if (!seen.add(canonical(ring))) {
      return Optional.of(RingFault.Kind.REPEATED);
    }
    if (Region.of(ring).isEmpty()) {
      return Optional.of(RingFault.Kind.NO_AREA);
    }
    return RingSelfCrossing.selfCrossing(ring).map(at -> RingFault.Kind.CROSSES_ITSELF);
  }

  /** The corners on the grid from the least one on, towards its lesser neighbour. */
  private static List<Vec> canonical(Ring ring) {
    List<Vec> points = new ArrayList<>();
    for (Vec p : ring.points()) {
      Vec snapped = new Vec(Jts.snap(p.x()), Jts.snap(p.y()));
      if (points.isEmpty() || !points.get(points.size() - 1).equals(snapped)) {
        points.add(snapped);
      }
    }
    if (points.size() < 3) {
      return points;
    }
    Collections.rotate(points, -points.indexOf(Collections.min(points, ORDER)));
    if (ORDER.compare(points.get(1), points.get(points.size() - 1)) > 0) {
      Collections.reverse(points.subList(1, points.size()));
    }
    return points;
  }
}
