package slabwright.inlay.artwork.css;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.inlay.artwork.WarningCollector;

/** CSS Transforms: a turn is 360°, 400 gradians or 2π; an origin is moved to and back from. */
class TransformRewriterTest {
  private static String rewritten(String transform, String origin) {
    SvgElement e = new SvgElement("g");
    e.attributes.put("transform", transform);
    if (!origin.isEmpty()) {
      e.attributes.put("transform-origin", origin);
    }
    TransformRewriter.rewrite(e, new WarningCollector());
    assertThat(e.attributes).doesNotContainKey("transform-origin");
    return e.attributes.getOrDefault("transform", "left out");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "rotate(0.25turn) | rotate(90.0)",
        "rotate(-100grad) | rotate(-90.0)",
        "rotate(3.141592653589793rad) | rotate(180.0)",
        "rotate(30deg) translate(1e1px, -.5px) | rotate(30) translate(1e1, -.5)",
        "translateX(10px) | translate(10 0)",
        "translateY(10px) | translate(0 10)",
        "scaleX(2) | scale(2 1)",
        "scaleY( 2 ) | scale(1 2)",
        "skewY(10deg) | skewY(10)",
        "matrix(1,0 0-1 5,5) | matrix(1,0 0-1 5,5)"
      })
  void units_and_one_way_transforms_are_written_the_plain_way(String css, String plain) {
    assertThat(rewritten(css, "")).isEqualTo(plain);
  }

  @Test
  void an_origin_is_moved_to_and_back_from() {
    assertThat(rewritten("rotate(90)", "10px 20"))
        .isEqualTo("translate(10 20) rotate(90) translate(-10.0 -20.0)");
    assertThat(rewritten("rotate(90)", "center")).isEqualTo("rotate(90)");
  }

  @ParameterizedTest
  @ValueSource(strings = {"none", " ", "translate(10%)", "rotate3d(1, 0, 0, 5)", "scale()"})
  void what_svg_does_not_know_is_left_out(String css) {
    assertThat(rewritten(css, "")).isEqualTo("left out");
  }

  /** Browsers' style sheets often end in translateZ(0). */
  @Test
  void long_numbers_before_something_unknown_are_left_out_at_once() {
    String third = "0.33333333333333331483";
    String css = "matrix(" + third + ", " + third + ", 0, 1, 0, 0) translateZ(0)";
    assertTimeoutPreemptively(
        Duration.ofSeconds(5), () -> assertThat(rewritten(css, "")).isEqualTo("left out"));
  }
}
