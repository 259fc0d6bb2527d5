package slabwright.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import slabwright.site.Exposure;
import slabwright.site.Site;
import slabwright.work.book.BookSamples;
import slabwright.work.book.ShopBook;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.TimeSpan;
import slabwright.work.prep.PrepPlan;
import slabwright.work.prep.PrepStep;
import slabwright.work.rule.RuleNote;
import slabwright.work.top.TopPlan;

/** Which rules are said of the tram hall's floor, by what is ground on it and by whom. */
class AreaRuleNotesTest {
  private static final String BY_HAND = "work.silica-rule.silica";
  private static final String HOURS = "work.silica-rule.silica-respirators";
  private static final String BY_MACHINE = "work.silica-rule.silica-floor-grinder";
  private static final String DUST = "work.breathing-rule.dust";
  private static final String SAFETY = "work.crew-safety.noise";

  private static final Site SITE = WorkSamples.tramHall();
  private static final WorkPlan PLAN = WorkSamples.plan(SITE);
  private static final AreaWorkPlan HALL = PLAN.area("reading-hall").orElseThrow();
  private static final DayPlan DAYS = PLAN.days().maybe().orElseThrow();

  private static List<RuleNote> notes(
      PrepPlan prep, List<TopPlan> tops, Optional<DayPlan> days, ShopBook book) {
    return new AreaRuleNotes(SITE, HALL.floor(), HALL.coats(), book).of(prep, tops, days);
  }

  private static List<RuleNote> notes(PrepPlan prep) {
    return notes(prep, List.of(), Optional.of(DAYS), BookSamples.book());
  }

  private static PrepPlan prep(List<PrepStep> steps) {
    PrepPlan p = HALL.prep();
    return new PrepPlan(
        steps, p.zones(), p.bond(), p.chart(), p.changes(), p.filler(), p.levelling());
  }

  /** Filling and cleaning stay as they are: by hand, and no grinding. */
  private static PrepPlan ground(boolean machine, boolean hand) {
    return prep(HALL.prep().steps().stream().map(s -> ground(s, machine, hand)).toList());
  }

  private static PrepStep ground(PrepStep s, boolean machine, boolean hand) {
    boolean other = List.of(PrepStep.Kind.FILL, PrepStep.Kind.CLEAN).contains(s.kind());
    return new PrepStep(
        s.id(),
        s.name(),
        s.kind(),
        s.subject(),
        machine || other ? s.machine() : 0,
        hand || other ? s.hand() : 0,
        s.machineTime(),
        s.handTime(),
        s.dust());
  }

  private static List<String> subjects(List<RuleNote> notes) {
    return notes.stream().map(n -> n.subject().key()).toList();
  }

