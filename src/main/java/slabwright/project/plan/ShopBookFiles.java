package slabwright.project.plan;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import slabwright.store.AtomicFile;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.work.book.ShopBookFile;
import slabwright.work.book.ShopBookText;

/** The shop book that a plan is worked out by, found and written. */
public final class ShopBookFiles {
  private ShopBookFiles() {}

  /**
   * The book beside a plan, else the person's own, else the example.
   *
   * @param home the person's own folder
   */
  public static Result<ShopBookFile> find(Path planFolder, Path home) {
    try {
      return ShopBookFile.find(planFolder, home);
    } catch (IOException e) {
      return Result.refused(
          Message.of("project.plan.book-unreadable", String.valueOf(e.getMessage())));
    }
  }

  /**
   * A book with a new text, to lie where the old one did; the example is never written, a book
   * beside the plan takes its place.
   */
  public static ShopBookFile changed(ShopBookFile old, ShopBookText text, Path planFolder) {
    Path file = old.from().orElseGet(() -> planFolder.resolve(ShopBookFile.NAME));
    return new ShopBookFile(text, Optional.of(file));
  }

  /**
   * Writes a book soon.
   *
   * @param fault told why it can't be
   */
  public static void write(
      ShopBookFile book,
      BackgroundWriter writer,
      Consumer<ShopBookFile> done,
      Consumer<Message> fault) {
    Path file = book.from().orElseThrow();
    writer.write(
        file,
        () -> {
          AtomicFile.write(file, book.text().text().getBytes(StandardCharsets.UTF_8));
          return book;
        },
        done,
        why -> fault.accept(Message.of("project.plan.book-not-written", file.toString(), why)));
  }
}
