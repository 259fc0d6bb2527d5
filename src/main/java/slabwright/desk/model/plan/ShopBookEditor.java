package slabwright.desk.model.plan;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import slabwright.desk.model.Desk;
import slabwright.desk.model.Signal;
import slabwright.site.Refusal;
import slabwright.store.AtomicFile;
import slabwright.units.Parsed;
import slabwright.words.Words;
import slabwright.work.book.BookField;
import slabwright.work.book.BookForm;
import slabwright.work.book.ShopBookFile;
import slabwright.work.book.ShopBookText;

/**
 * The shop book beside the open plan, to look at and to change. A change is written at once, with
 * every comment kept; the shipped example is never written: its first change makes a {@code
 * shop.book} beside the plan.
 */
public final class ShopBookEditor {
  private final Desk desk;
  private final Supplier<Optional<Path>> plan;
  private final Path home;
  private final Words words;
  private final Signal changed = new Signal();
  private Optional<Path> folder = Optional.empty();
  private Optional<ShopBookFile> book = Optional.empty();
  private Optional<BookForm> form = Optional.empty();

  /**
   * Listens to the desk.
   *
   * @param plan the open plan's file
   * @param home the person's own folder
   */
  public ShopBookEditor(Desk desk, Supplier<Optional<Path>> plan, Path home, Words words) {
    this.words = words;
    this.desk = desk;
    this.plan = plan;
    this.home = home;
    desk.siteChanged().subscribe(this::look);
  }

  /** Given after every change that was written. */
  public Signal changed() {
    return changed;
  }

  /** Empty while no plan with a folder is open or the book can't be read. */
  public Optional<BookForm> form() {
    return form;
  }

  public Optional<ShopBookText> text() {
    return book.map(ShopBookFile::text);
  }

  /** Where the book lies, in words. */
  public String place() {
    return book.flatMap(ShopBookFile::from)
        .map(Path::toString)
        .orElse(
            "the example that comes with the program; the first change makes "
                + ShopBookFile.NAME
                + " beside the plan");
  }

  private void look() {
    Optional<Path> now = plan.get().map(p -> p.toAbsolutePath().getParent());
    if (!now.equals(folder)) {
      folder = now;
      read();
    }
  }

  private void read() {
    book = Optional.empty();
    try {
      if (folder.isPresent()) {
        take(words.parsed(ShopBookFile.find(folder.get(), home)));
      }
    } catch (IOException e) {
      desk.refuse(Refusal.of("The shop book can't be read: " + e.getMessage() + "."));
    }
    form = book.map(b -> BookForm.of(b.text()));
  }

  private void take(Parsed<ShopBookFile> found) {
    if (found instanceof Parsed.Bad<ShopBookFile> bad) {
      desk.refuse(Refusal.of(bad.why()));
    } else {
      book = Optional.of(found.orThrow());
    }
  }

  /** Writes another value for a field; bad with the reason when it can't be read or written. */
  public Parsed<String> set(BookField field, String value) {
    if (book.isEmpty()) {
      return Parsed.bad("No shop book is open; save the plan first.");
    }
    return words
        .parsed(BookForm.changed(book.get().text(), field, value))
        .flatMap(t -> write(t, value));
  }

  /** Writes a whole new text, as after a job. */
  public Parsed<String> write(ShopBookText text, String said) {
    Path file =
        book.flatMap(ShopBookFile::from)
            .orElseGet(() -> folder.orElse(home).resolve(ShopBookFile.NAME));
    try {
      AtomicFile.write(file, text.text().getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      return Parsed.bad("Could not write " + file + ": " + e.getMessage() + ".");
    }
    book = Optional.of(new ShopBookFile(text, Optional.of(file)));
    form = Optional.of(BookForm.of(text));
    changed.fire();
    return Parsed.ok(said);
  }
}
