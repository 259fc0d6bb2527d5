package slabwright.work.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/** What of the job's small things is bought for it and what the load list names as used up. */
class ConsumableKindTest {
  private static List<String> where(Predicate<Consumable.Kind> test) {
    return Arrays.stream(Consumable.Kind.values()).filter(test).map(Enum::name).toList();
  }

  @Test
  void what_is_used_up_and_in_no_list_of_its_own_is_on_the_van() {
    assertThat(where(Consumable.Kind::isLoadedWithTheUsedUp))
        .containsExactlyInAnyOrder(
            "SCREENS",
            "VACUUM_BAGS",
            "MASKING_PAPER",
            "WALL_MASKING",
            "ROLLER_SLEEVES",
            "BRUSHES",
            "PAILS",
            "GRIT_ADDITIVE");
  }

  /** Film and floor protection beside it; diamonds wear, a meter is rented, waste is taken away. */
  @Test
  void that_and_film_and_protection_are_bought() {
    List<String> bought = where(Consumable.Kind::isBought);
    assertThat(bought)
        .containsAll(where(Consumable.Kind::isLoadedWithTheUsedUp))
        .contains("STENCIL_FILM", "PROTECTION")
        .doesNotContain("DIAMONDS", "CUP_WHEELS", "GAS_METER", "DUST_DISPOSAL", "SOLVENT_DISPOSAL");
  }
}
