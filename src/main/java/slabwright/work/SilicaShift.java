package slabwright.work;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slabwright.site.FloorArea;
import slabwright.site.Setting;
import slabwright.units.Message;
import slabwright.work.days.DayPlan;
import slabwright.work.days.PersonRota;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.TimeSpan;
import slabwright.work.rule.SilicaRule;
import slabwright.work.step.StepType;

/**
 * What one person grinds in one shift. All tasks of Table 1 count together: over four hours of them
 * each is done with the respirator of its stricter column, 29 CFR 1926.1153(c)(3).
 *
 * @param person by number from 0
 * @param tasks at all tasks of Table 1
 * @param byHand of that, with a hand grinder indoors
 */
public record SilicaShift(LocalDate day, int person, Duration tasks, Duration byHand) {
  /** Stands under every list of shifts. */
  public static final Message RULE = Message.of("work.silica-shift.rule");

  private record Key(LocalDate day, int person) {}

  /** Every shift of a job in which somebody grinds, by day and person. */
  public static List<SilicaShift> of(WorkPlan plan, DayPlan days) {
    return of(
        days,
        plan.site().areas().stream()
            .filter(a -> a.setting() == Setting.INDOOR)
            .map(FloorArea::id)
            .collect(Collectors.toSet()));
  }

  /**
   * Every shift in which somebody grinds, by day and person.
   *
   * @param indoors ids of the floor areas that are indoors
   */
  public static List<SilicaShift> of(DayPlan plan, Set<String> indoors) {
    Map<Key, SilicaShift> all = new HashMap<>();
    for (ScheduledStep s : plan.steps()) {
      StepType type = s.task().type();
      if (type.kind().grindsConcrete()) {
        boolean hand = type.isHandGrinding() && indoors.contains(type.areaId());
        for (TimeSpan t : s.spans()) {
          for (int person : s.who().persons()) {
            Key k = new Key(t.start().toLocalDate(), person);
            Duration byHand = hand ? t.length() : Duration.ZERO;
            all.merge(k, new SilicaShift(k.day(), person, t.length(), byHand), SilicaShift::plus);
          }
        }
      }
    }
    List<SilicaShift> sorted = new ArrayList<>(all.values());
    sorted.sort(Comparator.comparing(SilicaShift::day).thenComparing(SilicaShift::person));
    return List.copyOf(sorted);
  }

  private SilicaShift plus(SilicaShift o) {
    return new SilicaShift(day, person, tasks.plus(o.tasks), byHand.plus(o.byHand));
  }

  /** Whether the stricter column counts for this person this day. */
  public boolean isOver() {
    return SilicaRule.isOver(tasks);
  }

  /** The protection factor to be worn at the hand grinder; empty for none. */
  public Optional<Integer> respirator() {
    return SilicaRule.respirator(!byHand.isZero(), tasks);
  }

  /** Whom this person must not swap with, or only with what. */
  public Message swap() {
    String who = PersonRota.letter(person);
    if (respirator().isPresent()) {
      return Message.of("work.silica-shift.wears", who, SilicaRule.APF);
    }
    return isOver()
        ? Message.of("work.silica-shift.no-hand-grinder", who, SilicaRule.APF)
        : Message.of(
            "work.silica-shift.takes-over",
            who,
            SilicaRule.FOUR_HOURS.minus(tasks).toMinutes() / 15 * 15 / 60.0,
            SilicaRule.APF);
  }
}
