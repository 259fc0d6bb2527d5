package slabwright.desk.model.scene;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.OutlinePiece;
import slabwright.site.Site;

/** All floor areas but the one looked at. Each is worked out again only when it changed. */
public final class PaleFloors {
  private Map<String, PaleFloor> known = new HashMap<>();

  /** Those of a site, without the floor area of this id. */
  List<PaleFloor> of(Site site, String looked) {
    Map<String, PaleFloor> next = new HashMap<>();
    List<PaleFloor> all =
        site.areas().stream()
            .filter(a -> !a.id().equals(looked) && a.outline().size() > 1)
            .map(a -> kept(a, next))
            .toList();
    known = next;
    return all;
  }

  private PaleFloor kept(FloorArea area, Map<String, PaleFloor> next) {
    PaleFloor before = known.get(area.id());
    PaleFloor now = before != null && before.area().equals(area) ? before : PaleFloor.of(area);
    next.put(area.id(), now);
    return now;
  }

  /** The one that covers a point, the last drawn first. */
  public static Optional<PaleFloor> at(List<PaleFloor> all, Vec p, double reach) {
    for (int i = all.size() - 1; i >= 0; i--) {
      PaleFloor f = all.get(i);
      if (f.floor().contains(p) || f.doorwayAt(p, reach).isPresent()) {
        return Optional.of(f);
      }
    }
    return Optional.empty();
  }

  /** What the floor areas of a site cover together. */
  public static Bounds bounds(Site site) {
    Bounds all = Bounds.EMPTY;
    for (FloorArea a : site.areas()) {
      for (OutlinePiece piece : a.outline()) {
        all = all.including(piece.from().vec());
      }
    }
    return all;
  }
}
