package slabwright.desk.model.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slabwright.site.Spot;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * A place typed as two lengths, right and up from the site's zero point: {@code 19' 6", 35' 7"}. A
 * comma between them is followed by a space, or a semicolon is written, because {@code 7,47 m} is
 * one length.
 */
public final class TypedSpot {
  private static final Pattern BETWEEN = Pattern.compile("\\s*(?:;\\s*|,\\s+)");

  private TypedSpot() {}

  /** Whether a line is meant as a place rather than a length. */
  public static boolean isOne(String line) {
    return BETWEEN.matcher(line).find();
  }

  /** What a line would be taken as, right and up; empty while it can't be read. */
  public static Optional<String> meaning(String line, TypedLength lengths) {
    return read(line, lengths::plain) instanceof Result.Ok<Spot> ok
        ? Optional.of(lengths.shown(ok.value().x()) + ", " + lengths.shown(ok.value().y()))
        : Optional.empty();
  }

  /** Reads a place, each of its lengths kept as typed. */
  public static Result<Spot> read(String line, Function<String, Result<Length>> lengths) {
    List<Spot> read = new ArrayList<>();
    Message why = Message.of("desk.model.typed-spot.two-lengths");
    Matcher m = BETWEEN.matcher(line);
    while (m.find()) {
      Result<Length> right = lengths.apply(line.substring(0, m.start()));
      Result<Length> up = lengths.apply(line.substring(m.end()));
      if (right instanceof Result.Ok<Length> r && up instanceof Result.Ok<Length> u) {
        read.add(new Spot(r.value(), u.value()));
      } else {
        why = right instanceof Result.Refused<Length> bad ? bad.message() : why;
        why = up instanceof Result.Refused<Length> bad ? bad.message() : why;
      }
    }
    return read.size() == 1 ? Result.ok(read.get(0)) : Result.refused(why);
  }
}
