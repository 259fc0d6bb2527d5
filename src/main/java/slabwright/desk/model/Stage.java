package slabwright.desk.model;

import java.util.Arrays;
import java.util.Optional;
import slabwright.units.Message;

/** The stages of a job, in the order a crew meets them. */
public enum Stage {
  MEASURE("1"),
  MARK("2"),
  PREP("3"),
  INLAY("4"),
  FINISH("5"),
  SHEETS("6");

  /** How far a stage has come. */
  public enum State {
    NOT_STARTED,
    NEEDS_A_LOOK,
    DONE
  }

  private final String key;

  Stage(String key) {
    this.key = key;
  }

  public Message word() {
    return switch (this) {
      case MEASURE -> Message.of("desk.model.stage.measure");
      case MARK -> Message.of("desk.model.stage.mark");
      case PREP -> Message.of("desk.model.stage.prep");
      case INLAY -> Message.of("desk.model.stage.inlay");
      case FINISH -> Message.of("desk.model.stage.finish");
      case SHEETS -> Message.of("desk.model.stage.sheets");
    };
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
