package slabwright.floor;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import slabwright.shape.ActiveLayers;
import slabwright.shape.Arrangement;
import slabwright.shape.Border;
import slabwright.shape.BoxArea;
import slabwright.shape.FillRule;
import slabwright.shape.Layer;
import slabwright.shape.Region;
import slabwright.site.FloorArea;
import slabwright.site.Mark;
import slabwright.site.MarkType;

/**
 * A floor area noded once: the outline is layer {@link #OUTLINE}, mark i is layer i. Every face is
 * outside, under something that stands, or owned by the topmost mark that counts as a zone. What
 * machines sweep can be noded with it; sweeps own nothing.
 */
public final class FloorArrangement {
  static final int OUTLINE = -1;

  /** Below the outline, so that none is ever the topmost. */
  private static final int FIRST_SWEEP = OUTLINE - 1;

  /** The label of bare floor, under no mark. */
  static final int SLAB = -1;

  private final FloorArea area;
  private final OutlineRing outline;
  private final Map<Integer, Region> forms = new HashMap<>();
  private final List<Layer> layers = new ArrayList<>();
  private final Arrangement arrangement;

  public FloorArrangement(FloorArea area, double tolerance, BooleanSupplier cancelled) {
    this(area, new OutlineRing(area, tolerance), m -> m.form().region(tolerance), cancelled);
  }

  /**
   * The floor as it is inside the window; what is read off it elsewhere means nothing.
   *
   * @param area with the marks that meet the window, or more
   * @param form what a mark covers
   */
  static FloorArrangement about(
      BoxArea window,
      FloorArea area,
      Function<Mark, Region> form,
      double tolerance,
      BooleanSupplier cancelled) {
    OutlineRing outline = new OutlineRing(area, tolerance).about(window.bounds());
    return new FloorArrangement(area, outline, form, cancelled);
  }

  private FloorArrangement(
      FloorArea area,
      OutlineRing outline,
      Function<Mark, Region> forms,
      BooleanSupplier cancelled) {
    this.area = area;
    this.outline = outline;
    layers.add(new Layer(OUTLINE, List.of(outline.ring()), FillRule.NONZERO));
    for (int i = 0; i < area.marks().size(); i++) {
      Mark mark = area.marks().get(i);
      if (owns(mark.kind().type())) {
        Region form = forms.apply(mark);
        if (!form.isEmpty()) {
          this.forms.put(i, form);
          layers.add(Layer.of(i, form));
        }
      }
    }
    arrangement = new Arrangement(layers, cancelled);
  }

  private FloorArrangement(
      FloorArrangement bare,
      OutlineRing outline,
      Predicate<Region> seen,
      List<Region> sweeps,
      BooleanSupplier cancelled) {
    area = bare.area;
    this.outline = outline;
    layers.add(new Layer(OUTLINE, List.of(outline.ring()), FillRule.NONZERO));
    bare.forms.forEach(
        (i, form) -> {
          if (seen.test(form)) {
            forms.put(i, form);
            layers.add(Layer.of(i, form));
          }
        });
    for (int i = 0; i < sweeps.size(); i++) {
      layers.add(Layer.of(FIRST_SWEEP - i, sweeps.get(i)));
    }
    arrangement = new Arrangement(layers, cancelled);
  }

  /** The same floor noded together with what is swept, so that all that is read off it sums. */
  FloorArrangement withSweeps(List<Region> sweeps, BooleanSupplier cancelled) {
    return sweeps.isEmpty()
        ? this
        : new FloorArrangement(this, outline, form -> true, sweeps, cancelled);
  }

  /** The same of what lies inside a narrower window alone. */
  FloorArrangement withSweeps(List<Region> sweeps, BoxArea window, BooleanSupplier cancelled) {
    return new FloorArrangement(
        this,
        outline.about(window.bounds()),
        form -> window.meets(form.bounds()),
        sweeps,
        cancelled);
  }

  /** Whether marks of the kind own floor; the others only say that something is there. */
  static boolean owns(MarkType type) {
    return switch (type) {
      case TRENCH, PATCH, RESIDUE, JOINT, CRACK, SPALL, DRAIN_OR_BOX, MASKED_TRIM -> true;
      case ISLAND, BOOTH, COLUMN, TOP_OR_STEP -> true;
      case LEVEL_CHANGE, POWER_POINT, DETECTOR, IGNITION_SOURCE, AIR_OUTLET -> false;
    };
  }

  FloorArea area() {
    return area;
  }

  OutlineRing outline() {
    return outline;
  }

  Mark mark(int label) {
    return area.marks().get(label);
  }

  /** What mark i covers, inside the outline or not; nothing for a line, a place or a sign. */
  Optional<Region> form(int i) {
    return Optional.ofNullable(forms.get(i));
  }

  boolean isObstacle(int label) {
    return label != SLAB && !mark(label).kind().type().isFloor();
  }

  /** The whole inside of the outline. */
  Region gross() {
    return one(a -> a.contains(OUTLINE));
  }

  /** Every owner's region: bare floor, zones and what stands. */
  Map<Integer, Region> owners() {
    return arrangement.partition(this::owner);
  }

  /** Pieces between different owners, and to the outside. */
  List<Border<Integer>> borders() {
    return arrangement.borders(this::owner);
  }

  /** The net floor whose owners pass. */
  public Region floorOf(IntPredicate owner) {
    return one(a -> owner(a).filter(o -> !isObstacle(o) && owner.test(o)).isPresent());
  }

  /** What to call a piece of net floor. */
  interface FaceLabel<L> {
    /** A label by the owner and the sweeps, by number, that pass over it. */
    Optional<L> of(int owner, IntPredicate swept);
  }

  /** The net floor by labels. */
  <L> Map<L, Region> partitionFloor(FaceLabel<L> label) {
    return arrangement.partition(
        a ->
            owner(a)
                .filter(o -> !isObstacle(o))
                .flatMap(o -> label.of(o, sweep -> a.contains(FIRST_SWEEP - sweep))));
  }

  private Optional<Integer> owner(ActiveLayers active) {
    if (!active.contains(OUTLINE)) {
      return Optional.empty();
    }
    OptionalInt standing = active.topWhere(i -> i > OUTLINE && isObstacle(i));
    return Optional.of(standing.orElseGet(() -> topFloor(active)));
  }

  private static int topFloor(ActiveLayers active) {
    int top = active.top();
    return top == OUTLINE ? SLAB : top;
  }

  private Region one(Predicate<ActiveLayers> inside) {
    Collection<Region> regions =
        arrangement
            .partition(a -> inside.test(a) ? Optional.of(true) : Optional.<Boolean>empty())
            .values();
    return regions.isEmpty() ? Region.empty() : regions.iterator().next();
  }
}
