package slabwright.desk.model;

import java.util.Arrays;
import java.util.Optional;

/** The stages of a job, in the order a crew meets them. */
public enum Stage {
  MEASURE("Measure", "1"),
  MARK("Mark", "2"),
  PREP("Prep", "3"),
  INLAY("Inlay", "4"),
  FINISH("Finish", "5"),
  SHEETS("Sheets", "6");

  /** How far a stage has come. */
  public enum State {
    NOT_STARTED,
    NEEDS_A_LOOK,
    DONE
  }

  private final String word;
  private final String key;

  Stage(String word, String key) {
    this.word = word;
    this.key = key;
  }

  public String word() {
    return word;
  }

  /** The key that goes there, a digit. */
  public String key() {
    return key;
  }

  /** The stage that a key goes to; {@code name} ends with the digit. */
  public static Optional<Stage> byKey(String name) {
    return Arrays.stream(values()).filter(s -> name.endsWith(s.key)).findFirst();
  }
}
