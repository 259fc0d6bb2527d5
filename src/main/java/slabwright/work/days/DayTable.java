package slabwright.work.days;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.units.Message;

/**
 * The day plan line by line, for a list to carry.
 *
 * @param begins the first step's start
 * @param ends the last step's end
 * @param personTime hours of people, all steps together
 * @param others when other trades stay off
 */
public record DayTable(
    LocalDateTime begins,
    LocalDateTime ends,
    Duration personTime,
    List<Line> lines,
    List<KeepOutPeriod> others) {
  /** The late starts that every step is tried with. */
  public static final List<Duration> DELAYS = List.of(Duration.ofHours(2), Duration.ofDays(1));

  public DayTable {
    lines = List.copyOf(lines);
    others = List.copyOf(others);
  }

  /**
   * One step.
   *
   * @param critical whether it has no slack: a later start ends the job later
   * @param nextFrom when the next step may start at the earliest, by drying alone
   * @param nextUntil when the recoat window closes, if it does
   * @param late what a late start does, one for each of {@link #DELAYS}
   */
  public record Line(
      String id,
      Message name,
      String area,
      LocalDateTime starts,
      LocalDateTime ends,
      Duration works,
      int people,
      boolean critical,
      Optional<LocalDateTime> nextFrom,
      Optional<LocalDateTime> nextUntil,
      List<Late> late) {
    public Line {
      late = List.copyOf(late);
    }
  }

  /**
   * What a late start of one step does when the others follow in the same order.
   *
   * @param by how much later it starts
   * @param later how much later the job ends; empty when it can't be done any more
   * @param abrade the coats that then need abrading first, by name
   * @param why why it can't be done, or an empty sentence
   */
  public record Late(Duration by, Optional<Duration> later, List<Message> abrade, Message why) {
    public Late {
      abrade = List.copyOf(abrade);
    }
  }

  /** Each step is tried late several times: only for who shows it. */
  public static DayTable of(DayPlan plan) {
    Replay replay = Replay.of(plan);
    Set<String> critical = CriticalSteps.of(replay);
    List<Line> lines = new ArrayList<>();
    for (ScheduledStep p : plan.steps()) {
      lines.add(line(p, replay, critical.contains(p.task().id())));
    }
    LocalDateTime begins = plan.steps().isEmpty() ? plan.end() : plan.steps().get(0).start();
    return new DayTable(begins, plan.end(), plan.personTime(), lines, KeepOutPeriod.of(plan));
  }

  private static Line line(ScheduledStep p, Replay replay, boolean critical) {
    DayPlan plan = replay.plan();
    String id = p.task().id();
    return new Line(
        id,
        p.task().name(),
        p.task().area(),
        p.start(),
        p.end(),
        p.worked(),
        p.task().people(),
        critical,
        plan.earliestNext(id),
        closes(p, plan),
        p.isAbrading() ? List.of() : DELAYS.stream().map(by -> late(replay, id, by)).toList());
  }

  private static Optional<LocalDateTime> closes(ScheduledStep p, DayPlan plan) {
    return plan.steps().stream()
        .flatMap(s -> s.task().waits().stream())
        .filter(w -> w.after().equals(p.task().id()))
        .flatMap(w -> w.atMost().stream())
        .map(m -> p.end().plus(m))
        .min(Comparator.naturalOrder());
  }

  private static Late late(Replay replay, String id, Duration by) {
    LateStart.Result result = LateStart.of(replay, id, by);
    if (result instanceof LateStart.Result.Refused r) {
      return new Late(by, Optional.empty(), List.of(), r.sentence());
    }
    LateStart l = ((LateStart.Result.Later) result).consequence();
    return new Late(
        by, Optional.of(l.end()), l.newAbrading(), Message.of("work.day-table.no-reason"));
  }
}
