package slabwright.work.coat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import slabwright.units.QuantityFormat;
import slabwright.units.RateFormat;

/** Film thickness and coverage against printed figures. */
class FilmThicknessPublishedTest {
  private static final double MIL = RateFormat.MIL_MM;
  private static final double FT2_GAL = RateFormat.SQUARE_FOOT_PER_GALLON;

  /** R. Joseph, Paint Center, Oct 2003 and Dec 2009: 1604 ft². */
  @Test
  void a_gallon_covers_1604_square_feet_at_a_mil() {
    assertThat(FilmThickness.coverageAt(MIL, 1, 0) / FT2_GAL).isCloseTo(1604.1667, within(0.0001));
  }

  /** R. Joseph, Oct 2003: 52 % solids, 30 % transfer, 1.5 mil dry: 167 ft². */
  @Test
  void a_sprayed_gallon_covers_167_square_feet() {
    assertThat(FilmThickness.coverageAt(1.5 * MIL, 0.52, 0.7) / FT2_GAL)
        .isCloseTo(166.8, within(0.05));
  }

  /** Theoretical spreading rate: 65 % solids at 5.0 mil dry 208.52 ft²/gal, at 125 µm 5.2 m²/L. */
  @Test
  void printed_spreading_rates() {
    assertThat(FilmThickness.coverageAt(5 * MIL, 0.65, 0) / FT2_GAL)
        .isCloseTo(208.52, within(0.03));
    assertThat(FilmThickness.coverageAt(0.125, 0.65, 0)).isCloseTo(5.2, within(1e-9));
  }

  /** The same page: a litre at 100 % solids covers 1000 m² at 1 µm. */
  @Test
  void a_litre_covers_a_thousand_square_metres_at_a_micrometre() {
    assertThat(FilmThickness.coverageAt(0.001, 1, 0)).isCloseTo(1000, within(1e-9));
  }

  /** Computed: 250 ft²/gal lies 6.4167 mil wet and 1.925 mil dry at 30 %; 400 ft²/gal 4.01 mil. */
  @Test
  void coverage_gives_the_film() {
    FilmThickness film = FilmThickness.of(250 * FT2_GAL, 0.3);
    assertThat(film.wet() / MIL).isCloseTo(6.4167, within(0.0001));
    assertThat(film.dry() / MIL).isCloseTo(1.925, within(0.0001));
    assertThat(FilmThickness.of(400 * FT2_GAL, 1).wet() / MIL).isCloseTo(4.01, within(0.005));
  }

  /** Corrosionpedia: 100 ft²/gal with 30 % loss is 70 ft²/gal. */
  @Test
  void a_loss_of_30_percent_leaves_70_of_100() {
    double gallon = QuantityFormat.US_GALLON_MM3;
    assertThat(ProductAmount.covered(gallon, 100 * FT2_GAL, 0.3) / QuantityFormat.SQUARE_FOOT_MM2)
        .isCloseTo(70, within(1e-9));
    assertThat(
            ProductAmount.volume(70 * QuantityFormat.SQUARE_FOOT_MM2, 1, 100 * FT2_GAL, 0.3)
                / gallon)
        .isCloseTo(1, within(1e-9));
  }
}
