package slabwright.work;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.units.Message;
import slabwright.units.UnitSystem;
import slabwright.work.air.AirFigures;
import slabwright.work.air.AirLevel;
import slabwright.work.air.BreathingProtection;
import slabwright.work.air.EntryLimit;
import slabwright.work.air.EntryRule;
import slabwright.work.air.ExposureLimit;
import slabwright.work.air.FreshAirNeed;
import slabwright.work.air.LowestMetre;
import slabwright.work.days.StepAir;
import slabwright.work.days.StepWait;
import slabwright.work.days.WorkStep;
import slabwright.work.step.StepType;

/**
 * Makes the steps of one floor area wait for its air and finds those that nobody may do; one use.
 * What is left in the air is followed from step to step at the shortest waits there are, so that
 * any later plan of days has no more of it.
 */
final class EntryPlanner {
  /** The best there is: what keeps even those out who wear it, keeps everyone out. */
  private static final Optional<BreathingProtection> EVERYONE =
      Optional.of(new BreathingProtection("", 1e9));

  /** How long a wait is drawn out in search of a shift's average. */
  private static final int LONGEST_MINUTES = 48 * 60;

  private static final int LONGER_BY = 15;

  private final LowestMetre air;
  private final Map<StepType, LaidVapour> laid = new HashMap<>();
  private final BreathingCrew crew;
  private final double airflow;
  private final double shift;
  private final UnitSystem units;

  private final Map<String, AirLevel> left = new HashMap<>();
  private final List<WorkStep> steps = new ArrayList<>();
  private final List<HeldStep> held = new ArrayList<>();
  private final List<Message> cannotStart = new ArrayList<>();
  private final List<ClosedAir> closed = new ArrayList<>();
  private final Map<List<Object>, Peak> peaks = new HashMap<>();

  private record Peak(double lel, Message told) {}

  /**
   * A planner.
   *
   * @param airflow m³/min on the plan
   * @param shift minutes of a working day
   */
  EntryPlanner(
      LowestMetre air,
      double airflow,
      List<LaidVapour> laid,
      BreathingCrew crew,
      double shift,
      UnitSystem units) {
    this.air = air;
    this.airflow = airflow;
    this.crew = crew;
    this.shift = shift;
    this.units = units;
    laid.forEach(l -> this.laid.put(l.step().type(), l));
  }

  AreaEntry plan(List<WorkStep> tasks) {
    tasks.forEach(this::enter);
    return new AreaEntry(steps, held, cannotStart, closed);
  }

  private void enter(WorkStep task) {
    Optional<LaidVapour> lays = Optional.ofNullable(laid.get(task.type()));
    Optional<BreathingProtection> worn =
        lays.isPresent() ? crew.protection(task.people()) : Optional.empty();
    Optional<EntryLimit> alone = lays.flatMap(l -> air.limit(l.step(), worn));
    Stay stay = new Stay(air, task, lays, alone.isPresent(), worn);
    alone.ifPresent(limit -> hold(stay, limit));
    List<StepWait> waits = task.waits().stream().map(w -> waiting(stay, w)).toList();
    AirLevel before = before(waits);
    double breathed = stay.breathed(before);
    if (breathed > 1 && alone.isEmpty()) {
      waits = longer(stay, waits);
      before = before(waits);
      breathed = stay.breathed(before);
    }
    AirLevel during = before.plus(stay.added());
    steps.add(
        task.in(stay.breathing(breathed, lays.isPresent() ? fan(during) : Duration.ZERO), waits));
    lays.ifPresent(l -> judge(task, l, during));
    left.put(
        task.id(),
        lays.isPresent() ? during : air.after(before, (double) task.length().toMinutes()));
  }

  /** Until the air is clear; nothing where it never is, for then the job can't start. */
  private Duration fan(AirLevel during) {
    OptionalDouble until = air.minutesUntil(during, AirLevel.CLEAN, Optional.empty());
    return until.isPresent()
        ? Duration.ofMinutes((long) Math.ceil(until.getAsDouble()))
        : Duration.ZERO;
  }

  private AirLevel before(List<StepWait> waits) {
    return waits.stream()
        .map(w -> air.after(leftBy(w.after()), w.atLeast().toSeconds() / 60.0))
        .reduce(AirLevel.CLEAN, AirLevel::worse);
  }

  private AirLevel leftBy(String id) {
    return left.getOrDefault(id, AirLevel.CLEAN);
  }

  /** The wait, drawn out until the air lets the people in. */
  private StepWait waiting(Stay stay, StepWait w) {
    OptionalDouble until =
        air.minutesUntil(
            leftBy(w.after()), stay.alone() ? AirLevel.CLEAN : stay.added(), stay.worn());
    if (until.isEmpty()) {
      never(stay.task());
      return w;
    }
    return atLeast(stay.task(), w, Duration.ofMinutes((long) Math.ceil(until.getAsDouble())));
  }

