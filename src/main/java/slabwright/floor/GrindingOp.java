package slabwright.floor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import slabwright.shape.Region;
import slabwright.site.Machine;

/** Works out {@link GrindingSplit} for a plan, with trenches as they lie or levelled. */
public final class GrindingOp {
  private final FloorArrangement plan;
  private final GrindingRules rules;
  private final double tolerance;
  private final BooleanSupplier cancelled;

  public GrindingOp(
      FloorArrangement plan, boolean levelled, double tolerance, BooleanSupplier cancelled) {
    this.plan = plan;
    rules = new GrindingRules(plan, levelled);
    this.tolerance = tolerance;
    this.cancelled = cancelled;
  }

  /** Whether some trench keeps the machines off. */
  boolean isStopped() {
    return !plan.floorOf(rules::isStopped).isEmpty();
  }

  /** What each machine sweeps, the widest body first. */
  List<MachineReach.Sweep> sweeps() {
    MachineReach reach = reach();
    List<MachineReach.Sweep> sweeps = new ArrayList<>();
    for (Machine machine : widestFirst()) {
      if (cancelled.getAsBoolean()) {
        throw new CancellationException();
      }
      sweeps.add(reach.of(machine));
    }
    return sweeps;
  }

  /**
   * Reads the work off a floor that was noded with the sweeps.
   *
   * @param firstSweep the number of their first
   */
  GrindingSplit compute(FloorArrangement faces, List<MachineReach.Sweep> sweeps, int firstSweep) {
    GrindingFaces read = new GrindingFaces(faces, rules, sweeps.size(), firstSweep);
    Map<Boolean, Region> byMachine = read.byMachine();
    Region machine = byMachine.getOrDefault(true, Region.empty());
    Map<Integer, Region> parts = read.shares();
    List<ReachedFloor> reaches = new ArrayList<>();
    List<MachineShare> shares = new ArrayList<>();
    for (int i = 0; i < sweeps.size(); i++) {
      Region ground = sweeps.size() == 1 ? machine : read.ground(i);
      MachineReach.Sweep w = sweeps.get(i);
      reaches.add(new ReachedFloor(w.machine(), w.rolls(), w.middle(), ground, w.lost()));
      Region part = parts.getOrDefault(i, Region.empty());
      shares.add(new MachineShare(sweeps.get(i).machine(), part));
    }
    Map<String, Double> trenches = new HashMap<>();
    read.onTrenches().forEach((o, part) -> trenches.put(plan.mark(o).id(), part.area()));
    return new GrindingSplit(
        reaches,
        machine,
        byMachine.getOrDefault(false, Region.empty()),
        HandWorkPiece.sorted(read.hand(), narrowest()),
        shares,
        trenches);
  }

  /** Reach over the floor that is not stopped. */
  public MachineReach reach() {
    return new MachineReach(
        plan.area(), plan.gross(), plan.floorOf(rules::isDrivable), tolerance, cancelled);
  }

  /** The floor that machines may grind, whether they get there or not. */
  public Region grindable() {
    return plan.floorOf(rules::isGrindable);
  }

  private List<Machine> widestFirst() {
    return plan.area().machines().stream()
        .sorted(Comparator.comparingDouble(m -> -m.body().mm()))
        .toList();
  }

  private double narrowest() {
    return plan.area().machines().stream().mapToDouble(MachineReach::half).min().orElse(0);
  }
}
