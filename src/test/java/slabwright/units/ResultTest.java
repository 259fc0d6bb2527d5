package slabwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class ResultTest {
  private static final Message WHY = Message.of("units.bare-unit.feet");

  @Test
  void a_value_goes_on_to_the_next_step() {
    Result<Integer> six = Result.ok(5).map(v -> v + 1);
    assertThat(six.isOk()).isTrue();
    assertThat(six.orThrow()).isEqualTo(6);
    assertThat(six.flatMap(v -> Result.ok(v * 2)).orThrow()).isEqualTo(12);
  }

  @Test
  void what_stops_one_step_stops_all_that_follow() {
    Result<Integer> refused = Result.refused(WHY);
    Result<Integer> next = refused.map(v -> v + 1).flatMap(v -> Result.ok(v));
    assertThat(next.isOk()).isFalse();
    assertThat(next).isEqualTo(Result.refused(List.of(Refusal.of(WHY))));
    assertThatThrownBy(next::orThrow).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void a_refusal_without_a_reason_is_none() {
    assertThatThrownBy(() -> Result.refused(List.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void a_refusal_keeps_its_place_and_its_point() {
    Refusal refusal = Refusal.at("areas[0]", WHY, 3, 4);
    assertThat(refusal.place()).isEqualTo("areas[0]");
    assertThat(refusal.where()).contains(new Refusal.Point(3, 4));
    assertThat(Refusal.at("areas[1]", WHY).place()).isEqualTo("areas[1]");
    assertThat(new Result.Refused<>(List.of(refusal, Refusal.of(WHY))).message()).isEqualTo(WHY);
  }
}
