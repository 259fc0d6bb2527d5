package slabwright.units;

import java.util.Optional;

/**
 * A length in millimetres together with what the person typed, kept to the letter ({@code ""} where
 * nobody typed it, for example after a drag).
 */
public record Length(double mm, String typed) implements Comparable<Length> {
  public static final Length ZERO = new Length(0, "");

  public static Length mm(double mm) {
    return new Length(mm, "");
  }

  public static Length inches(double inches) {
    return new Length(inches * 25.4, "");
  }

  public static Length feet(double feet) {
    return new Length(feet * 304.8, "");
  }

  /** Reads what people write; see {@link LengthReader}. A number without a unit is refused. */
  public static Result<Length> parse(String text) {
    return LengthReader.read(text);
  }

  /** Reads what is typed into a field that states a unit: a bare number has that one. */
  public static Result<Length> parse(String text, BareUnit bare) {
    return LengthReader.read(text, bare);
  }

  public boolean wasTyped() {
    return !typed.isEmpty();
  }

  /** The system it was typed in, by the first unit in it; none where nobody typed a unit. */
  public Optional<UnitSystem> typedIn() {
    return LengthReader.firstUnit(typed)
        .map(u -> u.isMetric() ? UnitSystem.METRIC : UnitSystem.FEET_INCHES);
  }

  @Override
  public int compareTo(Length o) {
    return Double.compare(mm, o.mm);
  }

  /** The text typed, or the millimetres; for messages, not for sheets. */
  @Override
  public String toString() {
    return wasTyped() ? typed : LengthFormat.plain(mm) + " mm";
  }
}
