package slabwright.desk.cards.measure;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slabwright.units.Message;
import slabwright.units.Result;

/** A turn as it is typed: {@code l} or {@code left}, {@code r 45}, {@code 30° right}, {@code s}. */
final class TypedTurn {
  private static final Pattern LETTER_FIRST =
      Pattern.compile("([lrs])[a-z]*\\s*(\\d+(?:\\.\\d+)?)?\\s*°?");

  private static final Pattern NUMBER_FIRST =
      Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*°?\\s*([lr])[a-z]*");

  private static final double SHARPEST = 179;

  private TypedTurn() {}

  /** Reads a turn in degrees, positive to the left; a letter alone is a right angle. */
  public static Result<Double> read(String text) {
    String plain = text.strip().toLowerCase(Locale.ROOT);
    Matcher letter = LETTER_FIRST.matcher(plain);
    Matcher number = NUMBER_FIRST.matcher(plain);
    if (letter.matches()) {
      double degrees = letter.group(2) == null ? 90 : Double.parseDouble(letter.group(2));
      return signed(letter.group(1), degrees);
    }
    return number.matches()
        ? signed(number.group(2), Double.parseDouble(number.group(1)))
        : refused();
  }

  private static Result<Double> signed(String side, double degrees) {
    if (degrees > SHARPEST) {
      return refused();
    }
    return Result.ok(
        switch (side) {
          case "l" -> degrees;
          case "r" -> -degrees;
          default -> 0.0;
        });
  }

  private static Result<Double> refused() {
    return Result.refused(Message.of("desk.model.typed-turn.write-l-or-r"));
  }
}
