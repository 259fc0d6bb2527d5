package slabwright.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** Lengths for people: feet, inches and sixteenths, or metres and millimetres. */
public final class LengthFormat {
  private static final double SIXTEENTH_MM = 25.4 / 16;

  private LengthFormat() {}

  /**
   * To the nearest 1/16 in (24′ 6 1/2″) or the nearest 1 mm (7.470 m; below one metre 470 mm).
   * After feet the inches are always written, 35′ 0 7/16″, so that no one takes the one for the
   * other.
   */
  public static String show(double mm, UnitSystem system) {
    return switch (system) {
      case FEET_INCHES -> feetInches(mm);
      case METRIC -> metric(mm);
    };
  }

  public static String show(Length length, UnitSystem system) {
    return show(length.mm(), system);
  }

  /**
   * A small width to 0.1 mm; inches come first where people think in them, to 1/16 in, and under 3
   * mm to 1/64 in: 1 mm is 3/64″ and no 1/16″.
   */
  public static String fine(double mm, UnitSystem system) {
    return system == UnitSystem.METRIC ? tenths(mm) : small(mm, system) + " (" + tenths(mm) + ")";
  }

  /** A small length in one system: to 0.1 mm, or to 1/16 in and under 3 mm to 1/64 in. */
  public static String small(double mm, UnitSystem system) {
    return switch (system) {
      case METRIC -> tenths(mm);
      case FEET_INCHES -> Math.abs(mm) < 3 ? sixtyFourths(mm) : show(mm, system);
    };
  }

  private static String tenths(double mm) {
    return plain(Math.rint(mm * 10) / 10) + " mm";
  }

  private static String sixtyFourths(double mm) {
    long parts = Math.round(Math.abs(mm) * 64 / 25.4);
    if (parts == 0) {
      return "0″";
    }
    long shift = Math.min(6, Long.numberOfTrailingZeros(parts));
    return (mm < 0 ? "-" : "") + (parts >> shift) + "/" + (64 >> shift) + "″";
  }

  /** A number of millimetres without exponent or needless zeros, to 0.001 mm. */
  public static String plain(double mm) {
    BigDecimal d = BigDecimal.valueOf(mm).setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
    return d.signum() == 0 ? "0" : d.toPlainString();
  }

  private static String metric(double mm) {
    long whole = Math.round(mm);
    return Math.abs(whole) < 1000
        ? whole + " mm"
        : String.format(
            Locale.ROOT,
            "%s%d.%03d m",
            whole < 0 ? "-" : "",
            Math.abs(whole) / 1000,
            Math.abs(whole) % 1000);
  }

  private static String feetInches(double mm) {
    long sixteenths = Math.round(Math.abs(mm) / SIXTEENTH_MM);
    long feet = sixteenths / 192;
    long inches = sixteenths % 192 / 16;
    String fraction = fraction(sixteenths % 16);
    StringBuilder out = new StringBuilder(mm < 0 && sixteenths > 0 ? "-" : "");
    if (feet > 0) {
      out.append(feet).append("′ ");
    }
    if (inches > 0 || feet > 0 || fraction.isEmpty()) {
      out.append(inches).append(fraction.isEmpty() ? "" : " ");
    }
    return out.append(fraction).append('″').toString();
  }

  private static String fraction(long sixteenths) {
    if (sixteenths == 0) {
      return "";
    }
    long shift = Long.numberOfTrailingZeros(sixteenths);
    return (sixteenths >> shift) + "/" + (16 >> shift);
  }
}
