package slabwright.work;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slabwright.site.Site;
import slabwright.site.job.JobCrew;
import slabwright.units.Message;
import slabwright.work.book.Figure;
import slabwright.work.book.ShopBook;
import slabwright.work.coat.ClientAdvice;
import slabwright.work.coat.CoatPlan;
import slabwright.work.coat.SealerAdvice;
import slabwright.work.coat.SealerParameters;
import slabwright.work.days.DayPlan;
import slabwright.work.days.DayPlanner;
import slabwright.work.days.JobMeans;
import slabwright.work.days.JobTool;
import slabwright.work.days.PersonRota;
import slabwright.work.days.Planned;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.WorkStep;
import slabwright.work.days.WorkingWeek;
import slabwright.work.prep.PrepPlan;
import slabwright.work.step.ToolKind;
import slabwright.work.stop.JobStop;
import slabwright.work.stop.StopFinder;
import slabwright.work.top.TopPlan;

/** Plans one site; one use. First the steps, then their days, then the air along those days. */
final class WorkPlanner {
  /** A Monday, for a site without a start date. */
  private static final LocalDate ANY_MONDAY = LocalDate.of(2001, 1, 1);

  private final Site site;
  private final List<AreaTakeoff> floors;
  private final ShopBook book;
  private final JobMeans means;

  WorkPlanner(Site site, List<AreaTakeoff> floors, ShopBook book) {
    JobCrew crew = site.job().crew();
    this.site = site;
    this.floors = floors;
    this.book = crew.persons().isEmpty() ? book : book.withPeople(crew.persons().size());
    this.means =
        new JobMeans(
            Optional.of(BreathingCrew.numbers(crew)), Optional.of(JobTools.of(book, crew)));
  }

  private record Draft(AreaTakeoff floor, PrepPlan prep, List<TopPlan> tops, CoatList coats) {}

  WorkPlan plan() {
    List<Draft> drafts =
        floors.stream()
            .map(f -> new Draft(f, PrepPlan.of(f.prep(), book), tops(f), CoatList.of(f, book)))
            .toList();
    Figure<List<AreaEntry>> entries = entries(drafts);
    Figure<List<WorkStep>> tasks = entries.map(WorkPlanner::steps);
    ForecastDrying drying = drying(drafts);
    Figure<ForecastDrying.Dated> dated = tasks.map(drying::plan);
    Figure<DayPlan> first = dated.flatMap(ForecastDrying.Dated::days);
    List<AreaWorkPlan> areas = drafts.stream().map(d -> area(d, first)).toList();
    Figure<List<WorkStep>> shut =
        dated
            .map(ForecastDrying.Dated::steps)
            .with(first, (t, d) -> t.stream().map(new OthersOff(areas, d)::keptOff).toList());
    Figure<DayPlan> order = first.with(shut.map(this::framed), DayPlan::withTasks);
    return dated(areas, shut, order, entries.maybe().orElse(List.of()), drying);
  }

  private ForecastDrying drying(List<Draft> drafts) {
    return new ForecastDrying(
        drafts.stream().map(d -> new WeatherDays(site, d.floor(), d.coats().coats())).toList(),
        this::days);
  }

  /** The plan with dates for what can be done. */
  private WorkPlan dated(
      List<AreaWorkPlan> areas,
      Figure<List<WorkStep>> shut,
      Figure<DayPlan> order,
      List<AreaEntry> entries,
      ForecastDrying drying) {
    List<Message> cannotStart = cannotStart(areas, entries);
    List<HeldStep> held =
        shut.maybe().map(t -> HeldStep.withFollowers(t, entries)).orElse(List.of());
    Figure<List<WorkStep>> some = shut.map(t -> HeldStep.without(t, held));
    boolean asOrdered = held.isEmpty() || !cannotStart.isEmpty();
    Figure<ForecastDrying.Dated> doable =
        asOrdered ? some.map(t -> new ForecastDrying.Dated(t, order)) : some.map(drying::plan);
    Figure<DayPlan> days = asOrdered ? order : doable.flatMap(ForecastDrying.Dated::days);
    Figure<DayPlan> dated =
        cannotStart.isEmpty()
            ? days
            : Figure.refused(Message.of("work.work-planner.can-not-start"));
    List<ClosedAir> closed = entries.stream().flatMap(e -> e.closed().stream()).toList();
    return new WorkPlan(
        site,
        book,
        site.start().isPresent(),
        areas,
        shut.with(doable, (all, d) -> framed(all.stream().map(d::latest).toList())),
        dated,
        new JobOutlook(
            order,
            held,
            cannotStart,
            dated.maybe().map(d -> closed.stream().map(c -> c.on(d)).toList()).orElse(closed),
            checks(areas, dated, held)));
  }

