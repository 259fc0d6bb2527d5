package slabwright.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import slabwright.shape.ActiveLayers;
import slabwright.shape.Arrangement;
import slabwright.shape.Layer;
import slabwright.shape.Region;

/**
 * The floor to be ground, what the machines may grind and what they sweep, noded once: machine and
 * hand work read off it are disjoint and sum to the floor to be ground.
 */
final class GrindingFaces {
  private static final int GROUND = 0;
  private static final int GRINDABLE = 1;
  private static final int TRENCH = 2;
  private static final int HAND_ONLY = 3;
  private static final int FIRST_SWEEP = 4;

  private final int sweeps;
  private final Arrangement faces;

  GrindingFaces(
      Region ground,
      Region grindable,
      Region trenches,
      Region handOnly,
      List<MachineReach.Sweep> sweeps,
      BooleanSupplier cancelled) {
    this.sweeps = sweeps.size();
    List<Layer> layers = new ArrayList<>();
    layers.add(Layer.of(GROUND, ground));
    layers.add(Layer.of(GRINDABLE, grindable));
    layers.add(Layer.of(TRENCH, trenches));
    layers.add(Layer.of(HAND_ONLY, handOnly));
    for (int i = 0; i < sweeps.size(); i++) {
      layers.add(Layer.of(FIRST_SWEEP + 2 * i, sweeps.get(i).ground()));
      layers.add(Layer.of(FIRST_SWEEP + 2 * i + 1, sweeps.get(i).covered()));
    }
    faces = new Arrangement(layers, cancelled);
  }

  /** What machine i grinds. */
  Region ground(int i) {
    return region(a -> isGround(a, i));
  }

  Region machine() {
    return region(this::isMachine);
  }

  Region hand() {
    return region(this::isHand);
  }

  Region trenches() {
    return region(a -> isHand(a) && a.contains(TRENCH));
  }

  Region handOnly() {
    return region(a -> isHand(a) && a.contains(HAND_ONLY) && !a.contains(TRENCH));
  }

  /** Hand work on floor that a machine could grind. */
  Region open() {
    return region(this::isOpen);
  }

  /** What of it lies under no machine's body. */
  Region uncovered() {
    return region(
        a ->
            isOpen(a)
                && IntStream.range(0, sweeps).noneMatch(i -> a.contains(FIRST_SWEEP + 2 * i + 1)));
  }

  private boolean isGround(ActiveLayers a, int i) {
    return a.contains(GROUND) && a.contains(GRINDABLE) && a.contains(FIRST_SWEEP + 2 * i);
  }

  private boolean isMachine(ActiveLayers a) {
    return IntStream.range(0, sweeps).anyMatch(i -> isGround(a, i));
  }

  private boolean isHand(ActiveLayers a) {
    return a.contains(GROUND) && !isMachine(a);
  }

  private boolean isOpen(ActiveLayers a) {
    return isHand(a) && !a.contains(TRENCH) && !a.contains(HAND_ONLY);
  }

  private Region region(Predicate<ActiveLayers> inside) {
    return faces
        .partition(a -> inside.test(a) ? Optional.of(true) : Optional.<Boolean>empty())
        .getOrDefault(true, Region.empty());
  }
}
