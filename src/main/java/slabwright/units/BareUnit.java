package slabwright.units;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a length field means by a number without a unit. Where people think in feet {@code 16 6} is
 * 16 feet 6 inches, and {@code 16 6 1/2} too; {@code 5 1/2} in a field of feet may be feet or
 * inches, so it is asked about.
 */
public enum BareUnit {
  FEET("'"),
  INCHES("\""),
  METRES(" m"),
  MILLIMETRES(" mm");

  private static final String NUMBER = "\\d+(?:[.,]\\d+)?|[.,]\\d+";
  private static final Pattern PLAIN = Pattern.compile(NUMBER);
  private static final Pattern FRACTION = Pattern.compile("(?:\\d+\\s+)?\\d+/\\d+");
  private static final Pattern FEET_THEN_INCHES =
      Pattern.compile("(\\d+)\\s+((\\d+)(?:\\.\\d+)?(?:\\s+\\d+/\\d+)?)");

  private final String sign;

  BareUnit(String sign) {
    this.sign = sign;
  }

  /** The unit as it is stated beside a field. */
  public Message word() {
    return switch (this) {
      case FEET -> Message.of("units.bare-unit.feet");
      case INCHES -> Message.of("units.bare-unit.inches");
      case METRES -> Message.of("units.bare-unit.metres");
      case MILLIMETRES -> Message.of("units.bare-unit.millimetres");
    };
  }

  /** A term with the unit that it leaves out; refused when it could mean two lengths. */
  Result<String> completed(String term) {
    String plain = term.strip();
    if (PLAIN.matcher(plain).matches()) {
      return Result.ok(plain + sign);
    }
    boolean feet = this == FEET || this == INCHES;
    if (feet && FRACTION.matcher(plain).matches()) {
      return this == INCHES
          ? Result.ok(plain + sign)
          : Result.refused(Message.of("units.bare-unit.feet-or-inches", plain));
    }
    Matcher both = FEET_THEN_INCHES.matcher(plain);
    if (feet && both.matches()) {
      return inches(both).filter(n -> n >= 12).isPresent()
          ? Result.refused(Message.of("units.bare-unit.twelve-inches", plain))
          : Result.ok(both.group(1) + "' " + both.group(2) + "\"");
    }
    return Result.ok(term);
  }

  private static Optional<Integer> inches(Matcher both) {
    String digits = both.group(3);
    return Optional.of(digits.length() > 3 ? 12 : Integer.parseInt(digits));
  }
}
