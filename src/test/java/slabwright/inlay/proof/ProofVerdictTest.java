package slabwright.inlay.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static slabwright.inlay.proof.ProofVerdict.CANNOT_TELL;
import static slabwright.inlay.proof.ProofVerdict.CUT;
import static slabwright.inlay.proof.ProofVerdict.DO_NOT_CUT;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slabwright.words.Words;

class ProofVerdictTest {
  @Test
  void of_several_sheets_the_gravest_counts_and_of_none_nothing_is_known() {
    assertThat(ProofVerdict.gravest(List.of(CUT, CUT))).isEqualTo(CUT);
    assertThat(ProofVerdict.gravest(List.of(CUT, CANNOT_TELL))).isEqualTo(CANNOT_TELL);
    assertThat(ProofVerdict.gravest(List.of(CANNOT_TELL, DO_NOT_CUT, CUT))).isEqualTo(DO_NOT_CUT);
    assertThat(ProofVerdict.gravest(List.of())).isEqualTo(CANNOT_TELL);
  }

  @Test
  void each_has_a_key_and_a_sentence_of_its_own() {
    assertThat(Stream.of(ProofVerdict.values()).map(ProofVerdict::key))
        .containsExactly("cut", "do-not-cut", "cannot-tell");
    assertThat(Stream.of(ProofVerdict.values()).map(v -> Words.english().say(v.message())))
        .doesNotHaveDuplicates()
        .allMatch(s -> !s.isBlank());
  }
}
