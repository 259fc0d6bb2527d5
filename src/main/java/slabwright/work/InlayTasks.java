package slabwright.work;

import java.time.Duration;
import java.util.List;
import slabwright.work.book.Figure;
import slabwright.work.book.Hours;
import slabwright.work.book.InlayRates;
import slabwright.work.book.ShopBook;
import slabwright.work.coat.CoatPlan;

/** The steps of the inlays on a floor: lay and mask, mist coat by coat, pull up. */
final class InlayTasks {
  private static final int LAYERS = 2;

  private final FloorWork floor;
  private final InlayRates rates;
  private final TaskChain chain;
  private final int layers;

  InlayTasks(FloorWork floor, ShopBook book, TaskChain chain) {
    this.floor = floor;
    this.rates = book.inlay();
    this.chain = chain;
    this.layers = Math.min(LAYERS, book.crew().people().maybe().orElse(1));
  }

  /** All inlays with the product that this plan is of. */
  void add(CoatPlan plan) {
    floor.inlays().forEach(inlay -> add(inlay, plan));
  }

  private void add(InlayWork inlay, CoatPlan plan) {
    double openings = CoatList.openings(inlay, plan.product());
    if (openings == 0) {
      return;
    }
    chain.then(
        TaskChain.Step.pausing(
            id(inlay, plan, "lay"), "Lay stencil: " + inlay.name(), laying(inlay), layers));
    for (int i = 1; i <= plan.job().coats(); i++) {
      chain.then(mist(inlay, plan, openings, i));
      chain.waiting(AreaTasks.gap(plan));
    }
    chain.then(
        TaskChain.Step.pausing(
            id(inlay, plan, "up"), "Pull up stencil: " + inlay.name(), pulling(inlay), 1));
  }

  private TaskChain.Step mist(InlayWork inlay, CoatPlan plan, double openings, int coat) {
    return new TaskChain.Step(
        id(inlay, plan, "mist." + coat),
        "Mist coat " + coat + ": " + inlay.name(),
        Hours.of(openings, rates.mist()),
        1,
        false,
        Figure.missing("abrading"));
  }

  static String id(InlayWork inlay, CoatPlan plan, String step) {
    return "inlay."
        + inlay.id()
        + "."
        + plan.job().place()
        + "."
        + plan.product().id()
        + "."
        + step;
  }

  private Figure<Duration> laying(InlayWork inlay) {
    return Figure.all(
            List.of(
                Hours.of(inlay.blank(), rates.layStencil()),
                Hours.of(inlay.edges(), rates.press()),
                Hours.of(inlay.skirt(), rates.skirt())))
        .map(l -> l.stream().reduce(Duration.ZERO, Duration::plus));
  }

  private Figure<Duration> pulling(InlayWork inlay) {
    return Hours.of(inlay.blank() + inlay.skirt(), rates.pullUp());
  }
}
