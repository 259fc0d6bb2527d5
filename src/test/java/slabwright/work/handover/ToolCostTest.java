package slabwright.work.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import slabwright.site.Site;
import slabwright.site.job.JobCrew;
import slabwright.work.Said;
import slabwright.work.WorkPlan;
import slabwright.work.WorkSamples;
import slabwright.work.book.BookSamples;
import slabwright.work.book.ShopBook;

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
  void two_of_one_tool_cost_twice_the_days() {
    ShopBook twice = ShopBook.of(BookSamples.text().with("tool", "hand grinder 5", "count", "2"));
    CostLine two = named(lines(Map.of(), twice), "hand grinder 5").get(0);
    CostLine single = named(lines(Map.of(), BookSamples.book()), "hand grinder 5").get(0);
    assertThat(two.amount().maybe().orElseThrow())
        .isEqualTo(single.amount().maybe().orElseThrow().multiply(BigDecimal.valueOf(2)));
  }
}
