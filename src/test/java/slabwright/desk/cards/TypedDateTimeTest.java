package slabwright.desk.cards;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import slabwright.units.Result;

class TypedDateTimeTest {
  @Test
  void a_day_and_a_time_are_read_as_they_are_shown() {
    LocalDateTime when = LocalDateTime.of(2026, 12, 7, 7, 30);
    assertThat(TypedDateTime.read(TypedDateTime.show(when)).orThrow()).contains(when);
    assertThat(TypedDateTime.read("2026-12-07 7:30").orThrow()).contains(when);
    assertThat(TypedDateTime.read("2026-12-07T07:30").orThrow()).contains(when);
  }

  @Test
  void a_day_alone_begins_at_seven_and_nothing_is_no_time() {
    assertThat(TypedDateTime.read("2026-12-07").orThrow())
        .contains(LocalDateTime.of(2026, 12, 7, 7, 0));
    assertThat(TypedDateTime.read("  ").orThrow()).isEmpty();
  }

  @Test
  void anything_else_is_refused_with_an_example() {
    for (String bad : new String[] {"soon", "7 Dec", "2026-13-01", "2026-12-07 noon"}) {
      assertThat(TypedDateTime.read(bad)).as(bad).isInstanceOf(Result.Refused.class);
    }
  }
}
