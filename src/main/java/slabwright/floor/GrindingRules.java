package slabwright.floor;

import slabwright.site.GrindingAccess;
import slabwright.site.MarkKind;

/** Who may work on the floor of which owner, with the trenches as they lie or levelled. */
public final class GrindingRules {
  private final FloorArrangement plan;
  private final boolean levelled;

  public GrindingRules(FloorArrangement plan, boolean levelled) {
    this.plan = plan;
    this.levelled = levelled;
  }

  /** Nobody grinds trim that is masked. */
  boolean isGround(int owner) {
    return worker(owner) != GrindingAccess.NOBODY;
  }

  boolean isHandOnly(int owner) {
    return worker(owner) == GrindingAccess.HAND;
  }

  /** Whether a machine can drive here. */
  public boolean isDrivable(int owner) {
    return isGround(owner) && !isStopped(owner);
  }

  /** Whether a machine may grind here. */
  boolean isGrindable(int owner) {
    return worker(owner) == GrindingAccess.MACHINE && !isStopped(owner);
  }

  /** A trench that keeps the machine off until it is levelled. */
  boolean isStopped(int owner) {
    return !levelled
        && owner != FloorArrangement.SLAB
        && plan.mark(owner).kind() instanceof MarkKind.Trench trench
        && trench.stopsMachine();
  }

  boolean isTrench(int owner) {
    return owner != FloorArrangement.SLAB && plan.mark(owner).kind() instanceof MarkKind.Trench;
  }

  private GrindingAccess worker(int owner) {
    return owner == FloorArrangement.SLAB
        ? GrindingAccess.MACHINE
        : plan.mark(owner).kind().type().worker();
  }
}
