package slabwright.inlay.masking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import slabwright.words.Words;

class DyeNeedTest {
  private static final DyeRates EMPTY =
      new DyeRates(
          OptionalInt.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty());

  @Test
  void litres_are_area_times_coats_over_coverage_and_what_lands() {
    DyeNeed need = DyeNeed.of(2.5e6, book(4, 10, 0.2, 0.5));
    assertThat(need.litres().orElseThrow()).isCloseTo(1.25, within(1e-12));
    assertThat(need.jars()).hasValue(3);
    assertThat(need.missing()).isEmpty();
  }

  @Test
  void a_jar_filled_to_the_brim_is_one_jar() {
    assertThat(DyeNeed.of(1e6, book(1, 2, 0, 0.5)).jars()).hasValue(1);
  }

  @Test
  void what_the_shop_book_lacks_is_named_and_never_guessed() {
    DyeNeed need = DyeNeed.of(2.5e6, EMPTY);
    assertThat(need.litres()).isEmpty();
    assertThat(need.missing())
        .extracting(Words.english()::say)
        .contains("dye coverage: not in the shop book", "spray loss: not in the shop book");
  }

  @Test
  void without_a_jar_size_the_litres_are_still_known() {
    DyeRates noJar =
        new DyeRates(
            OptionalInt.of(2), OptionalDouble.of(10), OptionalDouble.of(0), OptionalDouble.empty());
    DyeNeed need = DyeNeed.of(1e6, noJar);
    assertThat(need.litres()).hasValue(0.2);
    assertThat(need.jars()).isEmpty();
  }

  private static DyeRates book(int coats, double coverage, double loss, double jar) {
    return new DyeRates(
        OptionalInt.of(coats),
        OptionalDouble.of(coverage),
        OptionalDouble.of(loss),
        OptionalDouble.of(jar));
  }
}
