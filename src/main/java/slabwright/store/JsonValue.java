package slabwright.store;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import slabwright.units.Message;

/** A JSON value that knows where it stands in its file. */
sealed interface JsonValue {
  Place place();

  /** What to call it in a sentence. */
  Message word();

  /** A path such as {@code areas[0].name} and the line and column, counted from 1. */
  record Place(String path, int line, int column) {
    /** The path and the line, for a sentence. */
    Message said() {
      return path.isEmpty()
          ? Message.of("store.json-value.the-plan", line)
          : Message.of("store.json-value.line", path, line);
    }
  }

  /** Fields by name, in file order. */
  record Obj(Map<String, JsonValue> fields, Place place) implements JsonValue {
    @Override
    public Message word() {
      return Message.of("store.json-value.an-object");
    }
  }

  /** Items in order. */
  record Arr(List<JsonValue> items, Place place) implements JsonValue {
    @Override
    public Message word() {
      return Message.of("store.json-value.a-list");
    }
  }

  /** A string. */
  record Text(String value, Place place) implements JsonValue {
    @Override
    public Message word() {
      return Message.of("store.json-value.a-text");
    }
  }

  /** A number, exactly as written. */
  record Num(BigDecimal value, Place place) implements JsonValue {
    @Override
    public Message word() {
      return Message.of("store.json-value.a-number");
    }
  }

  /** True or false. */
  record Flag(boolean value, Place place) implements JsonValue {
    @Override
    public Message word() {
      return Message.of("store.json-value.true-or-false");
    }
  }

  /** JSON null. */
  record Nothing(Place place) implements JsonValue {
    @Override
    public Message word() {
      return Message.of("store.json-value.nothing");
    }
  }
}
