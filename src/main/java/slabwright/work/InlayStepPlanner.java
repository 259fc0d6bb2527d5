package slabwright.work;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.units.Message;
import slabwright.work.book.Figure;
import slabwright.work.book.InlayRates;
import slabwright.work.book.RateArithmetic;
import slabwright.work.book.ShopBook;
import slabwright.work.coat.CoatPlan;
import slabwright.work.step.StepKind;
import slabwright.work.step.StepPlace;
import slabwright.work.step.ToolKind;

/**
 * The steps of the inlays on a floor. Before: what the dye left is taken off, a tack test made and
 * the graphic set out. Then colour by colour in laying order, for stencils of one blank can't lie
 * together: lay to the marks, press, paper, mist coat by coat, pull up. After the last: dye residue
 * off again.
 */
final class InlayStepPlanner {
  private static final int LAYERS = 2;

  /** Taken where the book is silent: common practice, no source. */
  static final Duration TACK_TEST = Duration.ofMinutes(30);

  /** Taken where the book is silent: common practice, no source. */
  static final Duration SETTING_OUT = Duration.ofMinutes(45);

  private final AreaTakeoff floor;
  private final ShopBook book;
  private final InlayRates rates;
  private final StepSequence chain;
  private final StepTypes types;
  private final int layers;

  InlayStepPlanner(AreaTakeoff floor, ShopBook book, StepSequence chain, StepTypes types) {
    this.floor = floor;
    this.book = book;
    this.rates = book.inlay();
    this.chain = chain;
    this.types = types;
    this.layers = Math.min(LAYERS, book.crew().people().maybe().orElse(1));
  }

  /**
   * All inlays with the dyes of these coats, which follow each other in the finish.
   *
   * @param dyed whether the floor under them has been dyed
   */
  void add(List<CoatPlan> coats, boolean dyed) {
    List<InlayTakeoff> wanted =
        floor.inlays().stream()
            .filter(i -> i.dyes().stream().anyMatch(d -> coat(coats, d).isPresent()))
            .toList();
    if (wanted.isEmpty()) {
      return;
    }
    int place = coats.get(0).job().place();
    if (dyed) {
      residue("inlay." + place + ".residue", floor.net(), StepPlace.WHOLE_FLOOR);
    }
    for (InlayTakeoff inlay : wanted) {
      chain.append(List.of(tackTest(inlay, place), settingOut(inlay, place)));
      for (int s = 0; s < inlay.dyes().size(); s++) {
        int stencil = s;
        coat(coats, inlay.dyes().get(s)).ifPresent(c -> cycle(inlay, stencil, c));
      }
      residue(id(inlay, place, "residue"), inlay.covered(), new StepPlace.Inlay(inlay.id()));
    }
  }

  private StepSequence.StepDraft tackTest(InlayTakeoff inlay, int place) {
    return StepSequence.StepDraft.pausing(
        id(inlay, place, "tack"),
        Message.of("work.inlay-step-planner.tack-test", inlay.name()),
        types.plain(StepKind.TACK_TEST, new StepPlace.Inlay(inlay.id()), Set.of()),
        Figure.known(rates.tackTest().maybe().orElse(TACK_TEST)),
        1);
  }

  /** Beside the tack test: on the dyed floor, before any film. */
  private StepSequence.StepDraft settingOut(InlayTakeoff inlay, int place) {
    return new StepSequence.StepDraft(
        id(inlay, place, "set-out"),
        Message.of("work.inlay-step-planner.set-out", inlay.name()),
        types.plain(StepKind.SET_OUT, new StepPlace.Inlay(inlay.id()), Set.of()),
        Figure.known(rates.settingOut().maybe().orElse(SETTING_OUT)),
        layers,
        true,
        StepSequence.StepDraft.NO_ABRADING);
  }

  private static Optional<CoatPlan> coat(List<CoatPlan> coats, InlayTakeoff.StencilDye dye) {
    return dye.openings() <= 0
        ? Optional.empty()
        : coats.stream().filter(c -> c.product().id().equals(dye.product())).findFirst();
  }

