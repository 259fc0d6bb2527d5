package slabwright.floor;

import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import slabwright.shape.Region;

/**
 * Who grinds which face of a floor noded together with what the machines sweep: machine and hand
 * work read off it are disjoint and sum to the floor to be ground.
 */
final class GrindingFaces {
  private final FloorArrangement faces;
  private final GrindingRules rules;
  private final int machines;
  private final int firstSweep;

  /**
   * Two sweeps a machine, head and body, from number {@code firstSweep} on.
   *
   * @param faces with the sweeps
   */
  GrindingFaces(FloorArrangement faces, GrindingRules rules, int machines, int firstSweep) {
    this.faces = faces;
    this.rules = rules;
    this.machines = machines;
    this.firstSweep = firstSweep;
  }

  /** What machine i grinds. */
  Region ground(int i) {
    return faces
        .partitionFloor(
            (o, swept) -> isGround(o, swept, i) ? Optional.of(true) : Optional.<Boolean>empty())
        .getOrDefault(true, Region.empty());
  }

  /** What each machine grinds of what the machines before it leave, by its number. */
  Map<Integer, Region> shares() {
    return faces.partitionFloor(
        (o, swept) ->
            IntStream.range(0, machines).filter(i -> isGround(o, swept, i)).boxed().findFirst());
  }

  /** Hand work on trenches, by owner. */
  Map<Integer, Region> onTrenches() {
    return faces.partitionFloor(
        (o, swept) ->
            rules.isTrench(o) && !isMachine(o, swept) ? Optional.of(o) : Optional.<Integer>empty());
  }

  /** What the machines grind between them (true) and what is left to hand tools (false). */
  Map<Boolean, Region> byMachine() {
    return faces.partitionFloor(
        (o, swept) ->
            rules.isGround(o) ? Optional.of(isMachine(o, swept)) : Optional.<Boolean>empty());
  }

  /** Hand work by kind; corners are still among the pockets. */
  Map<HandWorkKind, Region> hand() {
    return faces.partitionFloor(
        (o, swept) ->
            rules.isGround(o) && !isMachine(o, swept)
                ? Optional.of(kind(o, swept))
                : Optional.<HandWorkKind>empty());
  }

  private HandWorkKind kind(int owner, IntPredicate swept) {
    if (rules.isStopped(owner)) {
      return HandWorkKind.TRENCH;
    }
    if (rules.isHandOnly(owner)) {
      return HandWorkKind.HAND_ONLY;
    }
    boolean covered =
        IntStream.range(0, machines).anyMatch(i -> swept.test(firstSweep + 2 * i + 1));
    return covered ? HandWorkKind.EDGE_STRIP : HandWorkKind.POCKET;
  }

  private boolean isMachine(int owner, IntPredicate swept) {
    return IntStream.range(0, machines).anyMatch(i -> isGround(owner, swept, i));
  }

  private boolean isGround(int owner, IntPredicate swept, int i) {
    return rules.isGrindable(owner) && swept.test(firstSweep + 2 * i);
  }
}