  private List<DayCheck> checks(
      List<AreaWorkPlan> areas, Figure<DayPlan> dated, List<HeldStep> held) {
    SharedDoors doors = new SharedDoors(site);
    List<DayCheck> all = new ArrayList<>(doors.unsaid());
    all.addAll(doors.sealed());
    all.addAll(doors.order(held));
    all.addAll(unknownTools());
    areas.forEach(a -> alone(a).ifPresent(all::add));
    dated.maybe().ifPresent(d -> all.addAll(MeterWatch.tooFew(d)));
    areas.forEach(a -> a.coats().forEach(c -> moreHands(a, c).ifPresent(all::add)));
    dated.maybe().ifPresent(d -> all.addAll(leaving(d)));
    boolean real = site.start().isPresent();
    dated
        .maybe()
        .ifPresent(
            d ->
                areas.forEach(
                    a -> all.addAll(new WeatherDays(site, a.floor(), a.coats()).checks(d, real))));
    return all;
  }

  /** Solvent with a crew of one: nobody sees it when that one goes down. */
  private Optional<DayCheck> alone(AreaWorkPlan area) {
    boolean solvent =
        area.coats().stream()
            .anyMatch(c -> c.product().solvents().maybe().filter(List::isEmpty).isEmpty());
    boolean one = book.crew().people().maybe().filter(n -> n == 1).isPresent();
    return solvent && one
        ? Optional.of(
            new DayCheck(
                area.floor().area().id(),
                "",
                Message.of("work.work-plan.alone", area.floor().area().name())))
        : Optional.empty();
  }

  /** A coat that takes more of the crew than the book says. */
  private static Optional<DayCheck> moreHands(AreaWorkPlan area, CoatPlan coat) {
    int usual = coat.product().laying().people().maybe().orElse(Integer.MAX_VALUE);
    return coat.job()
        .people()
        .maybe()
        .filter(n -> n > usual)
        .map(
            n ->
                new DayCheck(
                    area.floor().area().id(),
                    "",
                    Message.of("work.work-plan.more-hands", coat.product().label(), n, usual)));
  }

  private List<DayCheck> unknownTools() {
    String known =
        Stream.of(ToolKind.values()).map(ToolKind::word).collect(Collectors.joining(", "));
    return site.areas().stream()
        .limit(1)
        .flatMap(
            a ->
                JobTools.unknown(site.job().crew()).stream()
                    .map(t -> Message.of("work.work-plan.unknown-tool", t, known))
                    .map(m -> new DayCheck(a.id(), "", m)))
        .toList();
  }

  /** A floor left with a fresh coat is no way out for tools and waste. */
  private List<DayCheck> leaving(DayPlan days) {
    List<WorkStep> steps = days.steps().stream().map(ScheduledStep::task).toList();
    List<String> wet = JobFrame.coatedLast(steps);
    return site.areas().stream()
        .filter(a -> wet.contains(a.name()))
        .map(
            a ->
                new DayCheck(
                    a.id(), "", Message.of("work.work-plan.out-before-last-coat", a.name())))
        .toList();
  }

  private List<TopPlan> tops(AreaTakeoff f) {
    return f.tops().stream().map(t -> TopPlan.of(t, f.area().finish().exposure(), book)).toList();
  }

  private Figure<List<AreaEntry>> entries(List<Draft> drafts) {
    AreaEntries rule = new AreaEntries(site, book);
    List<JobTool> tools = means.tools().orElse(List.of());
    List<Figure<AreaEntry>> all = new ArrayList<>();
    for (Draft d : drafts) {
      List<CoatPlan> coats = d.coats().coats();
      all.add(
          AreaStepPlanner.of(d.floor(), d.prep(), d.tops(), coats, book, tools)
              .map(steps -> rule.of(d.floor(), coats, steps)));
      d.coats()
          .unknown()
          .forEach(id -> all.add(Figure.missing(Message.of("work.work-planner.the-product", id))));
    }
    return Figure.all(all);
  }

