package slabwright.work;

import java.time.Duration;
import java.util.List;
import slabwright.units.Message;
import slabwright.work.book.Figure;
import slabwright.work.book.InlayRates;
import slabwright.work.book.RateArithmetic;
import slabwright.work.book.ShopBook;
import slabwright.work.coat.CoatPlan;

/** The steps of the inlays on a floor: lay and mask, mist coat by coat, pull up. */
final class InlayStepPlanner {
  private static final int LAYERS = 2;

  private final AreaTakeoff floor;
  private final InlayRates rates;
  private final StepSequence chain;
  private final StepTypes types;
  private final int layers;

  InlayStepPlanner(AreaTakeoff floor, ShopBook book, StepSequence chain, StepTypes types) {
    this.floor = floor;
    this.rates = book.inlay();
    this.chain = chain;
    this.types = types;
    this.layers = Math.min(LAYERS, book.crew().people().maybe().orElse(1));
  }

  /** All inlays with the product that this plan is of. */
  void add(CoatPlan plan) {
    floor.inlays().forEach(inlay -> add(inlay, plan));
  }

  private void add(InlayTakeoff inlay, CoatPlan plan) {
    double openings = CoatList.openings(inlay, plan.product());
    if (openings == 0) {
      return;
    }
    chain.append(
        StepSequence.StepDraft.pausing(
            id(inlay, plan, "lay"),
            Message.of("work.inlay-step-planner.lay-stencil", inlay.name()),
            types.lay(inlay, plan),
            laying(inlay),
            layers));
    for (int i = 1; i <= plan.job().coats(); i++) {
      chain.append(mist(inlay, plan, openings, i));
      chain.setGap(AreaStepPlanner.gap(plan));
    }
    chain.append(
        StepSequence.StepDraft.pausing(
            id(inlay, plan, "up"),
            Message.of("work.inlay-step-planner.pull-up-stencil", inlay.name()),
            types.pullUp(inlay, plan),
            pulling(inlay),
            1));
  }

  private StepSequence.StepDraft mist(
      InlayTakeoff inlay, CoatPlan plan, double openings, int coat) {
    return new StepSequence.StepDraft(
        id(inlay, plan, "mist." + coat),
        Message.of("work.inlay-step-planner.mist-coat", coat, inlay.name()),
        types.mist(inlay, plan, coat),
        RateArithmetic.time(openings, rates.mist()),
        1,
        false,
        StepSequence.StepDraft.NO_ABRADING);
  }

  private static String id(InlayTakeoff inlay, CoatPlan plan, String step) {
    return "inlay."
        + inlay.id()
        + "."
        + plan.job().place()
        + "."
        + plan.product().id()
        + "."
        + step;
  }

  private Figure<Duration> laying(InlayTakeoff inlay) {
    return Figure.all(
            List.of(
                RateArithmetic.time(inlay.blank(), rates.layStencil()),
                RateArithmetic.time(inlay.edges(), rates.press()),
                RateArithmetic.time(inlay.skirt(), rates.skirt())))
        .map(l -> l.stream().reduce(Duration.ZERO, Duration::plus));
  }

  private Figure<Duration> pulling(InlayTakeoff inlay) {
    return RateArithmetic.time(inlay.blank() + inlay.skirt(), rates.pullUp());
  }
}