  private StepWait atLeast(WorkStep task, StepWait w, Duration least) {
    if (w.atLeast().compareTo(least) >= 0) {
      return w;
    }
    if (w.atMost().filter(m -> m.compareTo(least) < 0).isPresent()) {
      held.add(
          new HeldStep(
              task.type().areaId(),
              task.id(),
              Message.of("work.held.window", task.name()),
              List.of(Message.of("work.held.air-sooner"))));
      return StepWait.atLeast(w.after(), least);
    }
    return new StepWait(w.after(), least, w.atMost());
  }

  /** What is left may be low enough to enter and yet too much for a whole shift of it. */
  private List<StepWait> longer(Stay stay, List<StepWait> waits) {
    for (int more = LONGER_BY; more <= LONGEST_MINUTES && air.isAired(); more += LONGER_BY) {
      Duration by = Duration.ofMinutes(more);
      List<StepWait> later =
          waits.stream().map(w -> StepWait.atLeast(w.after(), w.atLeast().plus(by))).toList();
      if (stay.breathed(before(later)) <= 1) {
        return waits.stream().map(w -> atLeast(stay.task(), w, w.atLeast().plus(by))).toList();
      }
    }
    never(stay.task());
    return waits;
  }

  private void never(WorkStep task) {
    boolean said = cannotStart.stream().anyMatch(m -> m.key().equals("work.start.never-clear"));
    if (!said) {
      cannotStart.add(Message.of("work.start.never-clear", task.area(), task.name()));
    }
  }

  private void hold(Stay stay, EntryLimit limit) {
    held.add(
        new VapourHold(air, airflow, shift, stay.worn(), units)
            .of(stay.task(), stay.lays().orElseThrow(), limit));
  }

  private void judge(WorkStep task, LaidVapour lays, AirLevel during) {
    double alone = air.added(lays.step()).lel();
    boolean over = during.lel() > FreshAirNeed.FIRE_SHARE;
    if (over && (alone > FreshAirNeed.FIRE_SHARE || cannotStart.isEmpty())) {
      worst(task, during.lel());
    }
    if (EntryRule.limit(during, 0, EVERYONE).isPresent()) {
      boolean lel = during.lel() >= AirFigures.HAZARDOUS_SHARE;
      close(task, lel ? EntryLimit.TENTH_OF_LEL : EntryLimit.DANGER, during, EVERYONE);
    }
    if (during.shortTerm() >= 1) {
      close(task, EntryLimit.FIFTEEN_MINUTES, during, Optional.empty());
    }
  }

  /** Sections of one coat are told once, by the one with the most. */
  private void worst(WorkStep task, double lel) {
    StepType type = task.type();
    List<Object> coat = List.of(type.areaId(), type.subject(), type.coat(), type.stencils());
    Peak before = peaks.get(coat);
    if (before != null && before.lel >= lel) {
      return;
    }
    Message told = Message.of("work.start.over-a-quarter", task.area(), task.name(), lel * 100);
    if (before == null) {
      cannotStart.add(told);
    } else {
      cannotStart.set(cannotStart.indexOf(before.told), told);
    }
    peaks.put(coat, new Peak(lel, told));
  }

  private void close(
      WorkStep task, EntryLimit limit, AirLevel during, Optional<BreathingProtection> worn) {
    OptionalDouble until = air.minutesUntil(during, AirLevel.CLEAN, worn);
    Optional<Duration> after =
        until.isPresent()
            ? Optional.of(Duration.ofMinutes((long) Math.ceil(until.getAsDouble())))
            : Optional.empty();
    closed.add(new ClosedAir(task.type().areaId(), task.id(), limit, after, Optional.empty()));
  }

  /**
   * One step with the air it is done in.
   *
   * @param lays what it lays, where that sets vapour free
   * @param alone whether its own vapour alone keeps its crew out
   */
  private record Stay(
      LowestMetre air,
      WorkStep task,
      Optional<LaidVapour> lays,
      boolean alone,
      Optional<BreathingProtection> worn) {
    AirLevel added() {
      return lays.map(l -> air.added(l.step())).orElse(AirLevel.CLEAN);
    }

    /** Its part in a shift's average, inside of what is worn. */
    double breathed(AirLevel before) {
      double minutes =
          Math.min(ExposureLimit.AveragingPeriod.EIGHT_HOURS.minutes(), task.length().toMinutes());
      double outside = air.shift(before, lays.map(LaidVapour::step), minutes);
      return outside / worn.map(BreathingProtection::factor).orElse(1.0);
    }

    StepAir breathing(double breathed, Duration fan) {
      return new StepAir(
          Math.min(1, breathed),
          worn.map(BreathingProtection::name).orElse(""),
          task.air().vapour(),
          fan,
          task.air().wet());
    }
  }
}
