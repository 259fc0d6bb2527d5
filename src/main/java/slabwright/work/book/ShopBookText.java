package slabwright.work.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * The shop book as text: a first line {@code slabwright-shop-book 1}, sections {@code [kind name]},
 * entries {@code key = value}, and comments from {@code #} to the end of the line. A value {@code
 * ?} means not known. Changing a value keeps every comment and the order of the lines.
 */
public final class ShopBookText {
  /** The only version so far; a newer one is refused. */
  public static final int VERSION = 1;

  private static final Pattern FIRST = Pattern.compile("slabwright-shop-book\\s+(\\d+)\\s*");
  private static final Pattern SECTION =
      Pattern.compile("\\[\\s*([a-z]+(?:-[a-z]+)*)(?:\\s+([^\\]]+?))?\\s*\\]");
  private static final Pattern ENTRY =
      Pattern.compile("(\\s*([^=#]+?)\\s*=\\s*)([^#]*?)(\\s*(?:#.*)?)");

  /** One entry where it stands. */
  record Entry(int line, String kind, String name, String key, String value) {}

  private final List<String> lines;
  private final List<Entry> entries;
  private final List<BookFault> faults;

  private ShopBookText(List<String> lines, List<Entry> entries, List<BookFault> faults) {
    this.lines = List.copyOf(lines);
    this.entries = List.copyOf(entries);
    this.faults = List.copyOf(faults);
  }

  /** Reads the text; bad only when it is no shop book or a newer one. */
  public static Result<ShopBookText> parse(String text) {
    List<String> lines = text.lines().toList();
    Matcher first = FIRST.matcher(lines.isEmpty() ? "" : lines.get(0));
    if (!first.matches()) {
      return Result.refused(Message.of("work.shop-book-text.this-is-no-shop-book"));
    }
    if (!first.group(1).equals(String.valueOf(VERSION))) {
      return Result.refused(
          Message.of("work.shop-book-text.this-shop-book-is-of", first.group(1), VERSION));
    }
    return Result.ok(read(lines));
  }

  private static ShopBookText read(List<String> lines) {
    List<Entry> entries = new ArrayList<>();
    List<BookFault> faults = new ArrayList<>();
    String kind = "";
    String name = "";
    for (int i = 1; i < lines.size(); i++) {
      String bare = lines.get(i).replaceFirst("#.*", "").strip();
      Matcher section = SECTION.matcher(bare);
      Matcher entry = ENTRY.matcher(lines.get(i));
      if (section.matches()) {
        kind = section.group(1);
        name = Optional.ofNullable(section.group(2)).orElse("");
      } else if (!bare.isEmpty() && entry.matches()) {
        entries.add(new Entry(i + 1, kind, name, entry.group(2), entry.group(3)));
      } else if (!bare.isEmpty()) {
        faults.add(
            new BookFault(
                i + 1, Message.of("work.shop-book-text.is-neither-section-nor-key", bare)));
      }
    }
    return new ShopBookText(lines, entries, faults);
  }

  /** A key of the file from its name in the code, where {@code _} stands for each space. */
  public static String key(String name) {
    return name.replace('_', ' ');
  }

  List<Entry> entries() {
    return entries;
  }

  List<BookFault> faults() {
    return faults;
  }

  /** What stands behind a line's {@code #}: often where the value comes from. */
  String comment(int line) {
    String text = lines.get(line - 1);
    int at = text.indexOf('#');
    return at < 0 ? "" : text.substring(at + 1).strip();
  }

  public String text() {
    return String.join("\n", lines) + "\n";
  }

  /** What the entry says, without its comment; empty when there is no such entry. */
  public Optional<String> value(String kind, String name, String key) {
    return find(kind, name, key).map(Entry::value);
  }

  private Optional<Entry> find(String kind, String name, String key) {
    return entries.stream()
        .filter(e -> e.kind().equals(kind) && e.name().equals(name) && e.key().equals(key))
        .reduce((a, b) -> b);
  }

  /** The same book with another value for an entry; a new entry goes to the end of its section. */
  public ShopBookText with(String kind, String name, String key, String value) {
    List<String> changed = new ArrayList<>(lines);
    Optional<Entry> old = find(kind, name, key);
    if (old.isPresent()) {
      changed.set(old.get().line() - 1, replaced(lines.get(old.get().line() - 1), value));
    } else {
      insert(changed, kind, name, key + " = " + value);
    }
    return read(changed);
  }

  private static String replaced(String line, String value) {
    Matcher m = ENTRY.matcher(line);
    return m.matches() ? m.group(1) + value + m.group(4) : line;
  }

  private void insert(List<String> changed, String kind, String name, String entry) {
    Optional<Entry> last =
        entries.stream()
            .filter(e -> e.kind().equals(kind) && e.name().equals(name))
            .reduce((a, b) -> b);
    if (last.isPresent()) {
      changed.add(last.get().line(), entry);
    } else {
      changed.add("");
      changed.add("[" + (kind + " " + name).strip() + "]");
      changed.add(entry);
    }
  }
}
