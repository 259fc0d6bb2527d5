package slabwright.work.air;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;
import slabwright.units.QuantityFormat;
import slabwright.work.Said;

class FireCodeCheckTest {
  private static final double FT2 = QuantityFormat.SQUARE_FOOT_MM2;
  private static final double GAL = QuantityFormat.US_GALLON_MM3;

  /** International Fire Code 2401.1: areas exceeding 350 ft², more than 1 gal. */
  @Test
  void the_thresholds_themselves_do_not_pass() {
    assertThat(FireCodeCheck.of(350 * FT2, GAL).applies()).isFalse();
    assertThat(FireCodeCheck.of(1351 * FT2, GAL).reasons())
        .extracting(Said::of)
        .containsExactly("Class I or II liquid on 1351 sq ft (125.5 m²), over 350 sq ft (32.5 m²)");
    assertThat(FireCodeCheck.of(351 * FT2, GAL).reasons()).hasSize(1);
    assertThat(FireCodeCheck.of(100 * FT2, 1.06 * GAL).reasons())
        .extracting(Said::of)
        .containsExactly("1.06 gal (4.01 L) of Class I or II liquid, over 1 gal (3.79 L)");
    assertThat(FireCodeCheck.of(100 * FT2, 1.01 * GAL).reasons()).hasSize(1);
    assertThat(FireCodeCheck.of(5000 * FT2, 0).applies()).isFalse();
  }

  @Test
  void acetone_is_class_one_and_a_water_borne_product_adds_nothing() {
    assertThat(Solvent.ACETONE.isClassOne()).isTrue();
    assertThat(FireCodeCheck.flammable(List.of(new SolventShare(Solvent.ACETONE, 0.5)), GAL))
        .isEqualTo(GAL);
    assertThat(FireCodeCheck.flammable(List.of(), GAL)).isZero();
  }

  /**
   * Flash points by NFPA 30: Class II from 100 to under 140 °F (37.8 to 60 °C), Class III above.
   */
  @Test
  void class_two_counts_as_class_one_does_and_class_three_does_not() {
    assertThat(FireCodeCheck.flammable(flashing(37.7), GAL)).isEqualTo(GAL);
    assertThat(FireCodeCheck.flammable(flashing(45), GAL)).isEqualTo(GAL);
    assertThat(FireCodeCheck.flammable(flashing(59.9), GAL)).isEqualTo(GAL);
    assertThat(FireCodeCheck.flammable(flashing(60), GAL)).isZero();
  }

  private static List<SolventShare> flashing(double celsius) {
    Solvent s = Solvent.fromDataSheet("s", 0.8, 90, 0.01, celsius, 50, Optional.empty());
    return List.of(new SolventShare(s, 1));
  }

  @Test
  void the_air_sweeps_between_the_openings_farthest_apart() {
    AirPath.Place door = new AirPath.Place("door", new Vec(0, 0));
    AirPath.Place side = new AirPath.Place("side", new Vec(3000, 0));
    AirPath.Place fan = new AirPath.Place("fan", new Vec(9000, 0));
    AirPath path = AirPath.of(List.of(door, side), List.of(fan)).orElseThrow();
    assertThat(path).isEqualTo(new AirPath(door, fan));
    assertThat(AirPath.of(List.of(door), List.of())).isEmpty();
  }
}
