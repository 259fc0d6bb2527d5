package slabwright.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Spoils the values of a JSON text and leaves it JSON, so that what lies behind the reader is met.
 */
final class JsonMutator {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;

  private static final double[] NUMBERS = {
    0, -1, 1, 0.001, 1e-9, 0.5, 2, 3, 7, 100, 1e4, 1e5, 1e6, 1e7, 1e9, 1e12, -1e6, 1e300, 4e-320
  };
  private static final List<String> TEXTS =
      List.of(
          "",
          " ",
          "0",
          "0 mm",
          "-1 m",
          "1 mm",
          "1 km",
          "1000 km",
          "1e300 m",
          "1/0\"",
          "../a.svg",
          "/etc/hostname",
          "http://example.invalid/a.svg",
          "nonsense",
          "2026-02-30",
          "0001-01-01",
          "9999-12-31T23:59",
          "#000000",
          "#zzzzzz",
          "{0}",
          "''",
          "a\nb",
          "\u0000",
          "🦩".repeat(200));

  /** A place in the tree: the n-th child of a node. */
  private record Slot(JsonNode parent, String name, int index) {
    JsonNode value() {
      return parent instanceof ObjectNode o ? o.get(name) : parent.get(index);
    }

    void set(JsonNode value) {
      if (parent instanceof ObjectNode o) {
        o.set(name, value);
      } else {
        ((ArrayNode) parent).set(index, value);
      }
    }

    void remove() {
      if (parent instanceof ObjectNode o) {
        o.remove(name);
      } else {
        ((ArrayNode) parent).remove(index);
      }
    }
  }

  private final Random random;

  JsonMutator(Random random) {
    this.random = random;
  }

  String spoil(String text) throws IOException {
    JsonNode root = JSON.readTree(text);
    int times = 1 + random.nextInt(1 + random.nextInt(4));
    for (int i = 0; i < times; i++) {
      List<Slot> slots = new ArrayList<>();
      collect(root, slots);
      if (!slots.isEmpty()) {
        once(slots);
      }
    }
    return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root);
  }

  private static void collect(JsonNode node, List<Slot> out) {
    if (node instanceof ObjectNode object) {
      object.fieldNames().forEachRemaining(n -> out.add(new Slot(object, n, -1)));
    } else if (node instanceof ArrayNode array) {
      for (int i = 0; i < array.size(); i++) {
        out.add(new Slot(array, "", i));
      }
    }
    node.forEach(child -> collect(child, out));
  }

  private void once(List<Slot> slots) {
    Slot at = slots.get(random.nextInt(slots.size()));
    Slot other = slots.get(random.nextInt(slots.size()));
    switch (random.nextInt(12)) {
      case 0 -> at.remove();
      case 1 -> at.set(odd());
      case 2 -> at.set(other.value().deepCopy());
      case 3 -> list(at);
      case 4 -> rename(at, other);
      case 5 -> sameKind(at, slots);
      default -> at.set(near(at.value()));
    }
  }

  /** A value of another kind of thing. */
  private JsonNode odd() {
    return switch (random.nextInt(6)) {
      case 0 -> MAKE.nullNode();
      case 1 -> MAKE.arrayNode();
      case 2 -> MAKE.objectNode();
      case 3 -> MAKE.booleanNode(random.nextBoolean());
      case 4 -> MAKE.textNode(TEXTS.get(random.nextInt(TEXTS.size())));
      default -> MAKE.numberNode(NUMBERS[random.nextInt(NUMBERS.length)]);
    };
  }

  /** The same kind of value, another one. */
  private JsonNode near(JsonNode old) {
    if (old.isNumber()) {
      double v = old.asDouble();
      return MAKE.numberNode(
          switch (random.nextInt(6)) {
            case 0 -> -v;
            case 1 -> v * 10;
            case 2 -> v / 1000;
            case 3 -> v + 1;
            case 4 -> Math.rint(v * random.nextDouble() * 2);
            default -> NUMBERS[random.nextInt(NUMBERS.length)];
          });
    }
    if (old.isTextual()) {
      String number = new TextMutator(random, List.of()).spoil(old.asText());
      return MAKE.textNode(random.nextBoolean() ? number : TEXTS.get(random.nextInt(TEXTS.size())));
    }
    return old.isBoolean() ? MAKE.booleanNode(!old.asBoolean()) : odd();
  }

  private void list(Slot at) {
    if (!(at.value() instanceof ArrayNode array) || array.isEmpty()) {
      return;
    }
    int i = random.nextInt(array.size());
    int j = random.nextInt(array.size());
    switch (random.nextInt(4)) {
      case 0 -> array.removeAll();
      case 1 -> array.insert(j, array.get(i).deepCopy());
      case 2 -> {
        JsonNode kept = array.get(i).deepCopy();
        array.set(i, array.get(j).deepCopy());
        array.set(j, kept);
      }
      default -> {
        JsonNode one = array.get(i).deepCopy();
        for (int k = random.nextInt(40); k > 0; k--) {
          array.add(one.deepCopy());
        }
      }
    }
  }

  private static void rename(Slot at, Slot other) {
    if (at.parent() instanceof ObjectNode o && !other.name().isEmpty()) {
      JsonNode value = o.remove(at.name());
      o.set(other.name(), value);
    }
  }

  /** The value of another field of the same name, so that ids and words that are known meet. */
  private void sameKind(Slot at, List<Slot> slots) {
    List<Slot> same = slots.stream().filter(s -> s.name().equals(at.name())).toList();
    at.set(same.get(random.nextInt(same.size())).value().deepCopy());
  }
}
