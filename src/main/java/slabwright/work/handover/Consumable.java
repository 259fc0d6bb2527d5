package slabwright.work.handover;

import java.math.BigDecimal;
import slabwright.units.Message;
import slabwright.work.book.Figure;

/**
 * What the job uses up or has to take away, products apart. Each has a price in the shop book, or
 * says by name that it has none.
 *
 * @param what for people; no two of a plan are called the same
 * @param count how much of it
 * @param source the sheet and row that the count comes from
 * @param price of one
 */
record Consumable(
    Kind kind,
    Message what,
    Figure<CostLine.Count> count,
    Message source,
    Figure<BigDecimal> price) {
  /** What it is. */
  public enum Kind {
    DIAMONDS,
    CUP_WHEELS,
    SCREENS,
    VACUUM_BAGS,
    STENCIL_FILM,
    MASKING_PAPER,
    WALL_MASKING,
    ROLLER_SLEEVES,
    BRUSHES,
    PAILS,
    GRIT_ADDITIVE,
    PROTECTION,
    GAS_METER,
    DUST_DISPOSAL,
    SOLVENT_DISPOSAL;

    /** Whether it is bought for the job: not what is rented, worn off or taken away. */
    boolean isBought() {
      return isLoadedWithTheUsedUp() || this == STENCIL_FILM || this == PROTECTION;
    }

    /** Whether the load list names it as used up: not what has a list of its own, nor waste. */
    boolean isLoadedWithTheUsedUp() {
      return switch (this) {
        case SCREENS,
            VACUUM_BAGS,
            MASKING_PAPER,
            WALL_MASKING,
            ROLLER_SLEEVES,
            BRUSHES,
            PAILS,
            GRIT_ADDITIVE ->
            true;
        case DIAMONDS,
            CUP_WHEELS,
            STENCIL_FILM,
            PROTECTION,
            GAS_METER,
            DUST_DISPOSAL,
            SOLVENT_DISPOSAL ->
            false;
      };
    }
  }
}
