package slabwright.inlay.artwork.css;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CssVariablesTest {
  private static final CssVariables SET = CssVariables.none().with(Map.of("--dye", "teal"));

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "var(--none, rgb(10, 20, 30))                  | rgb(10, 20, 30)",
        "var(--dye, rgb(10, 20, 30))                   | teal",
        "var(--none, var(--dye, rgb(1, 2, 3)))         | teal",
        "var(--none, var(--nor, rgb(1, 2, 3)))         | rgb(1, 2, 3)",
        "url(#a) var(--none, hsl(calc(10 * 2) 9% 9%))  | url(#a) hsl(calc(10 * 2) 9% 9%)",
        "rgb(var(--none, 1), 2, 3)                     | rgb(1, 2, 3)",
      })
  void brackets_inside_a_fallback_belong_to_it(String value, String expected) {
    assertThat(SET.expand(value)).contains(expected);
  }

  @Test
  void a_variable_whose_bracket_never_closes_is_no_value() {
    assertThat(SET.expand("var(--none, rgb(1, 2, 3)")).isEmpty();
  }
}
