package slabwright.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LinearColourTest {
  /** IEC 61966-2-1: the two branches and three values worked out from its formula. */
  @Test
  void the_transfer_function_has_the_values_of_the_standard() {
    assertThat(LinearColour.decode(0)).isZero();
    assertThat(LinearColour.decode(255)).isEqualTo(1, within(1e-12));
    assertThat(LinearColour.decode(10)).isEqualTo(10 / 255.0 / 12.92, within(1e-12));
    assertThat(LinearColour.decode(11)).isEqualTo(0.003346536, within(1e-8));
    assertThat(LinearColour.decode(128)).isEqualTo(0.215860500, within(1e-8));
    assertThat(LinearColour.decode(188)).isEqualTo(0.502886458, within(1e-8));
  }

  @Test
  void every_part_comes_back_from_light_through_the_table_too() {
    for (int part = 0; part < 256; part++) {
      double light = LinearColour.decode(part);
      assertThat(LinearColour.encode(light)).isEqualTo(part, within(1e-3));
      float f = (float) light;
      assertThat(LinearColour.argb(f, f, f) & 255).isEqualTo(part);
    }
  }

  @Test
  void light_beyond_white_is_white() {
    assertThat(LinearColour.argb(3, -1, 1)).isEqualTo(0xffff00ff);
  }
}
