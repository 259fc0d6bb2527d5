package slabwright.floor;

import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import slabwright.shape.Region;
import slabwright.site.MarkKind;
import slabwright.site.Worker;

/** Works out {@link Grinding} for a plan, with trenches as they lie or levelled. */
final class Grinder {
  private final Plan plan;
  private final double tolerance;
  private final BooleanSupplier cancelled;

  Grinder(Plan plan, double tolerance, BooleanSupplier cancelled) {
    this.plan = plan;
    this.tolerance = tolerance;
    this.cancelled = cancelled;
  }

  /** Net floor less what nobody grinds (trim that is masked). */
  Region ground() {
    return plan.floorOf(o -> worker(o) != Worker.NOBODY);
  }

  /** Whether some trench keeps the machine off until it is levelled. */
  boolean hasStoppingTrench() {
    return !plan.floorOf(this::stops).isEmpty();
  }

  Grinding grind(boolean levelled) {
    Region ground = ground();
    Region stopped = levelled ? Region.empty() : plan.floorOf(this::stops);
    Region drivable = plan.floorOf(o -> worker(o) != Worker.NOBODY && (levelled || !stops(o)));
    Region grindable = plan.floorOf(o -> worker(o) == Worker.MACHINE && (levelled || !stops(o)));
    MachineReach reach =
        new MachineReach(plan.area(), plan.gross(), drivable, grindable, tolerance);
    List<Reach> reaches =
        plan.area().machines().stream()
            .sorted(Comparator.comparing(m -> -m.body().mm()))
            .peek(m -> stopIfCancelled())
            .map(reach::of)
            .toList();
    Region machine = Region.union(reaches.stream().map(Reach::ground).toList());
    Region covered = Region.union(reaches.stream().map(Reach::covered).toList());
    Region hand = ground.minus(machine);
    double half = plan.area().machines().stream().mapToDouble(MachineReach::half).min().orElse(0);
    Region handOnly = plan.floorOf(o -> worker(o) == Worker.HAND);
    return new Grinding(
        reaches, machine, hand, HandWork.sort(hand, stopped, handOnly, covered, half));
  }

  private Worker worker(int owner) {
    return owner == Plan.SLAB ? Worker.MACHINE : plan.mark(owner).kind().type().worker();
  }

  private boolean stops(int owner) {
    return owner != Plan.SLAB
        && plan.mark(owner).kind() instanceof MarkKind.Trench trench
        && trench.stopsMachine();
  }

  private void stopIfCancelled() {
    if (cancelled.getAsBoolean()) {
      throw new CancellationException();
    }
  }
}
