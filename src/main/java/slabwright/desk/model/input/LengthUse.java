package slabwright.desk.model.input;

import slabwright.site.MarkType;
import slabwright.units.BareUnit;
import slabwright.units.UnitSystem;

/** What a length that is typed is for: the unit it may leave out, and what it usually is. */
public enum LengthUse {
  /** A wall, a leg of a path, a diagonal. */
  WALL(true, 300, 30_000),
  /** A distance from the zero point or along a wall. */
  PLACE(true, 0, Double.POSITIVE_INFINITY),
  /** The size of a mark that stands or lies over feet of floor. */
  SPAN(true, 100, 10_000),
  /** The width of a graphic, or a ceiling's height. */
  LARGE_SIZE(true, 500, 6000),
  /** A doorway, a column, a trench's width, a booth. */
  OPENING(false, 75, 3000),
  /** A machine's body or head, the film's roll. */
  MACHINE(false, 75, 1500),
  /** Margins, depths, heights, clearances. */
  MARGIN(false, 1, 600);

  private final boolean large;
  private final double low;
  private final double high;

  LengthUse(boolean large, double low, double high) {
    this.large = large;
    this.low = low;
    this.high = high;
  }

  /** The sides of a mark: what lies over feet of floor, or a column and the like. */
  public static LengthUse ofSides(MarkType type) {
    return switch (type) {
      case PATCH, RESIDUE, ISLAND, TOP_OR_STEP -> SPAN;
      default -> OPENING;
    };
  }

  /** The unit of a number without one. */
  public BareUnit bare(UnitSystem system) {
    return switch (system) {
      case FEET_INCHES -> large ? BareUnit.FEET : BareUnit.INCHES;
      case METRIC -> large ? BareUnit.METRES : BareUnit.MILLIMETRES;
    };
  }

  /** Whether a length lies ten times outside what it usually is; nothing at all never does. */
  boolean isFarOff(double mm) {
    double size = Math.abs(mm);
    return size > 0 && (size > 10 * high || size < low / 10);
  }
}
