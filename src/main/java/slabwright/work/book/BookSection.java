package slabwright.work.book;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import slabwright.units.Parsed;

/**
 * One section of a shop book while it is being read: gives typed values, collects what can't be
 * read, and knows which of its keys nobody asked for.
 */
final class BookSection {
  private final String kind;
  private final String name;
  private final Map<String, ShopBookText.Entry> entries;
  private final List<BookFault> faults;
  private final Map<String, String> asked = new LinkedHashMap<>();

  BookSection(
      String kind, String name, Map<String, ShopBookText.Entry> entries, List<BookFault> faults) {
    this.kind = kind;
    this.name = name;
    this.entries = entries;
    this.faults = faults;
  }

  String kind() {
    return kind;
  }

  String name() {
    return name;
  }

  Figure<String> text(String key) {
    return word(key, "words");
  }

  /** Words that are written like the example. */
  Figure<String> word(String key, String example) {
    return read(key, example, Parsed::ok);
  }

  /** One of a closed set, written as its names in small letters. */
  <E extends Enum<E>> Figure<E> choice(String key, String example, Class<E> type) {
    Map<String, E> words = new LinkedHashMap<>();
    for (E e : type.getEnumConstants()) {
      words.put(e.name().toLowerCase(Locale.ROOT).replace('_', ' '), e);
    }
    return read(
        key,
        example,
        v ->
            words.containsKey(v)
                ? Parsed.ok(words.get(v))
                : Parsed.bad(
                    "\"%s\" is none of %s; write one of them"
                        .formatted(v, String.join(", ", words.keySet()))));
  }

  String text(String key, String otherwise) {
    return text(key).maybe().orElse(otherwise);
  }

  Figure<Double> number(String key, BookDimension dimension) {
    return read(key, dimension.example(), dimension::read);
  }

  Figure<Integer> whole(String key) {
    return read(
        key,
        "3",
        v ->
            v.matches("[1-9]\\d{0,3}")
                ? Parsed.ok(Integer.valueOf(v))
                : Parsed.bad("\"%s\" is no number from 1 to 9999".formatted(v)));
  }

  Figure<Duration> time(String key) {
    return read(key, BookDimension.TIME.example(), BookSection::duration);
  }

  /** A price; money is decimal. */
  Figure<BigDecimal> price(String key) {
    return read(key, "95.00", BookSection::money);
  }

  Figure<Boolean> yes(String key) {
    return read(
        key,
        "yes or no",
        v ->
            switch (v) {
              case "yes" -> Parsed.ok(true);
              case "no" -> Parsed.ok(false);
              default -> Parsed.bad("\"%s\" must be yes or no".formatted(v));
            });
  }

  /** A time that may be stated as {@code none}. */
  Figure<Optional<Duration>> timeOrNone(String key) {
    return read(
        key,
        "48 h, or none",
        v -> v.equals("none") ? Parsed.ok(Optional.empty()) : duration(v).map(Optional::of));
  }

  /** {@code 4 h}, or {@code 15 C: 6 h, 25 C: 3 h}. */
  Figure<TemperatureTable> table(String key) {
    String subject = key + " of " + label();
    return read(key, "60 F: 40 min, 80 F: 20 min", v -> TemperatureTableReader.read(subject, v));
  }

  /** Several values parted by commas; {@code none} is the empty list. */
  <T> Figure<List<T>> list(String key, String example, Function<String, Parsed<T>> item) {
    return read(key, example, v -> items(v, item));
  }

  private static <T> Parsed<List<T>> items(String text, Function<String, Parsed<T>> item) {
    List<T> all = new ArrayList<>();
    if (text.equals("none")) {
      return Parsed.ok(List.of());
    }
    for (String part : text.split(",", -1)) {
      Parsed<T> one = item.apply(part.strip());
      if (one instanceof Parsed.Bad<T> bad) {
        return Parsed.bad(bad.why());
      }
      all.add(one.orThrow());
    }
    return Parsed.ok(List.copyOf(all));
  }

  private <T> Figure<T> read(String key, String example, Function<String, Parsed<T>> reader) {
    asked.put(key, example);
    ShopBookText.Entry e = entries.get(key);
    if (e == null || e.value().isBlank() || e.value().equals("?")) {
      return Figure.missing(key + " of " + label());
    }
    Parsed<T> value = reader.apply(e.value());
    if (value instanceof Parsed.Bad<T> bad) {
      faults.add(new BookFault(e.line(), key + ": " + bad.why()));
      return Figure.refused("shop book, line " + e.line() + ": " + bad.why());
    }
    return Figure.known(value.orThrow());
  }

  /** Everything the section may hold, with what it says and how that is written. */
  List<BookField> fields(ShopBookText text) {
    List<BookField> fields = new ArrayList<>();
    asked.forEach(
        (key, example) -> {
          ShopBookText.Entry e = entries.get(key);
          fields.add(
              new BookField(
                  kind,
                  name,
                  key,
                  e == null ? "" : e.value(),
                  example,
                  e == null ? "" : text.comment(e.line()),
                  e == null ? "" : fault(e.line())));
        });
    return fields;
  }

  private String fault(int line) {
    return faults.stream()
        .filter(f -> f.line() == line)
        .map(BookFault::sentence)
        .findFirst()
        .orElse("");
  }

  /** The section as people call it: its name, or its kind when it has none. */
  String label() {
    return name.isEmpty() ? kind : name;
  }

  /** Faults for the keys nobody asked for; call last. */
  void nameUnknownKeys() {
    entries.values().stream()
        .filter(e -> !asked.containsKey(e.key()))
        .forEach(
            e ->
                faults.add(
                    new BookFault(
                        e.line(),
                        "\"%s\" is not known in [%s] and is left alone"
                            .formatted(e.key(), (kind + " " + name).strip()))));
  }

  static Parsed<Duration> duration(String text) {
    return BookDimension.TIME.read(text).map(m -> Duration.ofSeconds(Math.round(m * 60)));
  }

  static Parsed<BigDecimal> money(String text) {
    return text.matches("\\d+(\\.\\d+)?")
        ? Parsed.ok(new BigDecimal(text))
        : Parsed.bad("\"%s\" is no price; write a number such as 95.00".formatted(text));
  }
}
