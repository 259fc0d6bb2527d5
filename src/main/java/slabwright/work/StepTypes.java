package slabwright.work;

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
        vapour(plan.product(), share));
  }

  /** A step with one stencil that sets no vapour free. */
  StepType stencil(StepKind kind, InlayTakeoff inlay, int stencil) {
    return inlay(kind, inlay, stencil, Optional.empty(), AirEffect.NONE);
  }

  /** A step of an inlay's whole place or of the whole floor that sets nothing free. */
  StepType plain(StepKind kind, StepPlace place, Set<ToolKind> tools) {
    return StepType.prep(
        areaId, StepSubject.of(kind, place), StepMeans.HAND, tools, AirEffect.NONE);
  }

  private StepType inlay(
      StepKind kind, InlayTakeoff inlay, int stencil, Optional<CoatNumber> coat, AirEffect air) {
    return new StepType(
        areaId,
        StepSubject.of(kind, new StepPlace.Inlay(inlay.id())),
        StepMeans.HAND,
        coat,
        List.of(stencil),
        Set.of(),
        air);
  }

  /** Also where the book does not say what solvents a product has: then it is asked for later. */
  private static AirEffect vapour(Product product, double share) {
    boolean known = product.solvents().maybe().filter(List::isEmpty).isPresent();
    return known ? AirEffect.NONE : new AirEffect.Vapour(product.id(), share);
  }
}
