package slabwright.work;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import slabwright.units.Message;
import slabwright.units.SortedCopy;
import slabwright.work.book.Figure;
import slabwright.work.book.SetUpTimes;
import slabwright.work.book.ShopBook;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.TimeSpan;
import slabwright.work.step.AirEffect;

/**
 * Hours twice: hands on the floor, and presence. Who has a step on a day comes and goes with the
 * others that day, from setting up until all is cleaned up after the last step; waiting and breaks
 * are presence too, and so is reading the gas meter.
 *
 * @param steps hours of people with their hands on the floor
 * @param days each day that somebody is there
 * @param unsaid what the shop book does not say and is not counted
 */
public record Presence(Duration steps, List<Day> days, List<Message> unsaid) {
  public Presence {
    days = List.copyOf(days);
    unsaid = List.copyOf(unsaid);
  }

  /**
   * One day.
   *
   * @param persons who is there, by number from 0
   */
  public record Day(TimeSpan span, Set<Integer> persons) {
    public Day {
      persons = SortedCopy.of(persons);
    }

    public Duration time() {
      return span.length().multipliedBy(persons.size());
    }
  }

  /** A time in hours to two decimals, halves up: as it is priced, and so wherever it is shown. */
  public static BigDecimal hours(Duration time) {
    return BigDecimal.valueOf(time.toMinutes())
        .divide(BigDecimal.valueOf(60), 2, RoundingMode.HALF_UP);
  }

  /** Hours of presence of all people. */
  public Duration present() {
    return days.stream().map(Day::time).reduce(Duration.ZERO, Duration::plus);
  }

  /** Days that people are there, each counted whole however short it is. */
  public long personDays() {
    return days.stream().mapToLong(d -> d.persons().size()).sum();
  }

  /** On how many days how many people are there, and their hours: what person days come from. */
  public Message daysAndPeople() {
    IntSummaryStatistics people =
        days.stream().mapToInt(d -> d.persons().size()).summaryStatistics();
    return days.isEmpty()
        ? Message.of("work.consumable.sheet-steps")
        : Message.of(
            "work.presence.days-and-people",
            days.size(),
            people.getMin(),
            people.getMax(),
            people.getMax() - people.getMin(),
            hours(present()));
  }

  public static Presence of(DayPlan plan, ShopBook book) {
    SetUpTimes times = book.setUp();
    TreeMap<LocalDate, LocalDateTime> ends = new TreeMap<>();
    TreeMap<LocalDate, Set<Integer>> who = new TreeMap<>();
    for (ScheduledStep s : plan.steps()) {
      for (TimeSpan t : s.spans()) {
        LocalDate day = t.start().toLocalDate();
        ends.merge(day, t.end(), (a, b) -> a.isAfter(b) ? a : b);
        who.computeIfAbsent(day, d -> new TreeSet<>()).addAll(s.who().persons());
        if (s.task().type().air() instanceof AirEffect.Vapour) {
          MeterWatch.of(plan, s).person().ifPresent(who.get(day)::add);
        }
      }
    }
    List<Day> days = new ArrayList<>();
    ends.forEach(
        (day, end) -> {
          boolean first = days.isEmpty();
          LocalDateTime from =
              first
                  ? plan.steps().get(0).start()
                  : day.atTime(plan.hours().from()).minus(known(times.daily()));
          LocalDateTime to = end.plus(known(times.cleanUp()));
          days.add(new Day(new TimeSpan(from, to), who.get(day)));
        });
    return new Presence(plan.personTime(), days, unsaid(times));
  }

  private static Duration known(Figure<Duration> time) {
    return time.maybe().orElse(Duration.ZERO);
  }

  private static List<Message> unsaid(SetUpTimes t) {
    List<Message> all = new ArrayList<>();
    for (Figure<?> f :
        List.of(
            t.unloading(),
            t.daily(),
            t.hepaPass(),
            t.wallMasking(),
            t.cleanUp(),
            t.strike(),
            t.breaks())) {
      if (!f.isKnown()) {
        all.add(f.text(x -> ""));
      }
    }
    return all;
  }
}
