package slabwright.desk.model;

import slabwright.units.Message;
import slabwright.units.Parsed;
import slabwright.units.Result;

/** Sentences that rooms below still make themselves, as messages. */
public final class ReadySentence {
  private ReadySentence() {}

  public static Message message(String sentence) {
    return Message.of("desk.model.ready-sentence", sentence);
  }

  /** A value, or why there is none. */
  public static <T> Result<T> result(Parsed<T> read) {
    return read instanceof Parsed.Bad<T> bad
        ? Result.refused(message(bad.why()))
        : Result.ok(read.orThrow());
  }
}
