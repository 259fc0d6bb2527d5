package slabwright.desk.model.plan;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import slabwright.desk.model.Desk;
import slabwright.desk.model.Signal;
import slabwright.project.plan.BackgroundWriter;
import slabwright.project.plan.ShopBookFiles;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.work.book.BookField;
import slabwright.work.book.BookForm;
import slabwright.work.book.ShopBookFile;
import slabwright.work.book.ShopBookText;

/**
 * The shop book beside the open plan, to look at and to change. A change is written soon, with
 * every comment kept; the shipped example is never written: its first change makes a {@code
 * shop.book} beside the plan.
 */
public final class ShopBookEditor {
  private final Desk desk;
  private final Supplier<Optional<Path>> plan;
  private final Path home;
  private final BackgroundWriter writer;
  private final Signal changed = new Signal();
  private Optional<Path> folder = Optional.empty();
  private Optional<ShopBookFile> book = Optional.empty();
  private Optional<ShopBookFile> onDisk = Optional.empty();
  private Optional<BookForm> form = Optional.empty();

  /**
   * Listens to the desk.
   *
   * @param plan the open plan's file
   * @param home the person's own folder
   */
  public ShopBookEditor(
      Desk desk, Supplier<Optional<Path>> plan, Path home, BackgroundWriter writer) {
    this.desk = desk;
    this.writer = writer;
    this.plan = plan;
    this.home = home;
    desk.siteChanged().subscribe(this::look);
  }

  /** Given after every change that was written, and after one that could not be. */
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
  public Message place() {
    return book.flatMap(ShopBookFile::from)
        .map(f -> Message.of("desk.model.shop-book.file", f.toString()))
        .orElseGet(() -> Message.of("desk.model.shop-book.example", ShopBookFile.NAME));
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
    folder.map(f -> ShopBookFiles.find(f, home)).ifPresent(this::take);
    onDisk = book;
    form = book.map(b -> BookForm.of(b.text()));
  }

  private void take(Result<ShopBookFile> found) {
    if (found instanceof Result.Refused<ShopBookFile> refused) {
      desk.refuse(refused.refusals().get(0));
    } else {
      book = Optional.of(found.orThrow());
    }
  }

  /** Writes another value for a field; bad with the reason when it can't be read. */
  public Result<String> set(BookField field, String value) {
    if (book.isEmpty()) {
      return Result.refused(Message.of("desk.model.shop-book.none-open"));
    }
    return BookForm.changed(book.get().text(), field, value).flatMap(t -> write(t, value));
  }

  /** Writes a whole new text, as after a job. */
  public Result<String> write(ShopBookText text, String said) {
    if (book.isEmpty()) {
      return Result.refused(Message.of("desk.model.shop-book.none-open"));
    }
    ShopBookFile next = ShopBookFiles.changed(book.get(), text, folder.orElse(home));
    ShopBookFile was = new ShopBookFile(book.get().text(), next.from());
    put(next);
    if (!isSame(was.text(), next.text())) {
      desk.changedBeside(
          Message.of("desk.model.shop-book.step"), () -> turn(next, was), () -> turn(was, next));
    }
    return Result.ok(said);
  }

  /** Puts one text in place of another, unless a third stands there by now. */
  private void turn(ShopBookFile from, ShopBookFile to) {
    if (book.filter(b -> isSame(b.text(), from.text())).isPresent()) {
      put(to);
    }
  }

  private static boolean isSame(ShopBookText a, ShopBookText b) {
    return a.text().equals(b.text());
  }

  private void put(ShopBookFile next) {
    show(next);
    ShopBookFiles.write(next, writer, this::written, why -> notWritten(next, why));
  }

  private void show(ShopBookFile now) {
    book = Optional.of(now);
    form = Optional.of(BookForm.of(now.text()));
  }

  /** The job is worked out by what lies on disk, so it is told only now. */
  private void written(ShopBookFile now) {
    onDisk = book.equals(Optional.of(now)) ? book : onDisk;
    changed.fire();
  }

  /** What could not be written is not shown as if it had been. */
  private void notWritten(ShopBookFile wanted, Message why) {
    if (book.equals(Optional.of(wanted))) {
      onDisk.ifPresent(this::show);
    }
    changed.fire();
    desk.refuse(why);
  }
}
