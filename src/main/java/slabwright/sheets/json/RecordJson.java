package slabwright.sheets.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import slabwright.shape.Region;
import slabwright.site.AdviceId;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.words.Words;
import slabwright.work.book.Figure;

/**
 * Results that are records, as JSON: each component a field of its name, so that a number added to
 * a result is in the report without more. A message is its sentence. What is absent is left out;
 * what the shop book lacks says so.
 */
final class RecordJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final Set<Class<?>> leftOut;
  private final Words words;

  /**
   * A writer.
   *
   * @param leftOut inputs that results carry along and that are reported elsewhere
   */
  RecordJson(Set<Class<?>> leftOut, Words words) {
    this.leftOut = new LinkedHashSet<>(leftOut);
    this.words = words;
  }

  /** The node of a value; empty for what is absent or left out. */
  Optional<JsonNode> node(Object value) {
    if (value == null || leftOut.stream().anyMatch(c -> c.isInstance(value))) {
      return Optional.empty();
    }
    if (value instanceof Figure<?> figure) {
      return figure(figure);
    }
    if (value instanceof Optional<?> optional) {
      return optional.flatMap(this::node);
    }
    if (value instanceof Message m) {
      return Optional.of(NODES.textNode(words.say(m)));
    }
    if (value instanceof Collection<?> list) {
      return Optional.of(list(list));
    }
    if (value instanceof Map<?, ?> map) {
      return Optional.of(map(map));
    }
    if (value instanceof OptionalDouble d) {
      return d.isPresent() ? Optional.of(number(d.getAsDouble())) : Optional.empty();
    }
    if (value instanceof OptionalInt i) {
      return i.isPresent() ? Optional.of(NODES.numberNode(i.getAsInt())) : Optional.empty();
    }
    return scalar(value).or(() -> value instanceof Record r ? Optional.of(fields(r)) : text(value));
  }

  private Optional<JsonNode> figure(Figure<?> figure) {
    if (figure instanceof Figure.Known<?> known) {
      return node(known.value());
    }
    ObjectNode o = NODES.objectNode();
    if (figure instanceof Figure.Missing<?> missing) {
      o.set("notInTheShopBook", list(missing.names()));
    } else if (figure instanceof Figure.Refused<?> refused) {
      node(refused.why()).ifPresent(why -> o.set("refused", why));
    }
    return Optional.of(o);
  }

  private Optional<JsonNode> scalar(Object value) {
    if (value instanceof Double d) {
      return Optional.of(number(d));
    }
    if (value instanceof Integer i) {
      return Optional.of(NODES.numberNode(i));
    }
    if (value instanceof Boolean b) {
      return Optional.of(NODES.booleanNode(b));
    }
    if (value instanceof Region r) {
      return Optional.of(NODES.objectNode().put("area_mm2", JsonText.number(r.area())));
    }
    return value instanceof Length l ? Optional.of(number(l.mm())) : Optional.empty();
  }

  /** Not every figure is finite: no airflow clears a room never. */
  private JsonNode number(double d) {
    return Double.isFinite(d)
        ? NODES.numberNode(JsonText.significant(d))
        : NODES.textNode(notFinite(d));
  }

  private String notFinite(double d) {
    return d > 0
        ? words.say("sheets.record-json.without-end")
        : words.say("sheets.record-json.undefined");
  }

  private static Optional<JsonNode> text(Object value) {
    return Optional.of(NODES.textNode(word(value)));
  }

  private static String word(Object value) {
    if (value instanceof AdviceId id) {
      return id.word();
    }
    return value instanceof Enum<?> e
        ? e.name().toLowerCase(Locale.ROOT).replace('_', ' ')
        : value.toString();
  }

  private ArrayNode list(Collection<?> items) {
    ArrayNode list = NODES.arrayNode();
    items.forEach(i -> node(i).ifPresent(list::add));
    return list;
  }

  private ObjectNode map(Map<?, ?> map) {
    ObjectNode o = NODES.objectNode();
    map.forEach((k, v) -> node(v).ifPresent(n -> o.set(k.toString(), n)));
    return o;
  }

  ObjectNode fields(Record value) {
    ObjectNode o = NODES.objectNode();
    for (RecordComponent c : value.getClass().getRecordComponents()) {
      node(read(value, c)).ifPresent(n -> o.set(c.getName(), n));
    }
    return o;
  }

  private static Object read(Record value, RecordComponent component) {
    try {
      component.getAccessor().setAccessible(true);
      return component.getAccessor().invoke(value);
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new IllegalStateException("unreadable " + component, e);
    }
  }
}
