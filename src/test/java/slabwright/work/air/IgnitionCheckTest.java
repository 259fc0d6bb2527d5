package slabwright.work.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slabwright.work.Said;

/** What has to be seen to around solvent, each line only where the plan makes it true. */
class IgnitionCheckTest {
  private static final List<Solvent> ACETONE = List.of(Solvent.ACETONE);

  private static IgnitionParameters indoors() {
    return new IgnitionParameters(
        List.of("gas fire, north wall"),
        4,
        true,
        true,
        true,
        true,
        ACETONE,
        "A. (invented)",
        false);
  }

  private static IgnitionParameters outdoors() {
    return new IgnitionParameters(List.of(), 0, false, false, false, false, ACETONE, "", false);
  }

  private static String all(IgnitionParameters p) {
    IgnitionCheck c = IgnitionCheck.of(p);
    return Stream.of(c.before(), c.during(), c.after())
        .flatMap(List::stream)
        .map(Said::of)
        .reduce("", (a, b) -> a + "\n" + b);
  }

  @Test
  void without_solvent_there_is_nothing_to_tick() {
    IgnitionCheck none =
        IgnitionCheck.of(
            new IgnitionParameters(
                List.of("boiler"), 4, true, true, true, true, List.of(), "", false));
    assertThat(none.before()).isEmpty();
    assertThat(none.during()).isEmpty();
    assertThat(none.after()).isEmpty();
  }

  @Test
  void what_is_drawn_on_the_plan_stands_first_on_the_ignition_list() {
    IgnitionCheck check = IgnitionCheck.of(indoors());
    assertThat(Said.of(check.before().get(0))).contains("gas fire, north wall");
    assertThat(check.before())
        .anyMatch(s -> Said.of(s).startsWith("Smoke detectors and sprinkler heads, 4 on the plan"));
    assertThat(check.after()).anyMatch(s -> Said.of(s).contains("restored"));
  }

  /** A head that is shut off while solvent is about leaves a building without water. */
  @Test
  void sprinklers_stay_in_service_whether_any_is_on_the_plan_or_not() {
    for (int onPlan : new int[] {0, 4}) {
      IgnitionParameters p =
          new IgnitionParameters(List.of(), onPlan, true, false, false, false, ACETONE, "", false);
      assertThat(IgnitionCheck.of(p).before())
          .anyMatch(s -> Said.of(s).contains("Sprinklers always stay in service"))
          .anyMatch(s -> Said.of(s).contains("with a fire watch"))
          .noneMatch(s -> Said.of(s).contains("isolated"));
    }
  }

  /** International Fire Code 105 and 2410, from memory. */
  @Test
  void indoors_power_and_ventilation_are_off_the_public_out_and_air_goes_outdoors() {
    assertThat(all(indoors()))
        .contains("Operational permit of the fire authority")
        .contains("Public and other trades out")
        .contains("off at the board before the first can")
        .contains("off while solvent is laid and for 4 hours after")
        .contains("not before 4 hours after the last coat")
        .contains("Air drawn out to the outdoors and nowhere else")
        .contains("Fan, compressor and cords rated for flammable vapor")
        .contains("Fire extinguisher");
  }

  @Test
  void spraying_a_permit_and_film_have_lines_of_their_own_and_only_where_they_are() {
    assertThat(all(indoors()))
        .contains("A flammable liquid is sprayed")
        .contains("Film that is peeled over wet solvent makes static");
    assertThat(all(outdoors()))
        .doesNotContain("sprayed")
        .doesNotContain("Film")
        .doesNotContain("permit")
        .doesNotContain("ventilation")
        .doesNotContain("Smoke detectors");
  }

  /** 500 ppm of 2.5 % is 2 % of LEL; a tenth of it is 2500 ppm. */
  @Test
  void acetones_meter_stops_at_500_ppm_which_is_2_percent_of_lel() {
    GasMeter meter = GasMeter.of(ACETONE).orElseThrow();
    assertThat(meter.entryPpm()).isCloseTo(500, within(1e-9));
    assertThat(meter.entryOfLel()).isCloseTo(0.02, within(1e-12));
    assertThat(meter.outPpm()).isCloseTo(2500, within(1e-9));
    assertThat(all(indoors()))
        .contains("Stop at 500 ppm of acetone")
        .contains("2 % of LEL")
        .contains("At 2,500 ppm everybody is out")
        .contains("A. (invented) reads a gas meter in ppm, from outside and at the floor")
        .contains("every 15 minutes")
        .contains("corrected for acetone");
    assertThat(all(outdoors())).contains("The lead reads a gas meter");
  }

  @Test
  void of_two_solvents_the_stricter_sets_the_meter() {
    Solvent strict = Solvent.fromDataSheet("other", 0.87, 92.14, 0.011, 4, 20, Optional.of(150.0));
    GasMeter meter = GasMeter.of(List.of(Solvent.ACETONE, strict)).orElseThrow();
    assertThat(meter.strictest()).isEqualTo(strict);
    assertThat(meter.entryPpm()).isCloseTo(150, within(1e-9));
    assertThat(meter.outPpm()).isCloseTo(1100, within(1e-9));
  }
}
