package slabwright.floor;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import slabwright.shape.Bounds;
import slabwright.shape.PreparedRegion;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.Machine;
import slabwright.site.Mark;
import slabwright.units.Recent;

/** What is known of a floor before things on it are moved, worked out when first asked for. */
final class FloorBefore {
  /** A few windows. */
  private static final int ROOM = 6;

  /** So many marks move with a wall. */
  private static final int MOVED = 40;

  private final FloorTakeoff base;
  private final Map<Machine, PreparedRegion> rolls = new HashMap<>();
  private final Map<Machine, FreeRaster> free = new HashMap<>();
  private final Recent<FloorWindow, List<Region>> passed = new Recent<>(ROOM);

  private final Recent<Mark, Region> moved = new Recent<>(MOVED);

  /** By the marks themselves: those that stay are the same objects on a changed floor. */
  private final IdentityHashMap<Mark, Region> forms = new IdentityHashMap<>();

  FloorBefore(FloorTakeoff base) {
    this.base = base;
    base.asFound().reaches().forEach(r -> rolls.put(r.machine(), new PreparedRegion(r.rolls())));
    base.area().marks().forEach(m -> forms.put(m, m.form().region(base.tolerance())));
  }

  /** What a mark covers; those of this floor are at hand. */
  Region form(Mark mark) {
    Region form = forms.get(mark);
    return form == null ? moved.get(mark, () -> mark.form().region(base.tolerance())) : form;
  }

  /** Whether a machine's middle was got to. */
  boolean isReached(Machine machine, Vec place) {
    return rolls.get(machine).covers(place);
  }

  /** What each machine's head passes over inside a window from round what changes in it. */
  List<Region> passed(FloorWindow window) {
    return passed.get(window, () -> passedOver(window));
  }

  private List<Region> passedOver(FloorWindow window) {
    Region works = window.works().region();
    List<Region> round =
        window.heads().boxes().stream().map(b -> Region.rectangle(b).minus(works)).toList();
    return base.asFound().reaches().stream()
        .map(
            r ->
                within(r.middle(), round)
                    .offset(r.machine().grinding().mm() / 2, base.tolerance(), window.figures()))
        .toList();
  }

  /** Box by box, as a window along walls has the whole hall in its bounds. */
  private static Region within(Region middle, List<Region> round) {
    return Region.union(
        round.stream().map(piece -> middle.about(piece.bounds()).intersect(piece)).toList());
  }

  /** What surely hangs together round boxes that are shut. */
  FreeRaster.Round round(Machine machine, List<Bounds> shut, List<WindowAccess.Gate> gates) {
    return free.computeIfAbsent(machine, this::raster).round(shut, gates, rolls.get(machine));
  }

  private FreeRaster raster(Machine machine) {
    Region region =
        base.asFound().reaches().stream()
            .filter(r -> r.machine().equals(machine))
            .findFirst()
            .orElseThrow()
            .rolls();
    List<Region> boxes =
        WayIn.of(base.area(), base.gross(), machine.passage(), base.tolerance()).stream()
            .map(WayIn::box)
            .toList();
    return new FreeRaster(region, boxes);
  }
}
