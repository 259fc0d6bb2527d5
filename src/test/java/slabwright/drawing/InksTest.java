package slabwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

class InksTest {
  private static final TextStyle STYLE = TextStyle.bold(3.2);

  private static Text words(Dimension d) {
    return d.parts(Bounds.EMPTY).stream()
        .filter(Text.class::isInstance)
        .map(Text.class::cast)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_view_at_1_to_50_sets_10_m_to_200_mm_and_turns_up_over() {
    View view = View.yUp(50, new Vec(0, 0), new Vec(5, 290));
    assertThat(view.onPaper(new Vec(10_000, 10_000))).isEqualTo(new Vec(205, 90));
    Vec back = view.onModel(new Vec(205, 90));
    assertThat(back.distanceTo(new Vec(10_000, 10_000))).isLessThan(1e-6);
  }

  @Test
  void line_widths_and_paper_text_stay_while_floor_text_scales() {
    View view = View.yUp(50, Vec.ZERO, Vec.ZERO);
    assertThat(Text.start(Vec.ZERO, "a", STYLE).placed(view).style().size()).isEqualTo(3.2);
    Text onFloor = Text.start(Vec.ZERO, "a", STYLE.sized(200).onModel());
    assertThat(onFloor.placed(view).style().size()).isCloseTo(4, within(1e-9));
  }

  @Test
  void dimension_words_never_stand_on_their_head() {
    for (int degrees = 0; degrees < 360; degrees += 15) {
      double a = Math.toRadians(degrees);
      Dimension d =
          new Dimension(Vec.ZERO, new Vec(50 * Math.cos(a), 50 * Math.sin(a)), 5, "1 m", STYLE);
      assertThat(words(d).turn()).as("at %d", degrees).isBetween(-89.99, 90.01);
    }
  }

  @Test
  void a_dimension_lies_to_the_left_as_seen() {
    Dimension right = new Dimension(new Vec(0, 50), new Vec(60, 50), 8, "60", STYLE);
    assertThat(TextBox.of(words(right)).bounds().middle().y()).isBetween(41.0, 43.5);
  }

  @Test
  void words_too_long_for_a_dimension_go_beyond_its_end() {
    Dimension tiny = new Dimension(new Vec(0, 50), new Vec(3, 50), 8, "3 mm", STYLE);
    assertThat(TextBox.of(words(tiny)).bounds().minX()).isGreaterThan(3);
  }

  @ParameterizedTest
  @EnumSource(Symbol.Kind.class)
  void a_symbol_keeps_within_its_size_at_any_turn(Symbol.Kind kind) {
    Symbol s = new Symbol(kind, new Vec(10, 10), 6, 30, Palette.INK, "7");
    Bounds reach =
        s.parts(Bounds.EMPTY).stream().map(Ink::reach).reduce(Bounds.EMPTY, Bounds::including);
    double corner = 3 * Math.sqrt(2) + 0.01;
    Bounds room = new Bounds(10 - corner, 10 - corner, 10 + corner, 10 + corner);
    assertThat(room.including(reach)).isEqualTo(room);
    assertThat(s.parts(Bounds.EMPTY)).isNotEmpty();
  }

  @Test
  void clipping_leaves_nothing_outside_and_keeps_what_is_inside() {
    Bounds window = new Bounds(60, 60, 140, 150);
    List<PrimitiveInk> kept = Clip.of(SampleDrawing.page(), window);
    assertThat(kept).hasSizeGreaterThan(20);
    Bounds slack = window.grown(1e-9);
    for (PrimitiveInk part : kept) {
      assertThat(slack.including(part.reach())).isEqualTo(slack);
    }
    assertThat(Clip.of(SampleDrawing.page(), SampleDrawing.page().bounds()))
        .hasSameSizeAs(SampleDrawing.page().plain());
  }
}
