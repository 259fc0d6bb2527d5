package slabwright.work.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.site.Setting;
import slabwright.site.Slab;
import slabwright.units.UnitSystem;
import slabwright.words.Words;
import slabwright.work.book.BookSamples;
import slabwright.work.book.Product;

class TemperatureRuleTest {
  private static Product product(String id) {
    return BookSamples.book().products().stream()
        .filter(p -> p.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static List<RuleNote> notes(Setting setting, String product) {
    return TemperatureRule.of(SLAB, setting, product(product), UnitSystem.FEET_INCHES);
  }

  private static final Slab SLAB = Slab.UNKNOWN;

  /** NTP chemical repository: 180 mmHg at 20 °C (68 °F), 270 at 30 °C (86 °F). */
  @Test
  void outdoors_the_sun_is_cautioned_by_acetones_vapour_pressure() {
    RuleNote sun = notes(Setting.OUTDOOR, "outdoor-sealer").get(1);
    assertThat(Words.english().say(sun.number()))
        .contains("180 mmHg at 20 °C (68 °F), 270 at 30 °C (86 °F)");
    assertThat(sun.verdict()).isEqualTo(RuleNote.Verdict.LOOK);
  }

  @Test
  void a_product_without_solvent_has_the_sun_and_no_vapour_pressure() {
    RuleNote sun = notes(Setting.OUTDOOR, "sealer").get(1);
    assertThat(Words.english().say(sun.number())).doesNotContain("mmHg").doesNotContain("acetone");
    assertThat(Words.english().say(sun.todo())).contains("shade").doesNotContain("evaporation");
  }

  @Test
  void indoors_there_is_no_word_of_the_sun() {
    assertThat(notes(Setting.INDOOR, "outdoor-sealer")).hasSize(1);
  }
}
