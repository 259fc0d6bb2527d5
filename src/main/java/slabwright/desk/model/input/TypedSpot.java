package slabwright.desk.model.input;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slabwright.site.Spot;
import slabwright.units.Length;
import slabwright.units.Parsed;

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

  /** Reads a place, each of its lengths kept as typed. */
  public static Parsed<Spot> read(String line) {
    List<Spot> read = new ArrayList<>();
    String why = "Write a place as two lengths, right and up from 0: 12', 5' 6\".";
    Matcher m = BETWEEN.matcher(line);
    while (m.find()) {
      Parsed<Length> right = Length.parse(line.substring(0, m.start()));
      Parsed<Length> up = Length.parse(line.substring(m.end()));
      if (right instanceof Parsed.Ok<Length> r && up instanceof Parsed.Ok<Length> u) {
        read.add(new Spot(r.value(), u.value()));
      } else {
        why = right instanceof Parsed.Bad<Length> bad ? bad.why() : why;
        why = up instanceof Parsed.Bad<Length> bad ? bad.why() : why;
      }
    }
    return read.size() == 1 ? Parsed.ok(read.get(0)) : Parsed.bad(why);
  }
}
