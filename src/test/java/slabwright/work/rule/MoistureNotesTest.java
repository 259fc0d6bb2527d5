package slabwright.work.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
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
    assertThat(verdict(MoistureReading.Test.F2170, 80)).isEqualTo(RuleNote.Verdict.FINE);
    assertThat(verdict(MoistureReading.Test.F1869, 3.848)).isEqualTo(RuleNote.Verdict.NOT_MET);
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
}
