package slabwright.desk.tool.mark;

import slabwright.units.Length;
import slabwright.units.Parsed;

/** Two lengths typed as one line, such as {@code 12' x 5' 6"}; one alone counts for both. */
record SizePair(Length first, Length second) {
  static Parsed<SizePair> read(String line) {
    String[] parts = line.split("[x×X*]", 2);
    Parsed<Length> a = Length.parse(parts[0]);
    Parsed<Length> b = parts.length == 2 ? Length.parse(parts[1]) : a;
    if (a instanceof Parsed.Bad<Length> bad) {
      return Parsed.bad(bad.why());
    }
    if (b instanceof Parsed.Bad<Length> bad) {
      return Parsed.bad(bad.why());
    }
    return Parsed.ok(new SizePair(a.orThrow(), b.orThrow()));
  }
}
