package slabwright.store;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/** A JSON value that knows where it stands in its file. */
sealed interface JsonValue {
  Place place();

  /** What to call it in a sentence. */
  String word();

  /** A path such as {@code areas[0].name} and the line and column, counted from 1. */
  record Place(String path, int line, int column) {
    @Override
    public String toString() {
      return (path.isEmpty() ? "the plan" : path) + " (line " + line + ")";
    }
  }

  /** Fields by name, in file order. */
  record Obj(Map<String, JsonValue> fields, Place place) implements JsonValue {
    @Override
    public String word() {
      return "an object";
    }
  }

  /** Items in order. */
  record Arr(List<JsonValue> items, Place place) implements JsonValue {
    @Override
    public String word() {
      return "a list";
    }
  }

  /** A string. */
  record Text(String value, Place place) implements JsonValue {
    @Override
    public String word() {
      return "a text";
    }
  }

  /** A number, exactly as written. */
  record Num(BigDecimal value, Place place) implements JsonValue {
    @Override
    public String word() {
      return "a number";
    }
  }

  /** True or false. */
  record Flag(boolean value, Place place) implements JsonValue {
    @Override
    public String word() {
      return "true or false";
    }
  }

  /** JSON null. */
  record Nothing(Place place) implements JsonValue {
    @Override
    public String word() {
      return "null";
    }
  }
}
