package slabwright.store;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import slabwright.shape.Vec;
import slabwright.site.Spot;
import slabwright.units.Length;

/** Writes our values into JSON nodes. */
final class FieldWriter {
  private FieldWriter() {}

  /** What was typed, to the letter; else millimetres. */
  static void length(ObjectNode o, String name, Length v) {
    if (v.wasTyped()) {
      o.put(name, v.typed());
    } else {
      o.put(name, v.mm());
    }
  }

  static void length(ObjectNode o, String name, Optional<Length> v) {
    v.ifPresent(l -> length(o, name, l));
  }

  static void number(ObjectNode o, String name, OptionalDouble v) {
    v.ifPresent(d -> o.put(name, d));
  }

  /** A text, unless it is empty. */
  static void text(ObjectNode o, String name, String v) {
    if (!v.isEmpty()) {
      o.put(name, v);
    }
  }

  /** A word, a day or a flag that is known. */
  static void known(ObjectNode o, String name, Optional<?> v) {
    v.ifPresent(
        k -> {
          if (k instanceof Boolean flag) {
            o.put(name, flag);
          } else if (k instanceof Enum<?> word) {
            o.put(name, EnumWords.of(word));
          } else {
            o.put(name, k.toString());
          }
        });
  }

  /** Points of a picture, in pixels. */
  static void pixels(ObjectNode o, String name, List<Vec> points) {
    if (!points.isEmpty()) {
      ArrayNode list = o.putArray(name);
      points.forEach(p -> list.addArray().add(p.x()).add(p.y()));
    }
  }

  static void spot(ObjectNode o, String name, Spot s) {
    fill(o.putArray(name), s);
  }

  static void spots(ObjectNode o, String name, List<Spot> spots) {
    ArrayNode list = o.putArray(name);
    spots.forEach(s -> fill(list.addArray(), s));
  }

  private static void fill(ArrayNode pair, Spot s) {
    add(pair, s.x());
    add(pair, s.y());
  }

  static void add(ArrayNode list, Length v) {
    if (v.wasTyped()) {
      list.add(v.typed());
    } else {
      list.add(v.mm());
    }
  }

  static <T> void list(ObjectNode o, String name, List<T> items, BiConsumer<T, ObjectNode> write) {
    if (!items.isEmpty()) {
      ArrayNode list = o.putArray(name);
      items.forEach(i -> write.accept(i, list.addObject()));
    }
  }
}
