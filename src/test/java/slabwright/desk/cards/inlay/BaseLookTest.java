package slabwright.desk.cards.inlay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class BaseLookTest {
  @Test
  void each_word_is_the_nearest_to_its_own_lightness() {
    for (BaseLook look : BaseLook.values()) {
      assertThat(BaseLook.of(look.lightness())).isEqualTo(look);
    }
  }

  @Test
  void a_lightness_between_two_words_gets_the_nearer() {
    assertThat(BaseLook.of(OptionalDouble.of(0))).isEqualTo(BaseLook.VERY_DARK);
    assertThat(BaseLook.of(OptionalDouble.of(48))).isEqualTo(BaseLook.MEDIUM);
    assertThat(BaseLook.of(OptionalDouble.of(100))).isEqualTo(BaseLook.VERY_LIGHT);
  }
}
