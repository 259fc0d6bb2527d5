package slabwright.work;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
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

/** The types of one floor area's steps, the same with and without a day plan. */
record StepTypes(String areaId) {

  /**
   * Preparing the floor.
   *
   * @param filler what gaps are filled with, if the book has one
   */
  StepType prep(PrepStep step, StepMeans means, Optional<Product> filler) {
    return switch (step.kind()) {
      case LEVEL, RESIDUE, METAL_PASS, FINE_PASS ->
          StepType.grinding(areaId, step.subject(), means);
      case FILL ->
          StepType.prep(
              areaId,
              step.subject(),
              means,
              Set.of(),
              filler.map(p -> vapour(p, 1)).orElse(AirEffect.NONE));
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
    return StepType.coat(
        areaId, new CoatNumber(plan.job().place(), number), vapour(plan.product(), 1));
  }

  /** A mist coat through the stencils of one inlay that take the product, counted from 1. */
  StepType mist(InlayTakeoff inlay, CoatPlan plan, int number) {
    double share = CoatList.openings(inlay, plan.product()) / plan.job().mm2();
    return inlay(
        StepKind.MIST_COAT,
        inlay,
        plan,
        Optional.of(new CoatNumber(plan.job().place(), number)),
        vapour(plan.product(), share));
  }

  StepType lay(InlayTakeoff inlay, CoatPlan plan) {
    return inlay(StepKind.LAY_STENCIL, inlay, plan, Optional.empty(), AirEffect.NONE);
  }

  StepType pullUp(InlayTakeoff inlay, CoatPlan plan) {
    return inlay(StepKind.PULL_UP_STENCIL, inlay, plan, Optional.empty(), AirEffect.NONE);
  }

  private StepType inlay(
      StepKind kind, InlayTakeoff inlay, CoatPlan plan, Optional<CoatNumber> coat, AirEffect air) {
    List<Integer> stencils =
        IntStream.range(0, inlay.dyes().size())
            .filter(i -> inlay.dyes().get(i).product().equals(plan.product().id()))
            .boxed()
            .toList();
    return new StepType(
        areaId,
        StepSubject.of(kind, new StepPlace.Inlay(inlay.id())),
        StepMeans.HAND,
        coat,
        stencils,
        Set.of(),
        air);
  }

  /** Also where the book does not say what solvents a product has: then it is asked for later. */
  private static AirEffect vapour(Product product, double share) {
    boolean known = product.solvents().maybe().filter(List::isEmpty).isPresent();
    return known ? AirEffect.NONE : new AirEffect.Vapour(product.id(), share);
  }
}
