package slabwright.work.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.site.MoistureReading;
import slabwright.site.Setting;
import slabwright.site.Slab;
import slabwright.units.Length;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.work.Said;
import slabwright.work.book.BookSamples;
import slabwright.work.book.Product;
import slabwright.work.book.ProductKind;

class MoistureNotesTest {
  private static final Product TOPCOAT =
      BookSamples.book().first(ProductKind.TOPCOAT).orElseThrow();

  @Test
  void a_reading_over_the_data_sheets_limit_is_not_met() {
    assertThat(verdict(MoistureReading.Test.F2170, 81)).isEqualTo(RuleNote.Verdict.NOT_MET);
    assertThat(verdict(MoistureReading.Test.F2170, 78)).isEqualTo(RuleNote.Verdict.FINE);
    assertThat(verdict(MoistureReading.Test.F1869, 3.848)).isEqualTo(RuleNote.Verdict.NOT_MET);
  }

  @ParameterizedTest
  @CsvSource({"78, FINE", "78.1, LOOK", "80, LOOK", "80.01, NOT_MET"})
  void a_reading_that_the_probe_can_not_tell_from_the_limit_is_looked_at(
      double reading, RuleNote.Verdict verdict) {
    assertThat(verdict(MoistureReading.Test.F2170, reading)).isEqualTo(verdict);
  }

  @Test
  void a_reading_shows_one_decimal_more_where_the_verdict_hangs_on_it() {
    assertThat(finding(80.04)).startsWith("80.04 ");
    assertThat(finding(80)).startsWith("80.0 ");
    assertThat(finding(78.64)).startsWith("78.6 ");
  }

  @ParameterizedTest
  @CsvSource({"1000, 3", "1001, 4", "2500, 5"})
  void fewer_probes_than_the_standard_asks_for_are_counted(double squareFeet, int needed) {
    for (int taken = 1; taken <= needed; taken++) {
      List<RuleNote> notes = notes(Setting.INDOOR, taken, squareFeet);
      long few = notes.stream().filter(n -> Said.of(n.todo()).contains("more probe")).count();
      assertThat(few).as("%d of %d", taken, needed).isEqualTo(taken < needed ? 1 : 0);
    }
    RuleNote note = notes(Setting.INDOOR, 2, squareFeet).get(2);
    assertThat(Said.of(note.number())).startsWith(needed + " probes");
    assertThat(Said.of(note.finding())).isEqualTo("2 readings");
  }

  @Test
  void the_test_does_not_fit_an_outdoor_slab_read_or_not() {
    for (int taken : List.of(0, 3)) {
      List<RuleNote> notes = notes(Setting.OUTDOOR, taken, 400);
      assertThat(notes).hasSize(taken + 1);
      assertThat(Said.of(notes.get(taken).todo())).contains("does not fit an outdoor slab");
      assertThat(notes.get(taken).verdict()).isEqualTo(RuleNote.Verdict.LOOK);
    }
  }

  private static String finding(double reading) {
    return Said.of(notes(MoistureReading.Test.F2170, reading).get(0).finding());
  }

  private static List<RuleNote> notes(Setting setting, int taken, double squareFeet) {
    MoistureReading dry = new MoistureReading(MoistureReading.Test.F2170, 60, "");
    return MoistureNotes.of(
        slab(Collections.nCopies(taken, dry)),
        setting,
        squareFeet * QuantityFormat.SQUARE_FOOT_MM2,
        List.of(TOPCOAT),
        UnitSystem.METRIC);
  }

  @Test
  void a_dry_sheet_is_no_proof_of_a_dry_slab() {
    RuleNote note = notes(MoistureReading.Test.D4263, 0).get(0);
    assertThat(note.verdict()).isEqualTo(RuleNote.Verdict.LOOK);
    assertThat(Said.of(note.todo())).contains("does not prove");
  }

  @Test
  void without_a_probe_the_number_and_depth_of_probes_are_named() {
    List<RuleNote> notes =
        MoistureNotes.of(
            slab(List.of()),
            Setting.INDOOR,
            2500 * QuantityFormat.SQUARE_FOOT_MM2,
            List.of(TOPCOAT),
            UnitSystem.METRIC);
    assertThat(Said.of(notes.get(0).number())).isEqualTo("5 probes, 60 mm deep (40 % of the slab)");
    assertThat(notes.get(0).verdict()).isEqualTo(RuleNote.Verdict.UNKNOWN);
  }

  @Test
  void an_outdoor_coat_gets_a_note_about_the_sun() {
    assertThat(TemperatureRule.of(slab(List.of()), Setting.OUTDOOR, TOPCOAT, UnitSystem.METRIC))
        .hasSize(2);
    assertThat(
            TemperatureRule.of(slab(List.of()), Setting.INDOOR, TOPCOAT, UnitSystem.METRIC)
                .get(0)
                .verdict())
        .isEqualTo(RuleNote.Verdict.NOT_MET);
  }

  private static RuleNote.Verdict verdict(MoistureReading.Test test, double value) {
    return notes(test, value).get(0).verdict();
  }

  private static List<RuleNote> notes(MoistureReading.Test test, double value) {
    return MoistureNotes.of(
        slab(List.of(new MoistureReading(test, value, ""))),
        Setting.INDOOR,
        5e7,
        List.of(TOPCOAT),
        UnitSystem.METRIC);
  }

  /** 150 mm thick and 40 °C warm. */
  private static Slab slab(List<MoistureReading> readings) {
    return new Slab(
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.of(Length.mm(150)),
        readings,
        OptionalDouble.of(40),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.empty());
  }

  @Test
  void a_plastic_sheet_is_18_by_18_inches_of_4_mil_for_16_hours() {
    RuleNote note = notes(MoistureReading.Test.D4263, 0).get(0);
    assertThat(Said.of(note.rule())).isEqualTo("ASTM D4263");
    assertThat(Said.of(note.number())).matches("18 x 18 in .*, 4 mil .*, at least 16 h");
  }
}
