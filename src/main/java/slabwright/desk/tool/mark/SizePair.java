package slabwright.desk.tool.mark;

import slabwright.units.Length;
import slabwright.units.Result;

/** Two lengths typed as one line, such as {@code 12' x 5' 6"}; one alone counts for both. */
record SizePair(Length first, Length second) {
  static Result<SizePair> read(String line) {
    String[] parts = line.split("[x×X*]", 2);
    Result<Length> a = Length.parse(parts[0]);
    Result<Length> b = parts.length == 2 ? Length.parse(parts[1]) : a;
    return a.flatMap(first -> b.map(second -> new SizePair(first, second)));
  }
}
