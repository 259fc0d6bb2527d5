package slabwright.work.book;

import java.util.List;
import java.util.Optional;
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * The shop book as a form: every value it may hold, section by section, whether it is there or not.
 *
 * @param faults lines that can't be read or are not known
 */
public record BookForm(List<Section> sections, List<BookFault> faults) {
  public BookForm {
    sections = List.copyOf(sections);
    faults = List.copyOf(faults);
  }

  /** One section; {@code name} is empty for those that stand alone. */
  public record Section(String kind, String name, List<BookField> fields) {
    public Section {
      fields = List.copyOf(fields);
    }

    /** As people call it. */
    public String label() {
      return name.isEmpty() ? kind : kind + ": " + name;
    }
  }

  public static BookForm of(ShopBookText text) {
    ShopBookReader reader = new ShopBookReader(text);
    List<BookFault> faults = reader.read().faults();
    return new BookForm(
        reader.sections().stream()
            .map(s -> new Section(s.kind(), s.name(), s.fields(text)))
            .toList(),
        faults);
  }

  /** How many values the book is silent on. */
  public long missing() {
    return sections.stream().flatMap(s -> s.fields().stream()).filter(BookField::isMissing).count();
  }

  /** A value by its place. */
  public Optional<BookField> field(String kind, String section, String key) {
    return sections.stream()
        .filter(s -> s.kind().equals(kind) && s.name().equals(section))
        .flatMap(s -> s.fields().stream())
        .filter(f -> f.key().equals(key))
        .findFirst();
  }

  /** The text with another value for a field; bad with the reason when it can't be read. */
  public static Result<ShopBookText> changed(ShopBookText text, BookField field, String value) {
    String clean = value.strip();
    if (clean.contains("#") || clean.contains("\n")) {
      return Result.refused(Message.of("work.book-form.a-value-cant-hold-comments"));
    }
    ShopBookText next =
        text.with(field.kind(), field.section(), field.key(), clean.isEmpty() ? "?" : clean);
    return of(next)
        .field(field.kind(), field.section(), field.key())
        .flatMap(BookField::fault)
        .map(Result::<ShopBookText>refused)
        .orElseGet(() -> Result.ok(next));
  }
}
