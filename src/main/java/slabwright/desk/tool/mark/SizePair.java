package slabwright.desk.tool.mark;

import java.util.Optional;
import java.util.function.Function;
import slabwright.desk.model.input.TypedLength;
import slabwright.units.Length;
import slabwright.units.Result;

/** Two lengths typed as one line, such as {@code 12' x 5' 6"}; one alone counts for both. */
record SizePair(Length first, Length second) {
  /** What a line would be taken as; empty while it can't be read. */
  static Optional<String> meaning(String line, TypedLength lengths) {
    return read(line, lengths::plain) instanceof Result.Ok<SizePair> ok
        ? Optional.of(
            lengths.shown(ok.value().first()) + " × " + lengths.shown(ok.value().second()))
        : Optional.empty();
  }

  static Result<SizePair> read(String line, Function<String, Result<Length>> lengths) {
    String[] parts = line.split("[x×X*]", 2);
    Result<Length> a = lengths.apply(parts[0]);
    Result<Length> b = parts.length == 2 ? lengths.apply(parts[1]) : a;
    return a.flatMap(first -> b.map(second -> new SizePair(first, second)));
  }
}
