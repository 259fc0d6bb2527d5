package slabwright.work.prep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.site.Exposure;
import slabwright.site.MarkType;
import slabwright.units.QuantityFormat;
import slabwright.work.Said;
import slabwright.work.book.BookSamples;
import slabwright.work.book.Figure;
import slabwright.work.book.ShopBook;
import slabwright.work.step.StepPlace;

class PrepPlanTest {
  private static final double FT2 = QuantityFormat.SQUARE_FOOT_MM2;
  private static final ShopBook BOOK = BookSamples.book();

  /** A tool maker's guide: 2–3 extra hard, 4–5 hard, 6–7 soft, 8–9 extra soft bond. */
  @ParameterizedTest
  @CsvSource({
    "2, EXTRA_HARD",
    "3, EXTRA_HARD",
    "4, HARD",
    "4.5, HARD",
    "5, HARD",
    "6, SOFT",
    "7, SOFT",
    "8, EXTRA_SOFT",
    "9, EXTRA_SOFT",
    "1, EXTRA_HARD",
    "10, EXTRA_SOFT"
  })
  void hard_concrete_takes_a_soft_bond(double mohs, Bond bond) {
    assertThat(Bond.of(mohs)).containsExactly(bond);
  }

  @Test
  void between_two_bands_both_bonds_are_tried() {
    assertThat(Bond.of(5.5)).containsExactly(Bond.HARD, Bond.SOFT);
    assertThat(Bond.of(3.5)).containsExactly(Bond.EXTRA_HARD, Bond.HARD);
    assertThat(Said.of(BondAdvice.of(OptionalDouble.of(5.5)).sentence())).contains("side by side");
  }

  @Test
  void trenches_come_first_then_residue_metal_filler_and_fine_passes() {
    assertThat(plan(BOOK).steps())
        .extracting(PrepStep::kind)
        .containsExactly(
            PrepStep.Kind.LEVEL,
            PrepStep.Kind.RESIDUE,
            PrepStep.Kind.METAL_PASS,
            PrepStep.Kind.METAL_PASS,
            PrepStep.Kind.FILL,
            PrepStep.Kind.FINE_PASS,
            PrepStep.Kind.CLEAN);
  }

  /** 60 ft² of trench at 30 ft²/h; 1000 + 80 ft² at 260 ft²/h by machine, 90 + 20 at 20 by hand. */
  @Test
  void hours_are_areas_over_the_books_rates() {
    PrepPlan plan = plan(BOOK);
    assertThat(plan.steps().get(0).handTime()).isEqualTo(Figure.known(Duration.ofHours(2)));
    PrepStep metal60 = plan.steps().get(2);
    assertThat(hours(metal60.machineTime())).isCloseTo(1080 / 260.0, within(0.001));
    assertThat(hours(metal60.handTime())).isCloseTo(110 / 20.0, within(0.001));
  }

  @Test
  void dust_fills_bags_rounded_up() {
    PrepPlan plan = plan(BOOK);
    double bag = PrepPlan.largestBag(BOOK).maybe().orElseThrow();
    double dust = plan.dust().maybe().orElseThrow();
    assertThat(PrepPlan.bags(plan.dust(), BOOK))
        .isEqualTo(Figure.known((int) Math.ceil(dust / bag)));
    double grits = (350 + 180 + 60) / 1000.0 * 1190 * FT2 / 1e6;
    double others = (900 * 60 + 700 * 100) / 1000.0 * FT2 / 1e6;
    assertThat(dust).isCloseTo(grits + others, within(1e-6));
  }

  @Test
  void without_a_wanted_exposure_there_are_no_passes_to_plan() {
    PrepParameters floor = floor(Optional.empty());
    assertThat(PrepPlan.of(floor, BOOK).steps())
        .noneMatch(s -> s.kind() == PrepStep.Kind.METAL_PASS);
  }

  @Test
  void a_coarser_wish_takes_more_passes() {
    int before = 0;
    for (Exposure e : Exposure.values()) {
      int steps = PrepPlan.of(floor(Optional.of(e)), BOOK).steps().size();
      assertThat(steps).isGreaterThanOrEqualTo(before);
      before = steps;
    }
  }

  @Test
  void the_exposure_changes_at_trench_and_residue_and_says_what_dye_does_there() {
    assertThat(plan(BOOK).changes())
        .extracting(c -> Said.of(c.zone()))
        .containsExactly("trench", "glue");
    assertThat(plan(BOOK).changes()).allMatch(c -> !Said.of(c.dye()).isBlank());
  }

  /** Both published charts are kept: four classes before 2017, three since. */
  @Test
  void salt_and_pepper_is_class_b_in_both_charts() {
    assertThat(Said.of(ExposureChart.of(Exposure.FINE).before2017()))
        .startsWith("B, salt and pepper");
    assertThat(Said.of(ExposureChart.of(Exposure.FINE).since2017()))
        .startsWith("B, fine aggregate");
  }

  @Test
  void a_joint_takes_length_times_width_times_depth() {
    FillerGap joint = FillerGap.of("day joint", MarkType.JOINT, 10_000, 10, 25);
    assertThat(joint.mm3()).isEqualTo(2.5e6);
    FillerPlan filler = FillerPlan.of(List.of(joint), BOOK, Figure.known(20.0));
    double kit = 22 * QuantityFormat.US_GALLON_MM3 / 128;
    assertThat(filler.kits().maybe().orElseThrow().count())
        .isEqualTo((int) Math.ceil(2.5e6 / 0.9 / kit));
  }

  @Test
  void the_hours_of_all_zones_are_the_hours_of_all_passes() {
    PrepPlan plan = plan(BOOK);
    double zones = plan.byZone().stream().mapToDouble(z -> hours(z.machine())).sum();
    double passes =
        plan.steps().stream()
            .filter(s -> s.id().startsWith("grit"))
            .mapToDouble(s -> hours(s.machineTime()))
            .sum();
    assertThat(zones).isCloseTo(passes, within(0.01));
  }

  private static double hours(Figure<Duration> time) {
    return time.maybe().orElseThrow().toSeconds() / 3600.0;
  }

  private static PrepPlan plan(ShopBook book) {
    return PrepPlan.of(floor(Optional.of(Exposure.FINE)), book);
  }

  private static PrepParameters floor(Optional<Exposure> wanted) {
    return new PrepParameters(
        List.of(
            new PrepZone(
                StepPlace.WHOLE_FLOOR,
                Said.text("old slab"),
                PrepZone.Kind.OLD_CONCRETE,
                1000 * FT2,
                0),
            new PrepZone(
                new StepPlace.Zone("t"),
                Said.text("trench"),
                PrepZone.Kind.TRENCH_PROUD,
                0,
                90 * FT2),
            new PrepZone(
                new StepPlace.Zone("t"),
                Said.text("glue"),
                PrepZone.Kind.RESIDUE,
                80 * FT2,
                20 * FT2)),
        List.of(
            new PrepParameters.ToLevel(
                new StepPlace.Zone("t"),
                Said.text("trench"),
                PrepZone.Kind.TRENCH_PROUD,
                60 * FT2,
                OptionalDouble.empty())),
        wanted,
        OptionalDouble.of(5),
        List.of(FillerGap.of("joint", MarkType.JOINT, 6000, 9, 25)),
        Figure.known(20.0));
  }
}
