package slabwright.work;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import slabwright.units.Message;
import slabwright.work.book.Figure;
import slabwright.work.book.RateArithmetic;
import slabwright.work.book.ShopBook;
import slabwright.work.coat.CoatPlan;
import slabwright.work.coat.DividedCoat;

/** The steps of coats that are laid in sections, in one floor area's chain of steps; one use. */
final class SectionSteps {
  private final StepSequence chain;
  private final StepTypes types;
  private final ShopBook book;
  private final double net;
  private Optional<CoatPlan> lastDivided = Optional.empty();

  /**
   * Nothing laid yet.
   *
   * @param net floor that is abraded before a coat that comes late, mm²
   */
  SectionSteps(StepSequence chain, StepTypes types, ShopBook book, double net) {
    this.chain = chain;
    this.types = types;
    this.book = book;
    this.net = net;
  }

  /** The next step lies on all of the floor. */
  void nextWaitsForAll() {
    lastDivided.ifPresent(before -> waitFor(before, before.divided().orElseThrow().sections()));
    lastDivided = Optional.empty();
  }

  /**
   * Where a coat takes days, section by section, each with all its coats: none waits longer for the
   * next than it may. Where it takes no longer than a day, coat by coat.
   */
  void add(CoatPlan plan, DividedCoat divided) {
    List<DividedCoat.Section> all = divided.sections();
    if (isDoneInADay(plan)) {
      for (int i = 1; i <= plan.job().coats(); i++) {
        for (DividedCoat.Section s : all) {
          section(plan, i, s);
          chain.setGap(
              s.number() == all.size() ? AreaStepPlanner.gap(s.plan()) : walkable(s.plan()));
        }
      }
    } else {
      for (DividedCoat.Section s : all) {
        for (int i = 1; i <= plan.job().coats(); i++) {
          section(plan, i, s);
          boolean dries = i < plan.job().coats() || s.number() == all.size();
          chain.setGap(dries ? AreaStepPlanner.gap(s.plan()) : walkable(s.plan()));
        }
      }
    }
    lastDivided = Optional.of(plan);
  }

  private boolean isDoneInADay(CoatPlan plan) {
    return plan.coatTime()
        .with(StepHours.inOneGo(book), (time, day) -> time.compareTo(day) <= 0)
        .maybe()
        .orElse(false);
  }

  private void section(CoatPlan plan, int coat, DividedCoat.Section s) {
    int people = plan.job().people().maybe().orElse(1);
    DividedCoat divided = plan.divided().orElseThrow();
    if (coat == 1) {
      waitForWhatLiesBelow(divided, s);
    } else {
      chain.waitAlso(plan.stepId(coat - 1, s), AreaStepPlanner.gap(s.plan()));
    }
    chain.append(
        new StepSequence.StepDraft(
            plan.stepId(coat, s),
            Message.of(
                "work.area-step-planner.section",
                Message.of("work.area-step-planner.coat", plan.product().label(), coat),
                s.number(),
                divided.sections().size()),
            types.coat(plan, coat, s.share()),
            AreaStepPlanner.length(s.plan()),
            people,
            false,
            abrading(book, net, people)
                .map(t -> Duration.ofMillis(Math.round(t.toMillis() * s.share())))));
  }

  /** The same section of the coat before; all of them, where it was divided elsewhere. */
  private void waitForWhatLiesBelow(DividedCoat now, DividedCoat.Section s) {
    lastDivided.ifPresent(
        before -> {
          DividedCoat then = before.divided().orElseThrow();
          boolean same = then.lines().equals(now.lines());
          waitFor(before, same ? List.of(then.sections().get(s.number() - 1)) : then.sections());
        });
  }

  /** The last section of a coat is what the chain waits for anyway. */
  private void waitFor(CoatPlan before, List<DividedCoat.Section> sections) {
    int all = before.divided().orElseThrow().sections().size();
    sections.stream()
        .filter(s -> s.number() < all)
        .forEach(
            s ->
                chain.waitAlso(
                    before.stepId(before.job().coats(), s), AreaStepPlanner.gap(s.plan())));
  }

  /** The next section is begun as soon as nobody has to wait; what dries is not walked on. */
  private static Figure<StepSequence.RecoatGap> walkable(CoatPlan plan) {
    return AreaStepPlanner.gap(plan).map(g -> StepSequence.RecoatGap.NONE);
  }

  /** Time to abrade the floor before a coat that missed its window. */
  static Figure<Duration> abrading(ShopBook book, double net, int people) {
    return RateArithmetic.time(net, book.prep().abrading()).map(t -> t.dividedBy(people));
  }
}
