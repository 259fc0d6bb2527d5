package slabwright.inlay.cutfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Vec;

/** Letters of 12 mm, so of 2 mm a grid line: 8 wide, and 11.2 from one to the next. */
class StrokeLettersTest {
  private static Bounds box(List<Line> strokes) {
    return Bounds.of(strokes.stream().flatMap(s -> s.points().stream()).toList());
  }

  @Test
  void an_l_stands_where_it_is_put_and_as_high_as_is_asked() {
    List<Line> strokes = StrokeLetters.lines("L", new Vec(100, 50), 12);
    assertThat(strokes).hasSize(1);
    assertThat(strokes.get(0).points())
        .containsExactly(new Vec(100, 50), new Vec(100, 62), new Vec(108, 62));
  }

  @Test
  void letters_stand_beside_each_other_and_a_blank_keeps_its_place() {
    Bounds third = box(StrokeLetters.lines("  H", new Vec(100, 50), 12));
    assertThat(third.minX()).isCloseTo(122.4, within(1e-9));
    assertThat(box(StrokeLetters.lines("H H", new Vec(100, 50), 12)).maxX())
        .isCloseTo(130.4, within(1e-9));
    assertThat(StrokeLetters.lines("~ ", Vec.ZERO, 12)).isEmpty();
  }

  @Test
  void a_line_of_words_is_as_wide_as_is_said() {
    for (String words : List.of("H", "HH", "HOOD", "HEN 12H")) {
      Bounds box = box(StrokeLetters.lines(words, Vec.ZERO, 12));
      assertThat(StrokeLetters.width(words.length(), 12))
          .as(words)
          .isCloseTo(box.width(), within(1e-9));
      assertThat(box.height()).isCloseTo(12, within(1e-9));
    }
  }

  @Test
  void accents_are_left_off() {
    assertThat(StrokeLetters.lines("É", Vec.ZERO, 12))
        .isEqualTo(StrokeLetters.lines("E", Vec.ZERO, 12))
        .isNotEmpty();
  }
}
