package slabwright.work;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;
import slabwright.site.AdviceId;
import slabwright.site.Finish;
import slabwright.units.Message;
import slabwright.work.book.Figure;
import slabwright.work.book.Product;
import slabwright.work.book.ProductKind;
import slabwright.work.book.RateArithmetic;
import slabwright.work.book.ShopBook;
import slabwright.work.book.TemperatureTable;
import slabwright.work.coat.CoatPlan;
import slabwright.work.days.JobTool;
import slabwright.work.days.WorkStep;
import slabwright.work.prep.MixPlan;
import slabwright.work.prep.PrepPlan;
import slabwright.work.prep.PrepStep;
import slabwright.work.step.StepKind;
import slabwright.work.step.StepMeans;
import slabwright.work.step.StepPlace;
import slabwright.work.step.StepType;
import slabwright.work.step.ToolKind;
import slabwright.work.top.TopPlan;

/** The steps of one floor area in the order a crew does them. */
final class AreaStepPlanner {
  /** Taken where the book is silent: common practice, no source. */
  private static final Duration SAMPLE_PANEL = Duration.ofHours(2);

  private final AreaTakeoff floor;
  private final ShopBook book;
  private final List<JobTool> tools;
  private final int crew;
  private final StepSequence chain;
  private final StepTypes types;
  private final SectionSteps sections;
  private final Optional<Product> filler;

  /** The grinding pass just before. */
  private Optional<PrepStep> passed = Optional.empty();

  private boolean masked;
  private boolean blown;

  private AreaStepPlanner(AreaTakeoff floor, ShopBook book, List<JobTool> tools) {
    this.floor = floor;
    this.book = book;
    this.tools = tools;
    this.crew = book.crew().people().maybe().orElse(1);
    this.types = StepTypes.of(floor);
    this.filler = book.first(ProductKind.FILLER);
    this.chain = new StepSequence(floor.area().id(), floor.area().name());
    this.sections = new SectionSteps(chain, types, book, floor.net());
  }

  static Figure<List<WorkStep>> of(
      AreaTakeoff floor,
      PrepPlan prep,
      List<TopPlan> tops,
      List<CoatPlan> coats,
      ShopBook book,
      List<JobTool> tools) {
    AreaStepPlanner tasks = new AreaStepPlanner(floor, book, tools);
    tops.stream().filter(t -> !t.passes().isEmpty()).forEach(tasks::top);
    prep.steps().forEach(s -> tasks.prep(s, prep));
    tasks.coats(coats);
    return tasks.chain.tasks();
  }

  private void prep(PrepStep step, PrepPlan plan) {
    if (passed.isPresent() && step.kind() != PrepStep.Kind.CLEAN) {
      hepaPass(passed.get());
    }
    boolean pass =
        step.kind() == PrepStep.Kind.METAL_PASS || step.kind() == PrepStep.Kind.FINE_PASS;
    passed = pass ? Optional.of(step) : Optional.empty();
    byMachineAndHand(step, plan);
  }

  /** After a grinding pass, where the book has a rate; {@link Presence} says where it has none. */
  private void hepaPass(PrepStep after) {
    if (book.setUp().hepaPass().isKnown()) {
      chain.append(
          StepSequence.StepDraft.pausing(
              after.id() + ".hepa",
              Message.of("work.area-step-planner.hepa-pass", after.name()),
              types.plain(StepKind.HEPA_PASS, StepPlace.WHOLE_FLOOR, Set.of(ToolKind.VACUUM)),
              RateArithmetic.time(floor.net(), book.setUp().hepaPass()),
              1));
    }
  }

  /** Before the first coat that is sprayed. */
  private void maskWalls(CoatPlan plan) {
    StepType type = types.coat(plan, 1);
    boolean first = !masked && type.tools().contains(ToolKind.SPRAYER);
    masked |= first;
    if (first && book.setUp().wallMasking().isKnown()) {
      chain.append(
          StepSequence.StepDraft.pausing(
              "mask",
              Message.of("work.area-step-planner.mask-walls"),
              types.plain(StepKind.MASK_WALLS, StepPlace.WHOLE_FLOOR, Set.of()),
              RateArithmetic.time(floor.masked(), book.setUp().wallMasking()),
              Math.min(2, crew)));
    }
  }

