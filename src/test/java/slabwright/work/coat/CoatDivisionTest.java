package slabwright.work.coat;

import static org.assertj.core.api.Assertions.assertThat;
import static slabwright.work.coat.CoatDividerTest.hall;
import static slabwright.work.coat.CoatDividerTest.job;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Bounds;
import slabwright.shape.Region;

/** Which sections are proposed for single invented floors, sealed by one person. */
class CoatDivisionTest {
  private static final Duration DAY = Duration.ofHours(9);

  private static CoatPlan plan(Region floor, double celsius, int crew, Duration day) {
    return CoatDivider.plan(
        job("sealer", floor, 1, celsius, crew),
        new DivisionParameters(floor, CoatDividerTest.wayOut(floor), List.of(), List.of(), day));
  }

  private static Duration alone(Region floor) {
    return CoatPlan.of(job("sealer", floor, 1, 18, 1)).coatTime().maybe().orElseThrow();
  }

  private static List<Duration> times(CoatPlan plan) {
    return plan.divided().orElseThrow().sections().stream()
        .map(s -> s.plan().coatTime().maybe().orElseThrow())
        .toList();
  }

  /** Little more than one day and less than three, so two and three sections. */
  @Test
  void a_floor_is_in_as_many_sections_as_it_needs_days() {
    assertThat(alone(hall(40_000, 12_000))).isBetween(DAY, DAY.multipliedBy(2));
    assertThat(times(plan(hall(40_000, 12_000), 18, 1, DAY))).hasSize(2);
    assertThat(alone(hall(60_000, 20_000))).isBetween(DAY.multipliedBy(2), DAY.multipliedBy(3));
    assertThat(times(plan(hall(60_000, 20_000), 18, 1, DAY))).hasSize(3);
  }

  @Test
  void what_takes_just_the_day_is_laid_in_one_go_and_what_takes_a_second_more_is_not() {
    Region floor = hall(40_000, 12_000);
    Duration time = alone(floor);
    assertThat(plan(floor, 18, 1, time).divided()).isEmpty();
    assertThat(plan(floor, 18, 1, time.minusSeconds(1)).divided()).isPresent();
  }

  /** In half of it bays of 1.1 m, where there is more to cut in to a square meter. */
  @Test
  void no_section_takes_more_than_the_day_where_some_of_the_floor_is_slower_than_the_rest() {
    List<Region> walls = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      double x = 20_000 + i * 2_000;
      double from = i % 2 == 0 ? -10 : 1_000;
      walls.add(Region.rectangle(new Bounds(x, from, x + 900, from + 15_010)));
    }
    Region floor = hall(36_000, 16_000).minus(Region.union(walls));
    assertThat(times(plan(floor, 12, 1, DAY))).allMatch(t -> t.compareTo(DAY) <= 0);
  }

  /** A floor of a day whose edge would dry behind one person alone. */
  @Test
  void the_last_of_the_crew_is_taken_before_a_floor_is_divided_and_no_more_than_are_needed() {
    Region floor = hall(20_000, 20_000);
    assertThat(plan(floor, 18, 1, DAY).divided()).isPresent();
    for (int crew : new int[] {2, 4}) {
      CoatPlan two = plan(floor, 18, crew, DAY);
      assertThat(two.divided()).isEmpty();
      assertThat(two.job().people().maybe()).hasValue(2);
    }
  }
}
