package slabwright.desk.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScreenScaleBarTest {
  @ParameterizedTest
  @ValueSource(doubles = {290, 447, 519, 520, 900})
  void it_lies_clear_of_the_dimensions_above_the_plan_in_a_view_of_any_height(double height) {
    assertThat(FreeView.underRuler(height)).isPositive();
  }
}