  /** Before the first solvent on the floor, where the book says how long it takes. */
  private void fan(StepType first) {
    if (!blown && first.tools().contains(ToolKind.FAN)) {
      blown = true;
      if (book.setUp().fanAndDuct().isKnown()) {
        chain.append(
            new StepSequence.StepDraft(
                "fan",
                Message.of("work.area-step-planner.set-up-fan"),
                types.plain(StepKind.SET_UP_FAN, StepPlace.WHOLE_FLOOR, Set.of(ToolKind.FAN)),
                book.setUp().fanAndDuct(),
                Math.min(2, crew),
                true,
                StepSequence.StepDraft.NO_ABRADING));
      }
    }
  }

  private void byMachineAndHand(PrepStep step, PrepPlan plan) {
    boolean machine = step.machineTime().maybe().filter(Duration::isZero).isEmpty();
    StepType byHand = types.prep(step, StepMeans.HAND, filler);
    fan(byHand);
    int drivers = drivers();
    int others = machine ? drivers : 0;
    int hands = PrepPlan.hands(book);
    hands = byHand.isHandGrinding() ? Math.min(hands, grinders(others)) : hands;
    Figure<Duration> handTime = step.handTime();
    Optional<MixPlan> guns =
        step.kind() == PrepStep.Kind.FILL ? plan.mixing(step.subject()) : Optional.empty();
    Optional<Duration> emptied = guns.flatMap(MixPlan::emptied);
    if (emptied.isPresent() && handTime.isKnown()) {
      hands = guns.get().fillers();
      handTime = Figure.known(emptied.get().multipliedBy(hands));
    }
    chain.append(
        List.of(
            StepSequence.StepDraft.pausing(
                step.id() + ".machine",
                Message.of("work.area-step-planner.by-machine", step.name()),
                types.prep(step, StepMeans.MACHINE, filler),
                step.machineTime(),
                drivers),
            StepSequence.StepDraft.pausing(
                step.id() + ".hand",
                machine ? Message.of("work.area-step-planner.by-hand", step.name()) : step.name(),
                byHand,
                handTime,
                hands)));
    if (step.kind() == PrepStep.Kind.FILL) {
      chain.setGap(dry(filler, Message.of("work.area-step-planner.a-filler")));
    }
    if (step.subject().kind() == StepKind.FILL_TRENCH && isLast(step, plan)) {
      chain.setGap(
          dry(
              book.first(ProductKind.LEVELLER),
              Message.of("work.levelling-plan.a-levelling-mortar")));
    }
  }

  private static boolean isLast(PrepStep step, PrepPlan plan) {
    return plan.steps().stream()
        .filter(s -> s.subject().kind() == StepKind.FILL_TRENCH)
        .reduce((a, b) -> b)
        .filter(step::equals)
        .isPresent();
  }

  /** How many can grind by hand with a vacuum each, beside those at another vacuum. */
  private int grinders(int others) {
    int vacuums = count(ToolKind.VACUUM) - others;
    return Math.max(1, Math.min(count(ToolKind.HAND_GRINDER), vacuums));
  }

  /**
   * How many floor grinders run at once: each with somebody behind it and a vacuum that is known to
   * pull what they ask for. One runs in any case, and what its vacuum lacks is said elsewhere.
   */
  private int drivers() {
    double asked = airflows(ToolKind.FLOOR_GRINDER).max().orElse(0);
    int vacuums = (int) airflows(ToolKind.VACUUM).filter(pulls -> pulls >= asked).count();
    int machines = Math.min(count(ToolKind.FLOOR_GRINDER), vacuums);
    return Math.max(1, Math.min(machines, crew));
  }