  private static List<WorkStep> steps(List<AreaEntry> entries) {
    return entries.stream().flatMap(e -> e.steps().stream()).toList();
  }

  private AreaWorkPlan area(Draft d, Figure<DayPlan> days) {
    Figure<AirPlan> air =
        new AirPlanner(
                d.floor(), d.coats().coats(), book, days, reader(d.floor().area().id(), days))
            .plan();
    return new AreaWorkPlan(
        d.floor(),
        d.prep(),
        d.tops(),
        bags(d),
        d.coats().coats(),
        d.coats().unknown(),
        air,
        new AreaRuleNotes(site, d.floor(), d.coats().coats(), book)
            .of(d.prep(), d.tops(), days.maybe()),
        advice(d),
        StopFinder.of(d.floor().area(), air.maybe().filter(a -> a.fire().applies()).isPresent()));
  }

  /**
   * Who reads the gas meter of a floor, by name or letter: who the days say; without days the one
   * who leads, else the first who is named.
   */
  private String reader(String areaId, Figure<DayPlan> days) {
    List<JobCrew.Person> crew = site.job().crew().persons();
    String said =
        days.maybe().stream()
            .flatMap(d -> MeterWatch.readers(d, areaId).stream())
            .map(p -> p < crew.size() ? crew.get(p).name() : PersonRota.letter(p))
            .filter(n -> !n.isBlank())
            .distinct()
            .collect(Collectors.joining(", "));
    boolean unwatched = days.maybe().filter(d -> MeterWatch.isUnwatched(d, areaId)).isPresent();
    if (!said.isEmpty() || unwatched) {
      return said;
    }
    return crew.stream()
        .filter(p -> p.role().equalsIgnoreCase("lead"))
        .findFirst()
        .or(() -> crew.stream().findFirst())
        .map(JobCrew.Person::name)
        .orElse("");
  }

  /** Why the job can't start: questions that are open, and air that does not do. */
  private static List<Message> cannotStart(List<AreaWorkPlan> areas, List<AreaEntry> entries) {
    List<Message> why = new ArrayList<>();
    areas.stream()
        .flatMap(a -> a.stops().stream())
        .filter(JobStop::blocks)
        .forEach(s -> why.add(s.reason()));
    entries.forEach(e -> why.addAll(e.cannotStart()));
    return List.copyOf(why);
  }

  private static List<ClientAdvice> advice(Draft d) {
    List<ClientAdvice> advice =
        new ArrayList<>(SealerAdvice.of(SealerParameters.of(d.floor().area())));
    if (d.coats().coats().stream().anyMatch(AreaStepPlanner::dyes)) {
      advice.add(SealerAdvice.samplePanel());
    }
    return advice;
  }

  private Figure<Integer> bags(Draft d) {
    Figure<Double> dust = d.prep().dust();
    for (TopPlan top : d.tops()) {
      dust = top.passes().isEmpty() ? dust : dust.with(top.dust(), Double::sum);
    }
    return PrepPlan.bags(dust, book);
  }

  /** In the order of ways in, between setting up and packing up. */
  private List<WorkStep> framed(List<WorkStep> tasks) {
    return new JobFrame(book).around(new SharedDoors(site).ordered(tasks));
  }

  private Figure<DayPlan> days(List<WorkStep> tasks) {
    return StepHours.of(book).flatMap(h -> placed(framed(tasks), h));
  }

  private Figure<DayPlan> placed(List<WorkStep> tasks, WorkingWeek hours) {
    LocalDateTime start = site.start().orElse(ANY_MONDAY.atTime(hours.from()));
    Map<String, LocalDateTime> notBefore = new HashMap<>();
    tasks.stream().filter(t -> t.waits().isEmpty()).forEach(t -> notBefore.put(t.id(), start));
    Planned planned = DayPlanner.plan(tasks, hours, means, start.toLocalDate(), notBefore);
    return planned instanceof Planned.Refused refused
        ? Figure.refused(refused.sentence())
        : Figure.known(((Planned.Days) planned).plan());
  }
}
