package slabwright.desk.cards.finish;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.site.job.Stop;
import slabwright.units.Result;

class SettledStopTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 12);

  private static String key(Result<?> r) {
    return ((Result.Refused<?>) r).message().key();
  }

  @Test
  void who_day_and_report_clear_a_stop_and_read_back_as_typed() {
    String typed = "Quay Laboratory (invented), 2026-11-12, QM-1, no fibres found";
    Stop.State state = SettledStop.cleared(typed).orThrow();
    assertThat(state)
        .isEqualTo(new Stop.Cleared("Quay Laboratory (invented)", DAY, "QM-1, no fibres found"));
    assertThat(SettledStop.text((Stop.Cleared) state)).isEqualTo(typed);
  }

  @Test
  void nothing_leaves_it_open() {
    assertThat(SettledStop.cleared(" ").orThrow()).isInstanceOf(Stop.Open.class);
    assertThat(SettledStop.confirmed("").orThrow()).isInstanceOf(Stop.Open.class);
  }

  @Test
  void a_name_without_a_day_clears_nothing() {
    assertThat(key(SettledStop.cleared("the boss")))
        .isEqualTo("desk.cards.finish.stops.cleared-needs");
    assertThat(key(SettledStop.cleared("the boss, soon")))
        .isEqualTo("desk.cards.finish.stops.cleared-needs");
  }

  @Test
  void what_does_not_apply_says_why() {
    assertThat(SettledStop.confirmed("J. O., slab of 1999, by the drawings").orThrow())
        .isEqualTo(new Stop.Confirmed("J. O.", Optional.empty(), "slab of 1999, by the drawings"));
    assertThat(SettledStop.confirmed("J. O., 2026-11-12, slab of 1999").orThrow())
        .isEqualTo(new Stop.Confirmed("J. O.", Optional.of(DAY), "slab of 1999"));
    assertThat(key(SettledStop.confirmed("J. O.")))
        .isEqualTo("desk.cards.finish.stops.confirmed-needs");
  }

  @Test
  void a_stop_opened_again_leaves_the_others() {
    Stop fire = new Stop(Stop.Kind.FIRE_PERMIT, new Stop.Cleared("F", DAY, ""));
    Stop lead = new Stop(Stop.Kind.LEAD_PAINT, new Stop.Cleared("L", DAY, ""));
    assertThat(SettledStop.in(List.of(fire), Stop.Kind.LEAD_PAINT, lead.state()))
        .containsExactly(lead, fire);
    assertThat(SettledStop.in(List.of(lead, fire), Stop.Kind.LEAD_PAINT, new Stop.Open()))
        .containsExactly(fire);
  }
}
