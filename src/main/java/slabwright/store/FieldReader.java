package slabwright.store;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import slabwright.shape.Vec;
import slabwright.site.Spot;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.units.Result;

/**
 * The fields of one JSON object, taken one by one. What is wrong goes to the fault list and a
 * harmless value comes back, so that one reading finds every fault; {@link #reportUnknown()} names
 * what was not asked for.
 */
final class FieldReader {
  private final JsonValue.Obj object;
  private final List<Refusal> faults;
  private final Set<String> asked = new TreeSet<>();

  FieldReader(JsonValue.Obj object, List<Refusal> faults) {
    this.object = object;
    this.faults = faults;
  }

  /** The fields of a value that should be an object; an empty one after a fault. */
  static FieldReader of(JsonValue value, List<Refusal> faults) {
    if (value instanceof JsonValue.Obj o) {
      return new FieldReader(o, faults);
    }
    faults.add(wrong(value, Message.of("store.field-reader.an-object")));
    return new FieldReader(new JsonValue.Obj(java.util.Map.of(), value.place()), new ArrayList<>());
  }

  static Refusal wrong(JsonValue value, Message wanted) {
    return Refusal.at(
        value.place().path(),
        Message.of("store.field-reader.is-it-must-be", value.place().said(), value.word(), wanted));
  }

  JsonValue.Place place() {
    return object.place();
  }

  void fault(Message sentence) {
    faults.add(Refusal.at(object.place().path(), sentence));
  }

  boolean has(String name) {
    asked.add(name);
    return object.fields().containsKey(name)
        && !(object.fields().get(name) instanceof JsonValue.Nothing);
  }

  private Optional<JsonValue> need(String name) {
    if (has(name)) {
      return Optional.of(object.fields().get(name));
    }
    fault(Message.of("store.field-reader.lacks-add-it", object.place().said(), name));
    return Optional.empty();
  }

  private <T> Optional<T> take(String name, Function<JsonValue, Optional<T>> read) {
    return has(name) ? read.apply(object.fields().get(name)) : Optional.empty();
  }

  String text(String name) {
    return need(name).flatMap(this::asText).orElse("");
  }

  String textOr(String name, String otherwise) {
    return take(name, this::asText).orElse(otherwise);
  }

  private Optional<String> asText(JsonValue v) {
    if (v instanceof JsonValue.Text t) {
      return Optional.of(t.value());
    }
    faults.add(wrong(v, Message.of("store.field-reader.a-text")));
    return Optional.empty();
  }

  double number(String name) {
    return need(name).flatMap(this::asNumber).orElse(BigDecimal.ONE).doubleValue();
  }

  double numberOr(String name, double otherwise) {
    return take(name, this::asNumber).map(BigDecimal::doubleValue).orElse(otherwise);
  }

  OptionalDouble numberIf(String name) {
    Optional<BigDecimal> v = take(name, this::asNumber);
    return v.isPresent() ? OptionalDouble.of(v.get().doubleValue()) : OptionalDouble.empty();
  }

  int whole(String name, int otherwise) {
    if (!has(name)) {
      return otherwise;
    }
    JsonValue v = object.fields().get(name);
    if (v instanceof JsonValue.Num n
        && n.value().stripTrailingZeros().scale() <= 0
        && n.value().abs().compareTo(BigDecimal.valueOf(1_000_000)) <= 0) {
      return n.value().intValueExact();
    }
    faults.add(wrong(v, Message.of("store.field-reader.a-whole-number")));
    return otherwise;
  }

  private Optional<BigDecimal> asNumber(JsonValue v) {
    if (v instanceof JsonValue.Num n && Double.isFinite(n.value().doubleValue())) {
      return Optional.of(n.value());
    }
    faults.add(wrong(v, Message.of("store.field-reader.a-number")));
    return Optional.empty();
  }

  boolean flagOr(String name, boolean otherwise) {
    return flagIf(name).orElse(otherwise);
  }

  Optional<Boolean> flagIf(String name) {
    return take(name, this::asFlag);
  }

  private Optional<Boolean> asFlag(JsonValue v) {
    if (v instanceof JsonValue.Flag f) {
      return Optional.of(f.value());
    }
    faults.add(wrong(v, Message.of("store.field-reader.true-or-false")));
    return Optional.empty();
  }

  <E extends Enum<E>> E word(String name, Class<E> type, E otherwise) {
    return wordIf(name, type).orElse(otherwise);
  }

  /** A word that must be there. */
  <E extends Enum<E>> Optional<E> wordNeeded(String name, Class<E> type) {
    return need(name).isPresent() ? wordIf(name, type) : Optional.empty();
  }

  <E extends Enum<E>> Optional<E> wordIf(String name, Class<E> type) {
    Optional<String> text = take(name, this::asText);
    Optional<E> found = text.flatMap(t -> EnumWords.find(type, t));
    if (text.isPresent() && found.isEmpty()) {
      JsonValue v = object.fields().get(name);
      faults.add(
          Refusal.at(
              v.place().path(),
              Message.of(
                  "store.field-reader.is-it-must-be-one",
                  v.place().said(),
                  text.get(),
                  EnumWords.list(type))));
    }
    return found;
  }

  /** A list of texts; empty when it is absent. */
  List<String> texts(String name) {
    List<String> out = new ArrayList<>();
    items(name, false).forEach(v -> asText(v).ifPresent(out::add));
    return out;
  }

