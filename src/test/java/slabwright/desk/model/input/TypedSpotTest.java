package slabwright.desk.model.input;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slabwright.site.Spot;
import slabwright.units.Length;
import slabwright.units.Result;
import slabwright.words.Words;

class TypedSpotTest {
  private static Spot spot(String line) {
    return TypedSpot.read(line, Length::parse).orThrow();
  }

  @Test
  void a_place_is_two_lengths_right_and_up() {
    assertThat(spot("19' 6\", 35' 7\"").vec()).isEqualTo(Spot.mm(5943.6, 10845.8).vec());
    assertThat(spot("12', -18'").y().mm()).isEqualTo(-5486.4);
  }

  @Test
  void a_decimal_comma_divides_nothing() {
    assertThat(TypedSpot.isOne("7,47 m")).isFalse();
    assertThat(spot("7,47 m, 3,5 m").vec()).isEqualTo(Spot.mm(7470, 3500).vec());
    assertThat(spot("7,47 m; 3,5 m").vec()).isEqualTo(Spot.mm(7470, 3500).vec());
  }

  @Test
  void what_was_typed_is_kept() {
    assertThat(spot("1 ft, 2 ft").x().typed()).isEqualTo("1 ft");
  }

  @Test
  void a_part_without_unit_says_so() {
    assertThat(TypedSpot.read("12', 5", Length::parse)).isInstanceOf(Result.Refused.class);
    assertThat(
            Words.english()
                .say(((Result.Refused<Spot>) TypedSpot.read("12', 5", Length::parse)).message()))
        .contains("no unit");
    assertThat(TypedSpot.read("12'", Length::parse)).isInstanceOf(Result.Refused.class);
  }
}