  private static RuleNote about(String subject, List<RuleNote> notes) {
    List<RuleNote> found = notes.stream().filter(n -> n.subject().key().equals(subject)).toList();
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  @Test
  void where_machines_alone_grind_nothing_is_said_of_hand_grinders() {
    List<RuleNote> notes = notes(ground(true, false));
    assertThat(subjects(notes)).contains(BY_MACHINE, DUST, SAFETY).doesNotContain(BY_HAND, HOURS);
    assertThat(about(DUST, notes).finding().key()).isEqualTo("work.breathing-rule.dust-free");
  }

  @Test
  void where_hands_alone_grind_nothing_is_said_of_the_floor_grinder() {
    assertThat(subjects(notes(ground(false, true))))
        .contains(BY_HAND, HOURS, DUST, SAFETY)
        .doesNotContain(BY_MACHINE);
  }

  @Test
  void where_nothing_is_ground_nothing_is_said_of_silica() {
    assertThat(subjects(notes(ground(false, false))))
        .doesNotContain(BY_HAND, HOURS, BY_MACHINE, DUST, SAFETY)
        .contains("work.slip-class.slip", "work.breathing-rule.vapour");
  }

  @Test
  void a_counter_top_that_is_ground_is_ground_by_hand() {
    TopPlan foot = PLAN.area("terrace").orElseThrow().tops().get(0);
    TopPlan top = TopPlan.of(foot.foot(), Optional.of(Exposure.FINE), BookSamples.book());
    List<RuleNote> notes =
        notes(ground(false, false), List.of(top), Optional.of(DAYS), BookSamples.book());
    assertThat(subjects(notes)).contains(BY_HAND, HOURS).doesNotContain(BY_MACHINE);
    assertThat(foot.passes()).isEmpty();
    assertThat(
            subjects(
                notes(ground(false, false), List.of(foot), Optional.of(DAYS), BookSamples.book())))
        .doesNotContain(BY_HAND, HOURS);
  }

  /** 25 cfm an inch of wheel: 125 for one of five inches. The book's vacuums pull 450 and 150. */
  @Test
  void the_weakest_vacuum_of_the_shop_is_held_against_the_hand_grinder() {
    assertThat(about(BY_HAND, notes(HALL.prep())).verdict()).isEqualTo(RuleNote.Verdict.FINE);
    assertThat(withVacuums("450 cfm", "120 cfm")).isEqualTo(RuleNote.Verdict.NOT_MET);
    assertThat(withVacuums("120 cfm", "450 cfm")).isEqualTo(RuleNote.Verdict.NOT_MET);
    assertThat(withVacuums("?", "?")).isEqualTo(RuleNote.Verdict.UNKNOWN);
  }

  private static RuleNote.Verdict withVacuums(String large, String small) {
    ShopBook book =
        ShopBook.of(
            BookSamples.text()
                .with("tool", "vacuum large", "airflow", large)
                .with("tool", "vacuum small", "airflow", small));
    return about(BY_HAND, notes(HALL.prep(), List.of(), Optional.of(DAYS), book)).verdict();
  }

  @Test
  void without_a_day_plan_hours_of_hand_grinding_are_unknown_and_nobody_is_told_none_is_asked() {
    List<RuleNote> notes = notes(HALL.prep(), List.of(), Optional.empty(), BookSamples.book());
    assertThat(about(HOURS, notes).verdict()).isEqualTo(RuleNote.Verdict.UNKNOWN);
    assertThat(about(DUST, notes).finding().key())
        .isEqualTo("work.breathing-rule.dust-hours-unknown");
  }

  /** All grinding of a shift counts, of those who grind by hand here. */
  @Test
  void hours_are_those_of_the_one_with_most_grinding_of_all_who_grind_here_by_hand() {
    Map<String, Duration> all = new HashMap<>();
    Map<String, Duration> hand = new HashMap<>();
    add(all, s -> s.task().type().kind().grindsConcrete());
    add(hand, s -> s.task().type().isHandGrinding() && s.task().type().isOn("reading-hall"));
    double most =
        hand.keySet().stream().mapToDouble(k -> all.get(k).toMinutes() / 60.0).max().orElseThrow();
    double longest = all.values().stream().mapToDouble(d -> d.toMinutes() / 60.0).max().orElse(0);
    assertThat(most).isPositive().isLessThan(longest);
    RuleNote hours = about(HOURS, notes(HALL.prep()));
    assertThat(hours.finding().key()).isEqualTo("work.silica-rule.hand-grinding-indoors");
    assertThat(hours.finding().values().get(0)).isEqualTo(most);
  }

  @Test
  void hand_grinding_on_another_floor_is_not_taken_for_hand_grinding_here() {
    AreaWorkPlan terrace = PLAN.area("terrace").orElseThrow();
    List<RuleNote> notes =
        new AreaRuleNotes(SITE, terrace.floor(), terrace.coats(), BookSamples.book())
            .of(ground(false, true), List.of(), Optional.of(DAYS));
    assertThat(about(HOURS, notes).finding().key())
        .isEqualTo("work.silica-rule.hand-grinding-outdoors");
    assertThat(about(HOURS, notes).finding().values().get(0)).isEqualTo(0.0);
  }

  private static void add(Map<String, Duration> sums, Predicate<ScheduledStep> which) {
    for (ScheduledStep s : DAYS.steps()) {
      for (TimeSpan t : which.test(s) ? s.spans() : List.<TimeSpan>of()) {
        LocalDate day = t.start().toLocalDate();
        s.who().persons().forEach(p -> sums.merge(day + "/" + p, t.length(), Duration::plus));
      }
    }
  }

  /** Sealer and topcoat are films on the whole floor; a dye is none, and a graphic's even less. */
  @Test
  void films_alone_are_held_against_the_slabs_warmth() {
    assertThat(subjects(notes(HALL.prep())))
        .filteredOn("work.temperature-rule.temperature"::equals)
        .hasSize(2);
  }
}
