package slabwright.work;

import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.words.Words;

/** Messages in English, for tests that read them. */
public final class Said {
  private Said() {}

  public static String of(Message message) {
    return Words.english().say(message);
  }

  /** The first reason of a refusal. */
  public static String why(Result<?> refused) {
    return of(((Result.Refused<?>) refused).message());
  }

  /** A text that is data, such as the name of a made-up step. */
  public static Message text(String text) {
    return Message.of("work.figure.shown", text);
  }
}
