package slabwright.desk.tool.mark;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slabwright.units.Length;
import slabwright.units.Parsed;

/**
 * What is typed for a row along a wall: {@code 4' 5" x 3' 3" gap 10" off 8"}. Each of the three may
 * be left out and then stays as it was.
 *
 * @param size along the wall, and out from it
 * @param gap between two of them
 * @param off between the wall and them
 */
record TypedRow(Optional<SizePair> size, Optional<Length> gap, Optional<Length> off) {
  private static final Pattern PARTS =
      Pattern.compile("^(.*?)(?:gap(.*?))?(?:off(.*))?$", Pattern.CASE_INSENSITIVE);

  static Parsed<TypedRow> read(String line) {
    Matcher m = PARTS.matcher(line.strip().toLowerCase(Locale.ROOT));
    if (!m.matches() || line.isBlank()) {
      return Parsed.bad("Write the booth's size, such as 5' x 28\" gap 9\".");
    }
    Parsed<Optional<SizePair>> size =
        m.group(1).isBlank()
            ? Parsed.ok(Optional.empty())
            : SizePair.read(m.group(1)).map(Optional::of);
    Parsed<Optional<Length>> gap = length(m.group(2));
    Parsed<Optional<Length>> off = length(m.group(3));
    return size instanceof Parsed.Bad<Optional<SizePair>> bad
        ? Parsed.bad(bad.why())
        : gap instanceof Parsed.Bad<Optional<Length>> wrong
            ? Parsed.bad(wrong.why())
            : off.map(o -> new TypedRow(size.orThrow(), gap.orThrow(), o));
  }

  private static Parsed<Optional<Length>> length(String text) {
    return text == null ? Parsed.ok(Optional.empty()) : Length.parse(text).map(Optional::of);
  }
}
