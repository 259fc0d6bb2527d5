package slabwright.desk.tool.mark;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Result;

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

  static Result<TypedRow> read(String line, Function<String, Result<Length>> lengths) {
    Matcher m = PARTS.matcher(line.strip().toLowerCase(Locale.ROOT));
    if (!m.matches() || line.isBlank()) {
      return Result.refused(Message.of("desk.tool.mark.booth-size"));
    }
    Result<Optional<SizePair>> size =
        m.group(1).isBlank()
            ? Result.ok(Optional.empty())
            : SizePair.read(m.group(1), lengths).map(Optional::of);
    Result<Optional<Length>> gap = length(m.group(2), lengths);
    Result<Optional<Length>> off = length(m.group(3), lengths);
    return size.flatMap(s -> gap.flatMap(g -> off.map(o -> new TypedRow(s, g, o))));
  }

  private static Result<Optional<Length>> length(
      String text, Function<String, Result<Length>> lengths) {
    return text == null ? Result.ok(Optional.empty()) : lengths.apply(text).map(Optional::of);
  }
}
