package slabwright.desk.model;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slabwright.units.Length;
import slabwright.units.Parsed;

/**
 * One typed wall: a length, before it if wanted the turn: {@code r} right, {@code l} left, {@code
 * s} straight on, {@code r30} or {@code l45} an angle.
 */
public record TapeLine(OptionalDouble turn, Length length) {
  private static final Pattern TURN =
      Pattern.compile("^\\s*([rls])\\s*(\\d+(?:\\.\\d+)?(?=[°\\s]))?°?\\s+(.*)$");

  /** Reads a line; a length alone has no turn. */
  public static Parsed<TapeLine> read(String text) {
    Matcher m = TURN.matcher(text.toLowerCase(Locale.ROOT));
    if (!m.matches()) {
      return Length.parse(text).map(l -> new TapeLine(OptionalDouble.empty(), l));
    }
    double degrees = m.group(2) == null ? 90 : Double.parseDouble(m.group(2));
    double turn =
        switch (m.group(1)) {
          case "r" -> -degrees;
          case "l" -> degrees;
          default -> 0;
        };
    String rest = text.strip().substring(text.strip().length() - m.group(3).strip().length());
    return Length.parse(rest).map(l -> new TapeLine(OptionalDouble.of(turn), l));
  }
}
