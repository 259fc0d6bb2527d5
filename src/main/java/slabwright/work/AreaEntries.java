package slabwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.site.Site;
import slabwright.units.Message;
import slabwright.work.air.LowestMetre;
import slabwright.work.book.Figure;
import slabwright.work.book.ShopBook;
import slabwright.work.coat.CoatPlan;
import slabwright.work.days.WorkStep;
import slabwright.work.step.AirEffect;

/** Holds the steps of each floor area against the entry rule. */
final class AreaEntries {
  private final Site site;
  private final ShopBook book;
  private final BreathingCrew crew;

  AreaEntries(Site site, ShopBook book) {
    this.site = site;
    this.book = book;
    this.crew = BreathingCrew.of(site.job().crew());
  }

  /** The entry rule, what the day's readings forbid, and the vapour that gets to others. */
  AreaEntry of(AreaTakeoff floor, List<CoatPlan> coats, List<WorkStep> tasks) {
    AreaEntry entry = entry(floor, coats, tasks);
    List<HeldStep> held = new ArrayList<>(entry.held());
    WeatherDays weather = new WeatherDays(site, floor, coats);
    held.addAll(new CoatLimits(floor, coats, book, site.units(), weather.count()).held(tasks));
    held.addAll(weather.held(tasks));
    return new SharedAir(site, floor, coats)
        .spread(
            new AreaEntry(
                weather.keptOff(entry.steps()), held, entry.cannotStart(), entry.closed()));
  }

  private AreaEntry entry(AreaTakeoff floor, List<CoatPlan> coats, List<WorkStep> tasks) {
    boolean vapour = tasks.stream().anyMatch(AreaEntries::setsVapourFree);
    if (!vapour || floor.isOutdoors()) {
      return new AreaEntry(tasks, List.of(), List.of(), List.of());
    }
    Figure<List<LaidVapour>> laid =
        new VapourStepCollector(floor, coats, book, timing(tasks)).collect();
    Optional<LowestMetre> air = AirPlanner.lowestMetre(floor);
    if (air.isEmpty() || !laid.isKnown()) {
      return unknown(floor, tasks, laid);
    }
    double shift = book.crew().day().maybe().map(d -> (double) d.toMinutes()).orElse(0.0);
    return new EntryPlanner(
            air.get(),
            floor.area().air().airflowM3PerHour() / 60,
            laid.maybe().orElseThrow(),
            crew,
            shift,
            site.units())
        .plan(tasks);
  }

  private static boolean setsVapourFree(WorkStep task) {
    return task.type().air() instanceof AirEffect.Vapour;
  }

  /** How long each is laid; when does not matter yet. */
  private static List<StepTiming> timing(List<WorkStep> tasks) {
    List<StepTiming> all = new ArrayList<>();
    double from = 0;
    for (WorkStep t : tasks) {
      double minutes = Math.max(1, t.length().toMinutes());
      all.add(new StepTiming(t.type(), t.name(), from, minutes));
      from += minutes;
    }
    return all;
  }

  /** Nobody goes into air of which nothing is known. */
  private static AreaEntry unknown(
      AreaTakeoff floor, List<WorkStep> tasks, Figure<List<LaidVapour>> laid) {
    Message missing =
        laid.isKnown()
            ? Message.of("work.held.no-ceiling", floor.area().name())
            : Message.of("work.held.no-figures", laid.text(l -> ""));
    List<HeldStep> held =
        tasks.stream()
            .filter(AreaEntries::setsVapourFree)
            .map(
                t ->
                    new HeldStep(
                        t.type().areaId(),
                        t.id(),
                        Message.of("work.held.air-unknown", t.name()),
                        List.of(missing)))
            .toList();
    return new AreaEntry(tasks, held, List.of(), List.of());
  }
}
