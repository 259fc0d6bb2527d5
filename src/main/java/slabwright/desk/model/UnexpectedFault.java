package slabwright.desk.model;

import java.util.function.Consumer;
import java.util.function.Function;
import slabwright.units.Message;

/** Faults of the program itself, told to the person without hiding them. */
public final class UnexpectedFault {
  private UnexpectedFault() {}

  /** What stands in brackets in the sentence about it. */
  public static String text(RuntimeException e) {
    String kind = e.getClass().getSimpleName();
    return e.getMessage() == null ? kind : kind + ": " + e.getMessage();
  }

  /** Tells a fault at the desk, in a sentence made of what is known of it. */
  public static Consumer<RuntimeException> told(Desk desk, Function<String, Message> sentence) {
    return e -> desk.refuse(sentence.apply(text(e)));
  }
}
