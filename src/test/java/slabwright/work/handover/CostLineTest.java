package slabwright.work.handover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.units.Message;
import slabwright.units.UnitSystem;
import slabwright.work.Said;
import slabwright.work.book.Figure;

/**
 * Counts and prices in the units of the job: 1 ft is 0.3048 m, 1 lb 0.45359237 kg, 1 gal 231 in³.
 */
class CostLineTest {
  private static CostLine.Count count(double n, CostLine.Unit unit) {
    return CostLine.Count.of(n, unit);
  }

  @ParameterizedTest
  @CsvSource({
    "METRES, 30.48, FEET, 100.00, 3.28, 0.9997",
    "SQUARE_METRES, 9.290304, SQUARE_FEET, 100.00, 10.00, 0.9290",
    "KILOGRAMS, 45.359237, POUNDS, 100.01, 2.00, 0.9072",
    "LITRES, 37.85411784, GALLONS, 10.00, 20.00, 75.7082"
  })
  void a_count_and_its_price_are_told_in_feet_inches_and_pounds(
      CostLine.Unit unit, double metric, CostLine.Unit told, String shown, String each, String as) {
    CostLine.Count own = count(metric, unit);
    CostLine.Count in = own.in(UnitSystem.FEET_INCHES);
    assertThat(in.unit()).isEqualTo(told);
    assertThat(in.number()).isCloseTo(new BigDecimal(shown), within(new BigDecimal("0.011")));
    assertThat(own.price(new BigDecimal(each), in)).isEqualByComparingTo(as);
    assertThat(own.in(UnitSystem.METRIC)).isSameAs(own);
    assertThat(own.price(new BigDecimal(each), own)).isEqualByComparingTo(each);
  }

  @Test
  void what_has_no_unit_of_length_or_weight_stays_as_it_is() {
    for (CostLine.Unit unit :
        new CostLine.Unit[] {
          CostLine.Unit.HOURS,
          CostLine.Unit.DAYS,
          CostLine.Unit.PERSON_DAYS,
          CostLine.Unit.PIECES,
          CostLine.Unit.SETS
        }) {
      CostLine.Count n = CostLine.Count.whole(3, unit);
      assertThat(n.in(UnitSystem.FEET_INCHES)).isSameAs(n);
    }
  }

  @Test
  void what_goes_on_the_van_is_never_less_than_is_needed() {
    assertThat(count(12.01, CostLine.Unit.METRES).loaded().number()).isEqualByComparingTo("13");
    assertThat(count(12.00, CostLine.Unit.FEET).loaded().number()).isEqualByComparingTo("12");
    assertThat(count(12.01, CostLine.Unit.LITRES).loaded().number()).isEqualByComparingTo("12.01");
  }

  @Test
  void halves_are_rounded_up_and_counts_of_a_kind_add_up() {
    assertThat(count(2.125, CostLine.Unit.HOURS).number()).isEqualByComparingTo("2.13");
    assertThat(count(2.25, CostLine.Unit.HOURS).plus(count(1.5, CostLine.Unit.HOURS)))
        .isEqualTo(count(3.75, CostLine.Unit.HOURS));
  }

  /** 12.50 m at 3.30: 41.25, whatever the feet are rounded to. */
  @Test
  void the_amount_is_of_the_count_and_price_as_the_book_has_them() {
    Message tape = Said.text("tape");
    CostLine line =
        CostLine.of(
            tape,
            Figure.known(count(12.5, CostLine.Unit.METRES)),
            Said.text("quantities"),
            Figure.known(new BigDecimal("3.30")),
            UnitSystem.FEET_INCHES);
    assertThat(line.amount().maybe().orElseThrow()).isEqualByComparingTo("41.25");
    assertThat(Said.of(line.quantity().maybe().orElseThrow())).contains("41.01");
    assertThat(line.unitPrice().maybe().orElseThrow()).isEqualByComparingTo("1.0058");
    Figure<BigDecimal> missing = Figure.missing(Said.text("price of tape"));
    CostLine open =
        CostLine.of(
            tape,
            Figure.known(count(12.5, CostLine.Unit.METRES)),
            tape,
            missing,
            UnitSystem.METRIC);
    assertThat(open.amount()).isInstanceOf(Figure.Missing.class);
    assertThat(open.unitPrice()).isInstanceOf(Figure.Missing.class);
    assertThat(open.quantity().isKnown()).isTrue();
  }

  @Test
  void a_count_that_is_not_known_leaves_the_price_as_the_book_has_it() {
    CostLine line =
        CostLine.of(
            Said.text("tape"),
            Figure.missing(Said.text("length")),
            Said.text("quantities"),
            Figure.known(new BigDecimal("3.30")),
            UnitSystem.FEET_INCHES);
    assertThat(line.unitPrice().maybe().orElseThrow()).isEqualByComparingTo("3.30");
    assertThat(line.amount()).isInstanceOf(Figure.Missing.class);
  }
}