  /** Dry, so that nothing has to dry before the film. */
  private void residue(String id, double mm2, StepPlace place) {
    chain.append(
        StepSequence.StepDraft.pausing(
            id,
            Message.of("work.inlay-step-planner.residue-off"),
            types.plain(StepKind.DYE_RESIDUE_OFF, place, Set.of(ToolKind.VACUUM)),
            RateArithmetic.time(mm2, book.prep().cleaning()),
            layers));
  }

  private void cycle(InlayTakeoff inlay, int stencil, CoatPlan plan) {
    InlayTakeoff.StencilDye dye = inlay.dyes().get(stencil);
    int number = stencil + 1;
    int all = inlay.dyes().size();
    Message colour = dye.name();
    append(
        new Part(inlay, stencil, plan, StepKind.LAY_STENCIL, "lay"),
        Message.of("work.inlay-step-planner.lay", number, all, colour, inlay.name()),
        RateArithmetic.time(dye.film(), rates.layStencil()),
        layers);
    append(
        new Part(inlay, stencil, plan, StepKind.PRESS_EDGES, "press"),
        Message.of("work.inlay-step-planner.press", number, all, colour, inlay.name()),
        RateArithmetic.time(dye.edges(), rates.press()),
        layers);
    append(
        new Part(inlay, stencil, plan, StepKind.LAY_PAPER, "paper"),
        Message.of("work.inlay-step-planner.paper", number, all, colour, inlay.name()),
        RateArithmetic.time(dye.paper(), rates.skirt()),
        layers);
    mists(inlay, stencil, plan);
    append(
        new Part(inlay, stencil, plan, StepKind.PULL_UP_STENCIL, "up"),
        Message.of("work.inlay-step-planner.pull-up", number, all, colour, inlay.name()),
        RateArithmetic.time(dye.film() + dye.paper(), rates.pullUp()),
        1);
  }

  /** After the last one the stencil may be pulled up as late as one likes. */
  private void mists(InlayTakeoff inlay, int stencil, CoatPlan plan) {
    InlayTakeoff.StencilDye dye = inlay.dyes().get(stencil);
    Figure<Duration> takes = RateArithmetic.time(dye.openings(), rates.mist());
    for (int i = 1; i <= plan.job().coats(); i++) {
      chain.append(
          new StepSequence.StepDraft(
              id(inlay, stencil, plan, "mist." + i),
              Message.of(
                  "work.inlay-step-planner.mist",
                  i,
                  stencil + 1,
                  inlay.dyes().size(),
                  dye.name(),
                  inlay.name()),
              types.mist(inlay, plan, stencil, i),
              takes,
              1,
              false,
              StepSequence.StepDraft.NO_ABRADING));
      chain.setGap(AreaStepPlanner.gap(plan, takes));
    }
    chain.setGap(
        AreaStepPlanner.gap(plan, takes)
            .map(g -> new StepSequence.RecoatGap(g.opens(), Optional.empty())));
  }

  /** A step with one stencil. */
  private record Part(InlayTakeoff inlay, int stencil, CoatPlan plan, StepKind kind, String word) {}

  private void append(Part part, Message name, Figure<Duration> personTime, int people) {
    chain.append(
        StepSequence.StepDraft.pausing(
            id(part.inlay(), part.stencil(), part.plan(), part.word()),
            name,
            types.stencil(part.kind(), part.inlay(), part.stencil()),
            personTime,
            people));
  }

  private static String id(InlayTakeoff inlay, int stencil, CoatPlan plan, String part) {
    String of = plan.job().place() + "." + plan.product().id() + "." + (stencil + 1);
    return "inlay." + inlay.id() + "." + of + "." + part;
  }

  private static String id(InlayTakeoff inlay, int place, String part) {
    return "inlay." + inlay.id() + "." + place + "." + part;
  }
}
