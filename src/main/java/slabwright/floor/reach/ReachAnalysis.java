package slabwright.floor.reach;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import slabwright.floor.EdgeStrip;
import slabwright.floor.EdgeStripAllocator;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.HandWorkKind;
import slabwright.floor.HandWorkPiece;
import slabwright.floor.MachineReach;
import slabwright.floor.ReachedFloor;
import slabwright.shape.Region;
import slabwright.site.Machine;

/**
 * What sheet 2 says of a floor beyond its take-off: reach against width, the narrowest pass to
 * every pocket, which machine passes where, strips by edge, shares of machines. Each is worked out
 * when it is first asked for, which takes many reaches, and kept.
 */
public final class ReachAnalysis {
  /** Pockets smaller than a hand, mm², are not worth a way. */
  private static final double LEAST = 10_000;

  private final FloorTakeoff takeoff;
  private final BooleanSupplier cancelled;
  private final Lazy<List<ReachCurve>> curves = new Lazy<>(this::drawCurves);
  private final Lazy<List<EdgeStrip>> strips;
  private final Lazy<List<PocketAccess>> pockets = new Lazy<>(this::findPockets);

  private final Lazy<List<MachinePassage>> passages;

  private ReachAnalysis(FloorTakeoff takeoff, BooleanSupplier cancelled) {
    this.takeoff = takeoff;
    this.cancelled = cancelled;
    passages = new Lazy<>(() -> List.copyOf(PassageFinder.find(takeoff, cancelled)));
    strips = new Lazy<>(() -> EdgeStripAllocator.allocate(takeoff));
  }

  public static ReachAnalysis of(FloorTakeoff takeoff) {
    return of(takeoff, () -> false);
  }

  /** The same; asking ends with a CancellationException once {@code cancelled} is true. */
  public static ReachAnalysis of(FloorTakeoff takeoff, BooleanSupplier cancelled) {
    return new ReachAnalysis(takeoff, cancelled);
  }

  public FloorTakeoff takeoff() {
    return takeoff;
  }

  /**
   * Reach against width, as found and, where trenches keep machines off, once they are level;
   * nothing without a machine or without a way in. Drawn for the machine with the widest body.
   */
  public List<ReachCurve> curves() {
    return curves.get();
  }

  /** Every pocket of 0.01 m² and more, as found, the largest first; none without a machine. */
  public List<PocketAccess> pockets() {
    return pockets.get();
  }

  /** Which machine gets through every doorway, narrow gap and bend, trenches taken as levelled. */
  public List<MachinePassage> passages() {
    return passages.get();
  }

  /** {@link EdgeStripAllocator#allocate}, kept. */
  public List<EdgeStrip> strips() {
    return strips.get();
  }

  private List<ReachCurve> drawCurves() {
    List<ReachCurve> drawn = new ArrayList<>();
    Optional<Machine> like =
        takeoff.asFound().reaches().stream().findFirst().map(ReachedFloor::machine);
    if (like.isPresent() && takeoff.area().doorways().stream().anyMatch(d -> d.wayIn())) {
      drawn.add(ReachCurve.of(takeoff, like.get(), false, cancelled));
      if (!takeoff.asFound().pieces(HandWorkKind.TRENCH).isEmpty()) {
        drawn.add(ReachCurve.of(takeoff, like.get(), true, cancelled));
      }
    }
    return List.copyOf(drawn);
  }

  private List<PocketAccess> findPockets() {
    if (takeoff.area().machines().isEmpty()) {
      return List.of();
    }
    BottleneckSearch passage = new BottleneckSearch(takeoff, false, cancelled);
    double clearance =
        takeoff.area().machines().stream()
            .min(Comparator.comparingDouble(m -> m.body().mm()))
            .map(m -> m.passing().mm())
            .orElse(0.0);
    return takeoff.asFound().pieces(HandWorkKind.POCKET).stream()
        .filter(p -> p.area() >= LEAST)
        .sorted(Comparator.comparingDouble(p -> -p.area()))
        .map(p -> access(p, passage, clearance))
        .toList();
  }

  private PocketAccess access(HandWorkPiece pocket, BottleneckSearch search, double clearance) {
    Optional<MachinePassage> bend =
        takeoff.asFound().reaches().stream()
            .flatMap(
                r -> r.lost().stream().filter(l -> isBehind(l, r, pocket)).map(l -> bend(l, r)))
            .flatMap(Optional::stream)
            .findFirst();
    return new PocketAccess(
        pocket,
        bend.isPresent() ? Optional.empty() : search.findBottleneck(pocket),
        clearance,
        bend);
  }

  private static boolean isBehind(Region lost, ReachedFloor by, HandWorkPiece pocket) {
    return lost.distanceTo(pocket.place()) <= MachineReach.half(by.machine());
  }

  private Optional<MachinePassage> bend(Region lost, ReachedFloor by) {
    return passages().stream()
        .filter(p -> p.kind() == MachinePassage.Kind.BEND && p.machine().equals(by.machine()))
        .min(Comparator.comparingDouble(p -> lost.distanceTo(p.where())));
  }

  /** Works a value out once, whichever thread asks first. */
  private static final class Lazy<T> {
    private final Supplier<T> how;
    private Optional<T> value = Optional.empty();

    Lazy(Supplier<T> how) {
      this.how = how;
    }

    synchronized T get() {
      if (value.isEmpty()) {
        value = Optional.of(how.get());
      }
      return value.get();
    }
  }
}
