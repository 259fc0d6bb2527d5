package slabwright.floor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import slabwright.shape.Region;
import slabwright.site.Machine;
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
    MachineReach reach = reach(levelled);
    List<MachineReach.Sweep> sweeps = new ArrayList<>();
    for (Machine machine : widestFirst()) {
      stopIfCancelled();
      sweeps.add(reach.of(machine));
    }
    GrindingFaces faces =
        new GrindingFaces(
            ground(),
            grindable(levelled),
            levelled ? Region.empty() : plan.floorOf(this::stops),
            plan.floorOf(o -> worker(o) == Worker.HAND),
            sweeps,
            cancelled);
    List<Reach> reaches = new ArrayList<>();
    for (int i = 0; i < sweeps.size(); i++) {
      MachineReach.Sweep s = sweeps.get(i);
      reaches.add(new Reach(s.machine(), s.middle(), faces.ground(i)));
    }
    return new Grinding(
        reaches, faces.machine(), faces.hand(), HandWork.sort(faces, narrowest(), tolerance));
  }

  /** Reach over the floor that is not stopped. */
  MachineReach reach(boolean levelled) {
    Region drivable = plan.floorOf(o -> worker(o) != Worker.NOBODY && (levelled || !stops(o)));
    return new MachineReach(plan.area(), plan.gross(), drivable, tolerance);
  }

  /** What one machine grinds, in the plan or not. */
  Region ground(Machine machine, boolean levelled) {
    return reach(levelled).of(machine).ground().intersect(grindable(levelled));
  }

  private Region grindable(boolean levelled) {
    return plan.floorOf(o -> worker(o) == Worker.MACHINE && (levelled || !stops(o)));
  }

  private List<Machine> widestFirst() {
    return plan.area().machines().stream()
        .sorted(Comparator.comparingDouble(m -> -m.body().mm()))
        .toList();
  }

  private double narrowest() {
    return plan.area().machines().stream().mapToDouble(MachineReach::half).min().orElse(0);
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
