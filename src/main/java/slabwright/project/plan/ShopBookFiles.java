package slabwright.project.plan;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
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
   * Writes a new text over the book it came from; the example is never written, a book beside the
   * plan takes its place.
   */
  public static Result<ShopBookFile> write(ShopBookFile old, ShopBookText text, Path planFolder) {
    Path file = old.from().orElseGet(() -> planFolder.resolve(ShopBookFile.NAME));
    try {
      AtomicFile.write(file, text.text().getBytes(StandardCharsets.UTF_8));
      return Result.ok(new ShopBookFile(text, Optional.of(file)));
    } catch (IOException e) {
      return Result.refused(
          Message.of(
              "project.plan.book-not-written", file.toString(), String.valueOf(e.getMessage())));
    }
  }
}