  /** A day such as 2026-12-01; empty when it is absent. */
  Optional<LocalDate> dayIf(String name) {
    return time(name, LocalDate::parse, Message.of("store.field-reader.a-date-such-as"));
  }

  /** A local date and time such as 2026-12-07T08:00; empty when it is absent. */
  Optional<LocalDateTime> momentIf(String name) {
    return time(name, LocalDateTime::parse, Message.of("store.field-reader.a-date-and-time-such"));
  }

  private <T> Optional<T> time(String name, Function<String, T> parse, Message wanted) {
    Optional<String> text = take(name, this::asText);
    try {
      return text.map(parse);
    } catch (DateTimeException e) {
      JsonValue v = object.fields().get(name);
      faults.add(
          Refusal.at(
              v.place().path(),
              Message.of(
                  "store.field-reader.is-write", v.place().said(), text.orElse(""), wanted)));
      return Optional.empty();
    }
  }

  /** What {@code read} finds, and a fault when it finds nothing because the field is absent. */
  <T> Optional<T> needed(String name, Function<String, Optional<T>> read) {
    return need(name).isPresent() ? read.apply(name) : Optional.empty();
  }

  /** A point [x, y] of a picture, in pixels. */
  Vec pixel(String name) {
    return need(name).map(this::asPixel).orElse(Vec.ZERO);
  }

  /** Points of a picture, in pixels; none when the list is absent. */
  List<Vec> pixels(String name) {
    return items(name, false).stream().map(this::asPixel).toList();
  }

  private Vec asPixel(JsonValue v) {
    if (v instanceof JsonValue.Arr a && a.items().size() == 2) {
      return new Vec(plain(a.items().get(0)), plain(a.items().get(1)));
    }
    faults.add(wrong(v, Message.of("store.field-reader.a-point-x-y-in")));
    return Vec.ZERO;
  }

  private double plain(JsonValue v) {
    return asNumber(v).orElse(BigDecimal.ZERO).doubleValue();
  }

  Length length(String name) {
    return need(name).map(this::asLength).orElse(Length.mm(1));
  }

  Length lengthOr(String name, Length otherwise) {
    return lengthIf(name).orElse(otherwise);
  }

  Optional<Length> lengthIf(String name) {
    return take(name, v -> Optional.of(asLength(v)));
  }

  /** A number is millimetres; a text is read as people write lengths. */
  private Length asLength(JsonValue v) {
    if (v instanceof JsonValue.Num n && Math.abs(n.value().doubleValue()) < 1e12) {
      return Length.mm(n.value().doubleValue());
    }
    if (v instanceof JsonValue.Text t) {
      if (Length.parse(t.value()) instanceof Result.Ok<Length> ok) {
        return ok.value();
      }
      faults.add(
          Refusal.at(
              v.place().path(),
              Message.of("store.field-reader.is-not-a-length-write", v.place().said(), t.value())));
      return Length.mm(1);
    }
    faults.add(wrong(v, Message.of("store.field-reader.a-length-a-text-such")));
    return Length.mm(1);
  }

  /** A list of lengths that must be there. */
  List<Length> lengths(String name) {
    return items(name, true).stream().map(this::asLength).toList();
  }

  Spot spot(String name) {
    return need(name).map(this::asSpot).orElse(Spot.mm(0, 0));
  }

  List<Spot> spots(String name) {
    return items(name, true).stream().map(this::asSpot).toList();
  }

  private Spot asSpot(JsonValue v) {
    if (v instanceof JsonValue.Arr a && a.items().size() == 2) {
      return new Spot(asLength(a.items().get(0)), asLength(a.items().get(1)));
    }
    faults.add(wrong(v, Message.of("store.field-reader.a-point-x-y")));
    return Spot.mm(0, 0);
  }

  /** The items of a list of objects; none when the list is absent. */
  <T> List<T> list(String name, Function<FieldReader, Optional<T>> read) {
    List<T> out = new ArrayList<>();
    for (JsonValue item : items(name, false)) {
      FieldReader f = of(item, faults);
      read.apply(f).ifPresent(out::add);
      f.reportUnknown();
    }
    return out;
  }

  private List<JsonValue> items(String name, boolean needed) {
    Optional<JsonValue> v = needed ? need(name) : take(name, Optional::of);
    if (v.isPresent() && v.get() instanceof JsonValue.Arr a) {
      return a.items();
    }
    v.ifPresent(j -> faults.add(wrong(j, Message.of("store.field-reader.a-list"))));
    return List.of();
  }

  /** An object under this one; empty when it is absent. */
  <T> Optional<T> object(String name, Function<FieldReader, T> read) {
    return take(name, Optional::of)
        .map(
            v -> {
              FieldReader f = of(v, faults);
              T made = read.apply(f);
              f.reportUnknown();
              return made;
            });
  }

  /** An object that must be there. */
  Optional<FieldReader> child(String name) {
    return need(name).map(v -> of(v, faults));
  }

  Set<String> names() {
    return object.fields().keySet();
  }

  /** Names every field that nobody asked for. */
  void reportUnknown() {
    for (var e : object.fields().entrySet()) {
      if (!asked.contains(e.getKey())) {
        JsonValue.Place p = e.getValue().place();
        faults.add(
            Refusal.at(
                p.path(),
                Message.of("store.field-reader.field-at-is-not-known", e.getKey(), p.said())));
      }
    }
  }
}
