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
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * One section of a shop book while it is being read: gives typed values, collects what can't be
 * read, and knows which of its keys nobody asked for.
 */
final class BookSection {
  private final String kind;
  private final String name;
  private final Map<String, ShopBookText.Entry> entries;
  private final List<BookFault> faults;
  private final Map<String, Message> asked = new LinkedHashMap<>();

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
    return word(key, Message.of("work.book-section.words"));
  }

  /** Words that are written like the example. */
  Figure<String> word(String key, Message example) {
    return read(key, example, Result::ok);
  }

  /** One of a closed set, written as its names in small letters. */
  <E extends Enum<E>> Figure<E> choice(String key, Message example, Class<E> type) {
    Map<String, E> words = new LinkedHashMap<>();
    for (E e : type.getEnumConstants()) {
      words.put(e.name().toLowerCase(Locale.ROOT).replace('_', ' '), e);
    }
    return read(
        key,
        example,
        v ->
            words.containsKey(v)
                ? Result.ok(words.get(v))
                : Result.refused(
                    Message.of(
                        "work.book-section.is-none-of-write-one",
                        v,
                        String.join(", ", words.keySet()))));
  }

  /** A colour as six hex digits; the sign before them would begin a comment. */
  Figure<String> colour(String key) {
    return read(
        key,
        example("a8a49a"),
        v ->
            v.matches("[0-9a-fA-F]{6}")
                ? Result.ok(v.toLowerCase(Locale.ROOT))
                : Result.refused(Message.of("work.book-section.is-no-colour", v)));
  }

  /** A value as it may be written. */
  static Message example(String value) {
    return Message.of("work.book-section.example", value);
  }

  Figure<Double> number(String key, BookDimension dimension) {
    return read(key, example(dimension.example()), dimension::read);
  }

  Figure<Integer> whole(String key) {
    return read(
        key,
        example("3"),
        v ->
            v.matches("[1-9]\\d{0,3}")
                ? Result.ok(Integer.valueOf(v))
                : Result.refused(Message.of("work.book-section.is-no-number-from-to", v)));
  }

  Figure<Duration> time(String key) {
    return read(key, example(BookDimension.TIME.example()), BookSection::duration);
  }

  /** A price; money is decimal. */
  Figure<BigDecimal> price(String key) {
    return read(key, example("95.00"), BookSection::money);
  }

  Figure<Boolean> yes(String key) {
    return read(
        key,
        Message.of("work.book-section.yes-or-no"),
        v ->
            switch (v) {
              case "yes" -> Result.ok(true);
              case "no" -> Result.ok(false);
              default -> Result.refused(Message.of("work.book-section.must-be-yes-or-no", v));
            });
  }

  /** A time that may be stated as {@code none}. */
  Figure<Optional<Duration>> timeOrNone(String key) {
    return read(
        key,
        Message.of("work.book-section.h-or-none"),
        v -> v.equals("none") ? Result.ok(Optional.empty()) : duration(v).map(Optional::of));
  }

  /** {@code 4 h}, or {@code 15 C: 6 h, 25 C: 3 h}. */
  Figure<TemperatureTable> table(String written) {
    String key = ShopBookText.key(written);
    Message subject = Message.of("work.book-section.table-of", key, label());
    return read(
        key, Message.of("work.book-section.table"), v -> TemperatureTableReader.read(subject, v));
  }

  /** Several values parted by commas; {@code none} is the empty list. */
  <T> Figure<List<T>> list(String key, Message example, Function<String, Result<T>> item) {
    return read(key, example, v -> items(v, item));
  }

  private static <T> Result<List<T>> items(String text, Function<String, Result<T>> item) {
    List<T> all = new ArrayList<>();
    if (text.equals("none")) {
      return Result.ok(List.of());
    }
    for (String part : text.split(",", -1)) {
      Result<T> one = item.apply(part.strip());
      if (one instanceof Result.Refused<T> bad) {
        return Result.refused(bad.refusals());
      }
      all.add(one.orThrow());
    }
    return Result.ok(List.copyOf(all));
  }

  private <T> Figure<T> read(String written, Message example, Function<String, Result<T>> reader) {
    String key = ShopBookText.key(written);
    asked.put(key, example);
    ShopBookText.Entry e = entries.get(key);
    if (e == null || e.value().isBlank() || e.value().equals("?")) {
      return Figure.missing(Message.of("work.book-section.of", key, label()));
    }
    Result<T> value = reader.apply(e.value());
    if (value instanceof Result.Refused<T> bad) {
      faults.add(
          new BookFault(e.line(), Message.of("work.book-section.key-fault", key, bad.message())));
      return Figure.refused(
          Message.of("work.book-section.shop-book-line", e.line(), bad.message()));
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
                  e == null ? Optional.empty() : fault(e.line())));
        });
    return fields;
  }

  private Optional<Message> fault(int line) {
    return faults.stream().filter(f -> f.line() == line).map(BookFault::sentence).findFirst();
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
                        Message.of(
                            "work.book-section.is-not-known-in-and",
                            e.key(),
                            (kind + " " + name).strip()))));
  }

  static Result<Duration> duration(String text) {
    return BookDimension.TIME.read(text).map(m -> Duration.ofSeconds(Math.round(m * 60)));
  }

  static Result<BigDecimal> money(String text) {
    return text.matches("\\d+(\\.\\d+)?")
        ? Result.ok(new BigDecimal(text))
        : Result.refused(Message.of("work.book-section.is-no-price-write-a", text));
  }
}
