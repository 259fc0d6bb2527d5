package slabwright.work.handover;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import slabwright.units.Message;
import slabwright.units.QuarterHour;
import slabwright.work.AreaWorkPlan;
import slabwright.work.WorkPlan;
import slabwright.work.air.IgnitionCheck;
import slabwright.work.days.DayPlan;
import slabwright.work.days.KeepOutPeriod;
import slabwright.work.days.OwnerDuty;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.TimeSpan;
import slabwright.work.step.AirEffect;
import slabwright.work.step.StepKind;

/**
 * When the owner sees to what: one source for the client's page, the client's calendar and the fire
 * packet, so that nobody lights a heater by one of them that is to be off by another. Common
 * practice, no source. All empty without days.
 *
 * @param areas names of all floor areas
 * @param cleared by when they are empty, and the way in too
 * @param opens the first day after that on which the crew comes before its work begins, at the hour
 *     at which somebody opens
 * @param detectors while dust is raised, a stretch a day: detectors are not left off overnight
 * @param flames while gas, pilot lights, heaters and air handling are off
 * @param signing from when the sample panel is looked at: others are no longer kept off for it
 */
public record OwnerTimes(
    List<String> areas,
    Optional<LocalDateTime> cleared,
    Optional<LocalDateTime> opens,
    List<TimeSpan> detectors,
    List<TimeSpan> flames,
    Optional<LocalDateTime> signing) {
  /** For less nobody lights a heater. */
  private static final int NIGHT_HOURS = 8;

  public OwnerTimes {
    areas = List.copyOf(areas);
    detectors = List.copyOf(detectors);
    flames = List.copyOf(flames);
  }

  public static OwnerTimes of(WorkPlan plan) {
    List<ScheduledStep> steps = plan.days().maybe().map(DayPlan::steps).orElse(List.of());
    return new OwnerTimes(
        plan.areas().stream().map(AreaWorkPlan::name).toList(),
        steps.stream().map(ScheduledStep::start).findFirst(),
        opens(plan),
        dust(steps),
        flames(steps),
        steps.stream()
            .filter(s -> s.task().type().kind() == StepKind.SAMPLE_PANEL)
            .map(s -> KeepOutPeriod.until(s).orElseGet(s::end))
            .max(Comparator.naturalOrder()));
  }

  private static Optional<LocalDateTime> opens(WorkPlan plan) {
    return plan.presence().maybe().stream()
        .flatMap(p -> p.days().stream().skip(1))
        .map(d -> d.span().start())
        .min(Comparator.comparing(LocalDateTime::toLocalTime));
  }

  public static boolean raisesDust(ScheduledStep s) {
    return s.task().type().air() instanceof AirEffect.Dust;
  }

  /** From the first dust of each day to its last. */
  private static List<TimeSpan> dust(List<ScheduledStep> steps) {
    Map<LocalDate, TimeSpan> days = new TreeMap<>();
    steps.stream()
        .filter(OwnerTimes::raisesDust)
        .flatMap(s -> s.spans().stream())
        .forEach(t -> days.merge(t.start().toLocalDate(), t, OwnerTimes::both));
    return List.copyOf(days.values());
  }

  private static TimeSpan both(TimeSpan a, TimeSpan b) {
    return new TimeSpan(
        a.start().isBefore(b.start()) ? a.start() : b.start(),
        a.end().isAfter(b.end()) ? a.end() : b.end());
  }

  /**
   * While others are kept off for solvent, and the hours that heating stays off after it is laid;
   * one time where less than a night lies between two.
   */
  private static List<TimeSpan> flames(List<ScheduledStep> steps) {
    List<TimeSpan> all = new ArrayList<>();
    steps.stream()
        .filter(s -> s.task().keepOut().isPresent())
        .sorted(Comparator.comparing(ScheduledStep::start))
        .forEach(
            s -> {
              LocalDateTime cold = s.end().plusHours(IgnitionCheck.HVAC_OFF_HOURS);
              LocalDateTime clear = KeepOutPeriod.until(s).orElse(cold);
              add(all, new TimeSpan(s.start(), clear.isAfter(cold) ? clear : cold));
            });
    return all;
  }

  private static void add(List<TimeSpan> all, TimeSpan next) {
    TimeSpan last = all.isEmpty() ? next : all.get(all.size() - 1);
    if (all.isEmpty() || last.end().plusHours(NIGHT_HOURS).isBefore(next.start())) {
      all.add(next);
    } else {
      all.set(all.size() - 1, both(last, next));
    }
  }

  /** For the client's calendar, in the order of the client's page. */
  public List<OwnerDuty> duties() {
    Stream<OwnerDuty> off =
        Stream.concat(
            detectors.stream()
                .map(
                    t ->
                        duty(
                            "detectors",
                            Message.of("work.owner-times.detectors"),
                            Message.of("work.owner-times.detectors-why"),
                            t)),
            flames.stream()
                .map(
                    t ->
                        duty(
                            "flames",
                            Message.of("work.owner-times.flames"),
                            Message.of("work.owner-times.flames-why"),
                            t)));
    return Stream.of(
            cleared.stream()
                .map(
                    t ->
                        moment(
                            "cleared",
                            Message.of("work.owner-times.cleared", String.join(", ", areas)),
                            Message.of("work.owner-times.cleared-why"),
                            QuarterHour.down(t))),
            off,
            signing.stream()
                .map(
                    t ->
                        moment(
                            "sample",
                            Message.of("work.owner-times.sign"),
                            Message.of("work.owner-times.sign-why"),
                            QuarterHour.up(t))))
        .flatMap(s -> s)
        .toList();
  }

  private static OwnerDuty duty(String id, Message summary, Message why, TimeSpan span) {
    return new OwnerDuty(id, summary, why, span.toldAsShut());
  }

  private static OwnerDuty moment(String id, Message summary, Message why, LocalDateTime t) {
    return new OwnerDuty(id, summary, why, new TimeSpan(t, t));
  }
}
