package slabwright.work.air;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class EntryRuleTest {
  private static final Optional<BreathingProtection> NONE = Optional.empty();
  private static final Optional<BreathingProtection> HALF_MASK =
      BreathingProtection.named("half mask, organic vapour");
  private static final Optional<BreathingProtection> BEST =
      BreathingProtection.named("supplied air, APF 10000");

  @Test
  void nobody_enters_at_a_tenth_of_the_explosive_limit_however_protected() {
    AirLevel tenth = new AirLevel(0.1, 0.5, 0.5, 0);
    assertThat(EntryRule.limit(tenth, 0, NONE)).contains(EntryLimit.TENTH_OF_LEL);
    assertThat(EntryRule.limit(tenth, 0, BEST)).contains(EntryLimit.TENTH_OF_LEL);
    assertThat(EntryLimit.TENTH_OF_LEL.isForEveryone()).isTrue();
  }

  @Test
  void without_protection_500_ppm_of_acetone_are_too_much_and_499_are_not() {
    assertThat(EntryRule.limit(AirLevel.of(Solvent.ACETONE, 500e-6), 0, NONE))
        .contains(EntryLimit.FIFTEEN_MINUTES);
    assertThat(EntryRule.limit(AirLevel.of(Solvent.ACETONE, 499e-6), 0, NONE)).isEmpty();
  }

  @Test
  void a_solvent_without_a_15_minute_limit_goes_by_its_8_hour_one() {
    Solvent s = Solvent.fromDataSheet("s", 0.8, 90, 0.01, 20, 50, Optional.empty());
    assertThat(EntryRule.limit(AirLevel.of(s, 50e-6), 0, NONE))
        .contains(EntryLimit.FIFTEEN_MINUTES);
    assertThat(EntryRule.limit(AirLevel.of(s, 49e-6), 0, NONE)).isEmpty();
  }

  @Test
  void below_the_15_minute_limit_a_shift_over_the_8_hour_limit_is_too_much() {
    AirLevel low = AirLevel.of(Solvent.ACETONE, 300e-6);
    assertThat(EntryRule.limit(low, 1.0, NONE)).isEmpty();
    assertThat(EntryRule.limit(low, 1.01, NONE)).contains(EntryLimit.EIGHT_HOURS);
  }

  @Test
  void a_half_mask_is_good_for_ten_times_the_8_hour_limit_and_never_for_the_dangerous() {
    AirLevel below = AirLevel.of(Solvent.ACETONE, 2499e-6);
    assertThat(EntryRule.limit(below, 5, HALF_MASK)).isEmpty();
    Solvent strict = Solvent.fromDataSheet("s", 0.8, 90, 0.01, 20, 50, Optional.empty());
    assertThat(EntryRule.limit(AirLevel.of(strict, 501e-6), 0, HALF_MASK))
        .contains(EntryLimit.PROTECTION_FACTOR);
    AirLevel danger = new AirLevel(0.05, 5, 5, 1);
    assertThat(EntryRule.limit(danger, 0, BEST)).contains(EntryLimit.DANGER);
  }

  /** The maximum use concentration is factor times limit, 29 CFR 1910.134(d)(3)(i)(B). */
  @Test
  void exactly_ten_times_the_8_hour_limit_is_still_within_a_half_mask() {
    AirLevel ten = new AirLevel(0.05, 5, 10, 0.5);
    assertThat(EntryRule.limit(ten, 10, HALF_MASK)).isEmpty();
    assertThat(EntryRule.limit(ten, 10.1, HALF_MASK)).contains(EntryLimit.EIGHT_HOURS);
    assertThat(EntryRule.limit(new AirLevel(0.05, 5, 10.1, 0.5), 0, HALF_MASK))
        .contains(EntryLimit.PROTECTION_FACTOR);
  }

  @Test
  void a_dust_mask_is_no_protection_against_vapour() {
    assertThat(BreathingProtection.named("half mask, P100")).isEmpty();
    assertThat(BreathingProtection.named("")).isEmpty();
    assertThat(HALF_MASK.orElseThrow().factor()).isEqualTo(10);
    assertThat(BreathingProtection.named("Full face, organic vapor").orElseThrow().factor())
        .isEqualTo(50);
  }
}