  private DoubleStream airflows(ToolKind kind) {
    return tools.stream()
        .filter(t -> t.kind() == kind)
        .map(JobTool::airflow)
        .flatMapToDouble(OptionalDouble::stream);
  }

  private int count(ToolKind kind) {
    return (int) tools.stream().filter(t -> t.kind() == kind).count();
  }

  /** Before the floor: what falls off a top would scratch a finished one. */
  private void top(TopPlan job) {
    Message name =
        job.foot().steps() > 1
            ? Message.of("work.area-step-planner.grind-steps", job.foot().name())
            : Message.of("work.area-step-planner.grind-top", job.foot().name());
    chain.append(
        StepSequence.StepDraft.pausing(
            "top." + job.foot().id(), name, types.top(job.foot()), job.time(), 1));
  }

  private Figure<StepSequence.RecoatGap> dry(Optional<Product> of, Message what) {
    return of.map(p -> p.drying().recoatFrom().flatMap(this::fillerDry))
        .orElseGet(() -> Figure.missing(what))
        .map(d -> new StepSequence.RecoatGap(d, Optional.empty()));
  }

  /** Outside the book's table the step is held; then its longest time keeps the order. */
  private Figure<Duration> fillerDry(TemperatureTable table) {
    Figure<Duration> dry = temperature().flatMap(table::at);
    boolean outside = temperature().isKnown() && !dry.isKnown();
    return outside ? Figure.known(table.longest()) : dry;
  }

  /** The colder of slab and air. */
  private Figure<Double> temperature() {
    OptionalDouble air = floor.area().slab().airC();
    return air.isPresent()
        ? Figure.known(
            Math.min(air.getAsDouble(), floor.area().slab().surfaceC().orElse(air.getAsDouble())))
        : Figure.refused(
            Message.of("work.area-step-planner.the-air-temperature-of-is", floor.area().name()));
  }

  /** Coats of inlays that follow each other are one job: it goes by colours, not by products. */
  private void coats(List<CoatPlan> plans) {
    plans.stream()
        .map(p -> types.coat(p, 1))
        .filter(t -> t.tools().contains(ToolKind.FAN))
        .findFirst()
        .ifPresent(this::fan);
    if (plans.stream().anyMatch(AreaStepPlanner::dyes)) {
      samplePanel(plans);
    }
    boolean dyed = false;
    for (int i = 0; i < plans.size(); i++) {
      if (isInlay(plans.get(i))) {
        int from = i;
        while (i + 1 < plans.size() && isInlay(plans.get(i + 1))) {
          i++;
        }
        new InlayStepPlanner(floor, book, chain, types).add(plans.subList(from, i + 1), dyed);
      } else {
        dyed |= dyes(plans.get(i));
        wholeFloor(plans.get(i));
      }
    }
  }

  private static boolean isInlay(CoatPlan plan) {
    return plan.job().target() == Finish.Target.INLAY;
  }

  static boolean dyes(CoatPlan plan) {
    return plan.product().is(ProductKind.BASE_DYE) || plan.product().is(ProductKind.INLAY_DYE);
  }

  /** Before any dye, unless the client declined it; a solvent dye on it needs its fan too. */
  private void samplePanel(List<CoatPlan> plans) {
    boolean solvent =
        plans.stream()
            .filter(AreaStepPlanner::dyes)
            .anyMatch(p -> types.coat(p, 1).tools().contains(ToolKind.FAN));
    Set<ToolKind> fan = solvent ? Set.of(ToolKind.FAN) : Set.of();
    if (floor.area().declined(AdviceId.SAMPLE_PANEL).isEmpty()) {
      chain.append(
          StepSequence.StepDraft.pausing(
              "sample",
              Message.of("work.area-step-planner.sample-panel"),
              types.plain(StepKind.SAMPLE_PANEL, StepPlace.WHOLE_FLOOR, fan),
              Figure.known(book.inlay().samplePanel().maybe().orElse(SAMPLE_PANEL)),
              1));
      chain.setGap(panelDry(plans));
    }
  }

