package slabwright.work;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.work.book.Product;
import slabwright.work.coat.CoatPlan;
import slabwright.work.prep.PrepStep;
import slabwright.work.step.AirEffect;
import slabwright.work.step.CoatNumber;
import slabwright.work.step.StepKind;
import slabwright.work.step.StepMeans;
import slabwright.work.step.StepPlace;
import slabwright.work.step.StepSubject;
import slabwright.work.step.StepType;
import slabwright.work.step.ToolKind;
import slabwright.work.top.TopTakeoff;

/**
 * The types of one floor area's steps, the same with and without a day plan.
 *
 * @param fan whether a fan moves the air while vapour is set free
 */
record StepTypes(String areaId, boolean fan) {
  static StepTypes of(AreaTakeoff floor) {
    boolean fan = !floor.isOutdoors() && floor.area().air().airflowM3PerHour() > 0;
    return new StepTypes(floor.area().id(), fan);
  }

  /** A mist coat is sprayed with a small gun. */
  private static final Set<ToolKind> MIST = Set.of(ToolKind.SPRAYER, ToolKind.COMPRESSOR);

  /**
   * Preparing the floor.
   *
   * @param filler what gaps are filled with, if the book has one
   */
  StepType prep(PrepStep step, StepMeans means, Optional<Product> filler) {
    return switch (step.kind()) {
      case LEVEL, RESIDUE, METAL_PASS, FINE_PASS ->
          StepType.grinding(areaId, step.subject(), means);
      case FILL -> {
        AirEffect air = filler.map(p -> vapour(p, 1)).orElse(AirEffect.NONE);
        yield StepType.prep(areaId, step.subject(), means, tools(Set.of(), air), air);
      }
      case CLEAN ->
          StepType.prep(areaId, step.subject(), means, Set.of(ToolKind.VACUUM), AirEffect.NONE);
    };
  }

  StepType top(TopTakeoff top) {
    StepKind kind = top.steps() > 1 ? StepKind.GRIND_STEPS : StepKind.GRIND_TOP;
    return StepType.grinding(
        areaId, StepSubject.of(kind, new StepPlace.TopOrStep(top.id())), StepMeans.HAND);
  }

  /** A coat of the whole floor, counted from 1. */
  StepType coat(CoatPlan plan, int number) {
    return coat(plan, number, 1);
  }

  /** The same for a share of the floor, 0 to 1. */
  StepType coat(CoatPlan plan, int number, double share) {
    AirEffect air = vapour(plan.product(), share);
    Set<ToolKind> tools = plan.product().laying().isSprayed() ? Set.of(ToolKind.SPRAYER) : Set.of();
    return StepType.coat(
        areaId, new CoatNumber(plan.job().place(), number), tools(tools, air), air);
  }

  /**
   * A mist coat through one stencil, counted from 1.
   *
   * @param stencil its place in laying order from 0
   */
  StepType mist(InlayTakeoff inlay, CoatPlan plan, int stencil, int number) {
    double share = inlay.dyes().get(stencil).openings() / plan.job().mm2();
    return inlay(
        StepKind.MIST_COAT,
        inlay,
        stencil,
        Optional.of(new CoatNumber(plan.job().place(), number)),
        MIST,
        vapour(plan.product(), share));
  }

  /** A step with one stencil that sets no vapour free. */
  StepType stencil(StepKind kind, InlayTakeoff inlay, int stencil) {
    return inlay(kind, inlay, stencil, Optional.empty(), Set.of(), AirEffect.NONE);
  }

  /** What the whole crew does on no floor area. */
  static StepType job(StepKind kind) {
    return StepType.prep(
        "", StepSubject.of(kind, StepPlace.WHOLE_FLOOR), StepMeans.HAND, Set.of(), AirEffect.NONE);
  }

  /** A step of an inlay's whole place or of the whole floor that sets nothing free. */
  StepType plain(StepKind kind, StepPlace place, Set<ToolKind> tools) {
    return StepType.prep(
        areaId, StepSubject.of(kind, place), StepMeans.HAND, tools, AirEffect.NONE);
  }

  private Set<ToolKind> tools(Set<ToolKind> tools, AirEffect air) {
    Set<ToolKind> all = EnumSet.noneOf(ToolKind.class);
    all.addAll(tools);
    if (fan && air instanceof AirEffect.Vapour) {
      all.add(ToolKind.FAN);
    }
    return all;
  }

  private StepType inlay(
      StepKind kind,
      InlayTakeoff inlay,
      int stencil,
      Optional<CoatNumber> coat,
      Set<ToolKind> tools,
      AirEffect air) {
    return new StepType(
        areaId,
        StepSubject.of(kind, new StepPlace.Inlay(inlay.id())),
        StepMeans.HAND,
        coat,
        List.of(stencil),
        tools(tools, air),
        air);
  }

  /** Also where the book does not say what solvents a product has: then it is asked for later. */
  private static AirEffect vapour(Product product, double share) {
    boolean known = product.solvents().maybe().filter(List::isEmpty).isPresent();
    return known ? AirEffect.NONE : new AirEffect.Vapour(product.id(), share);
  }
}
