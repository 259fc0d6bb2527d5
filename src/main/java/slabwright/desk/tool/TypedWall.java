package slabwright.desk.tool;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slabwright.desk.model.input.TypedLength;
import slabwright.units.Length;
import slabwright.units.Result;

/**
 * One typed wall: a length, before it if wanted the turn: {@code r} right, {@code l} left, {@code
 * s} straight on, {@code r30} or {@code l 45°} an angle. A number apart from the letter and without
 * a degree sign is the length.
 */
record TypedWall(OptionalDouble turn, Length length) {
  private static final Pattern TURN =
      Pattern.compile("^\\s*([rls])(?:(\\d+(?:\\.\\d+)?)°?|\\s+(\\d+(?:\\.\\d+)?)°)?\\s+(.*)$");

  /** What the length of a line would be taken as; empty while it can't be read. */
  public static Optional<String> meaning(String text, TypedLength lengths) {
    Matcher m = TURN.matcher(text.toLowerCase(Locale.ROOT));
    return lengths.meaning(m.matches() ? m.group(4) : text);
  }

  /** Reads a line; a length alone has no turn. */
  public static Result<TypedWall> read(String text, Function<String, Result<Length>> lengths) {
    Matcher m = TURN.matcher(text.toLowerCase(Locale.ROOT));
    if (!m.matches()) {
      return lengths.apply(text).map(l -> new TypedWall(OptionalDouble.empty(), l));
    }
    String angle = m.group(2) == null ? m.group(3) : m.group(2);
    double degrees = angle == null ? 90 : Double.parseDouble(angle);
    double turn =
        switch (m.group(1)) {
          case "r" -> -degrees;
          case "l" -> degrees;
          default -> 0;
        };
    String rest = text.strip().substring(text.strip().length() - m.group(4).strip().length());
    return lengths.apply(rest).map(l -> new TypedWall(OptionalDouble.of(turn), l));
  }
}
