package slabwright.work.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slabwright.site.Site;
import slabwright.site.job.JobCrew;
import slabwright.work.MeterWatch;
import slabwright.work.Said;
import slabwright.work.WorkPlan;
import slabwright.work.WorkSamples;
import slabwright.work.book.BookSamples;
import slabwright.work.book.ShopBook;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.TimeSpan;

/** Tools of the invented example shop, priced piece by piece. */
class ToolCostTest {
  private static List<CostLine> lines(Map<String, Integer> tools, ShopBook book) {
    Site site = WorkSamples.tramHall();
    JobCrew crew = new JobCrew("", List.of(), new TreeMap<>(tools));
    WorkPlan plan = WorkSamples.planSmall(site.withJob(site.job().withCrew(crew)), book);
    return Cost.of(plan).lines();
  }

  private static List<CostLine> named(List<CostLine> lines, String name) {
    return lines.stream().filter(l -> Said.of(l.what()).equals(name)).toList();
  }

  @Test
  void a_second_hand_grinder_that_the_shop_has_not_got_is_listed_without_a_price() {
    List<CostLine> two = lines(Map.of("hand grinder", 2), BookSamples.book());
    assertThat(named(two, "hand grinder 5")).singleElement().matches(l -> l.amount().isKnown());
    assertThat(named(two, "hand grinder 2")).singleElement().matches(l -> !l.amount().isKnown());
  }

  @Test
  void a_vacuum_that_stays_in_the_shop_costs_nothing() {
    assertThat(named(lines(Map.of(), BookSamples.book()), "vacuum small")).hasSize(1);
    assertThat(named(lines(Map.of("vacuum", 1), BookSamples.book()), "vacuum small")).isEmpty();
  }

  @Test
  void each_piece_of_a_tool_is_paid_for_the_days_on_which_a_step_holds_it() {
    WorkPlan plan = WorkSamples.plan(WorkSamples.tramHall());
    List<CostLine> lines = Cost.of(plan).lines();
    for (String tool : List.of("vacuum large", "vacuum small", "hand grinder 5", "sprayer")) {
      assertThat(days(named(lines, tool).get(0))).as(tool).isEqualTo(held(plan, tool));
    }
    long any =
        Stream.of("vacuum large", "vacuum small").mapToLong(t -> held(plan, t)).max().orElseThrow();
    assertThat(held(plan, "vacuum large") + held(plan, "vacuum small")).isLessThan(2 * any);
  }

  @Test
  void two_of_one_tool_are_counted_one_by_one() {
    ShopBook twice = ShopBook.of(BookSamples.text().with("tool", "hand grinder 5", "count", "2"));
    WorkPlan plan = WorkSamples.plan(WorkSamples.tramHall(), twice);
    assertThat(days(named(Cost.of(plan).lines(), "hand grinder 5").get(0)))
        .isEqualTo(held(plan, "hand grinder 5 (1)") + held(plan, "hand grinder 5 (2)"));
  }

  @Test
  void who_stays_away_has_no_day_of_protection_and_a_sample_panel_has_its_gas_meter() {
    WorkPlan plan = WorkSamples.plan(WorkSamples.tramHall());
    List<CostLine> lines = Cost.of(plan).lines();
    DayPlan days = plan.days().maybe().orElseThrow();
    Set<String> present = new HashSet<>();
    Set<LocalDate> metered = new HashSet<>();
    for (ScheduledStep s : days.steps()) {
      for (TimeSpan t : s.spans()) {
        s.who().persons().forEach(p -> present.add(t.start().toLocalDate() + " " + p));
        if (s.task().keepOut().isPresent()) { // solvent is out
          metered.add(t.start().toLocalDate());
          MeterWatch.of(days, s)
              .person()
              .ifPresent(p -> present.add(t.start().toLocalDate() + " " + p));
        }
      }
    }
    CostLine protection = named(lines, "Protection of the crew: cartridges, gloves, suits").get(0);
    assertThat(days(protection)).isEqualTo(present.size()).isLessThan(3L * 9);
    assertThat(days(named(lines, "Gas meter that shows ppm of vapor, with pump and hose").get(0)))
        .isEqualTo(metered.size());
  }

  private static long days(CostLine line) {
    String text = Said.of(line.quantity().maybe().orElseThrow());
    return Long.parseLong(text.replaceAll("\\D.*", ""));
  }

  private static long held(WorkPlan plan, String tool) {
    return plan.days().maybe().orElseThrow().steps().stream()
        .filter(s -> s.who().tools().stream().anyMatch(t -> t.name().equals(tool)))
        .flatMap(s -> s.spans().stream())
        .map(t -> t.start().toLocalDate())
        .distinct()
        .count();
  }
}
