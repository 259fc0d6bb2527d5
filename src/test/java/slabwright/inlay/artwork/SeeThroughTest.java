package slabwright.inlay.artwork;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;
import slabwright.words.Words;

class SeeThroughTest {
  private static final Rgba RED = new Rgba(200, 40, 0, 1);
  private static final Vec PLACE = new Vec(3, 4);

  private final WarningCollector notes = new WarningCollector();

  private String colour(double alpha) {
    return SeeThrough.colour(RED, alpha, PLACE, notes);
  }

  private List<ArtworkQuestion> questions() {
    return notes.questions(v -> v.times(2));
  }

  @Test
  void what_is_solid_but_for_rounding_is_its_own_colour_without_a_word() {
    assertThat(colour(1)).isEqualTo("#c82800");
    assertThat(colour(0.999)).isEqualTo("#c82800");
    assertThat(notes.warnings(v -> v)).isEmpty();
    assertThat(questions()).isEmpty();
  }

  @Test
  void from_two_fifths_up_it_counts_as_solid_which_is_said() {
    assertThat(colour(0.998)).isEqualTo("#c82800");
    assertThat(colour(0.4)).isEqualTo("#c82800");
    assertThat(notes.warnings(v -> v))
        .isNotEmpty()
        .allMatch(w -> w.kind() == ArtworkWarning.Kind.SEE_THROUGH);
    assertThat(questions()).isEmpty();
  }

  /** A quarter of (200, 40, 0) and three quarters of white: (241.25, 201.25, 191.25). */
  @Test
  void a_veil_is_asked_about_in_the_colour_that_is_seen_over_white() {
    assertThat(colour(0.25)).isEqualTo("#f1c9bf");
    assertThat(questions()).hasSize(1);
    ArtworkQuestion asked = questions().get(0);
    assertThat(asked.kind()).isEqualTo(ArtworkQuestion.Kind.VEIL);
    assertThat(asked.colours()).containsExactly("#f1c9bf");
    assertThat(asked.place()).isEqualTo(Optional.of(new Vec(6, 8)));
    assertThat(Words.english().say(asked.message()))
        .startsWith("The color #c82800 is laid on at 25 % only")
        .contains("counted as #f1c9bf");
  }

  @Test
  void just_under_two_fifths_is_a_veil() {
    assertThat(colour(0.399)).isNotEqualTo("#c82800");
    assertThat(questions()).hasSize(1);
  }
}
