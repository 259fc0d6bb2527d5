package slabwright.desk.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slabwright.desk.model.input.Snap;
import slabwright.desk.tool.OverlayScale;
import slabwright.drawing.Text;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

class SnapInksTest {
  private static final Words WORDS = Words.english();
  private static final OverlayScale PAPER = new OverlayScale(50, UnitSystem.METRIC);

  @ParameterizedTest
  @EnumSource(value = Snap.Kind.class, names = "FREE", mode = EnumSource.Mode.EXCLUDE)
  void whatever_draws_a_touch_is_seen(Snap.Kind kind) {
    Snap snap = Snap.of(new Vec(1000, 500), kind, Line.of(Vec.ZERO, new Vec(1000, 500)));
    assertThat(SnapInks.of(snap, PAPER, WORDS)).isNotEmpty();
  }

  @ParameterizedTest
  @EnumSource(
      value = Snap.Kind.class,
      names = {"CORNER", "EDGE", "SQUARE", "PARALLEL"})
  void a_word_says_what_it_is(Snap.Kind kind) {
    Snap snap = Snap.of(new Vec(1000, 500), kind);
    assertThat(SnapInks.of(snap, PAPER, WORDS))
        .anyMatch(
            ink ->
                ink instanceof Text t
                    && kind.word().map(WORDS::say).equals(Optional.of(t.words())));
  }

  @Test
  void a_free_touch_shows_nothing() {
    assertThat(SnapInks.of(Snap.free(Vec.ZERO), PAPER, WORDS)).isEmpty();
  }
}