  /**
   * How long the vapour of a sample panel counts after its last stroke: until the slowest of its
   * dyes may be recoated; no air is reckoned for it (common practice, no source).
   */
  private static Figure<StepSequence.RecoatGap> panelDry(List<CoatPlan> plans) {
    Figure<Duration> dry = Figure.known(Duration.ZERO);
    for (CoatPlan p : plans) {
      if (setsVapourFree(p)) {
        Figure<Duration> opens =
            gap(p, Figure.known(Duration.ZERO)).map(StepSequence.RecoatGap::opens);
        dry = dry.with(opens, (a, b) -> a.compareTo(b) >= 0 ? a : b);
      }
    }
    return dry.map(d -> new StepSequence.RecoatGap(d, Optional.empty()));
  }

  /** Whether it is a dye that has solvents, or of which nobody knows that it has none. */
  static boolean setsVapourFree(CoatPlan plan) {
    return dyes(plan) && plan.product().solvents().maybe().filter(List::isEmpty).isEmpty();
  }

  private void wholeFloor(CoatPlan plan) {
    maskWalls(plan);
    if (plan.divided().isPresent()) {
      sections.add(plan, plan.divided().get());
      return;
    }
    Product p = plan.product();
    int people = plan.job().people().maybe().orElse(1);
    sections.nextWaitsForAll();
    for (int i = 1; i <= plan.job().coats(); i++) {
      Message name =
          plan.job().coats() == 1
              ? Message.of("work.area-step-planner.only-coat", p.label())
              : Message.of("work.area-step-planner.coat", p.label(), i);
      chain.append(
          new StepSequence.StepDraft(
              plan.stepId(i),
              name,
              types.coat(plan, i),
              length(plan),
              people,
              false,
              SectionSteps.abrading(book, floor.net(), people)));
      chain.setGap(gap(plan));
    }
  }

  /** The recoat window after a coat at the day's temperature. */
  static Figure<StepSequence.RecoatGap> gap(CoatPlan plan) {
    return gap(plan, length(plan));
  }

  /**
   * The same where the step takes another time than the coat.
   *
   * @param laying of the step; unknown it makes the step itself unknown, and the window is unused
   */
  static Figure<StepSequence.RecoatGap> gap(CoatPlan plan, Figure<Duration> laying) {
    if (plan.at(plan.product().drying().recoatFrom()) instanceof Figure.Refused<Duration>) {
      return longest(plan);
    }
    Duration takes = StepSequence.minutes(laying.maybe().orElse(Duration.ZERO));
    return plan.at(plan.product().drying().recoatFrom())
        .with(plan.product().drying().recoatUntil(), Window::new)
        .flatMap(w -> w.gap(plan.product().label(), takes));
  }

  /** For a coat that is held, for the book says nothing at the day's temperature. */
  private static Figure<StepSequence.RecoatGap> longest(CoatPlan plan) {
    return plan.product()
        .drying()
        .recoatFrom()
        .map(t -> new StepSequence.RecoatGap(t.longest(), Optional.empty()));
  }

  /** A coat that can't be laid so is held; its length is then that of the work alone. */
  static Figure<Duration> length(CoatPlan plan) {
    return plan.coatTime() instanceof Figure.Refused<Duration> ? plan.workTime() : plan.coatTime();
  }

  /** As the book has it: each spot of a coat from when it was laid. */
  private record Window(Duration opens, Optional<Duration> closes) {
    /** From the coat's end: its last spot is dry last, its first one is too old first. */
    Figure<StepSequence.RecoatGap> gap(String label, Duration takes) {
      if (closes.filter(c -> c.compareTo(opens) < 0).isPresent()) {
        return Figure.refused(
            Message.of("work.area-step-planner.may-be-recoated-only-after", label));
      }
      Optional<Duration> latest = closes.map(c -> c.minus(takes));
      return latest.filter(l -> l.compareTo(opens) < 0).isPresent()
          ? Figure.refused(Message.of("work.area-step-planner.takes-longer-than-window", label))
          : Figure.known(new StepSequence.RecoatGap(opens, latest));
    }
  }
}
