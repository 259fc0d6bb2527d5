package slabwright.work.book;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * Finds the shop book: {@code shop.book} beside the plan, else {@code .slabwright/shop.book} in the
 * home folder, else the shipped example.
 *
 * @param text what was found
 * @param from the file; empty for the shipped example
 */
public record ShopBookFile(ShopBookText text, Optional<Path> from) {
  public static final String NAME = "shop.book";

  /** A book is written by hand; a larger file is something else. */
  private static final long MOST_BYTES = 8L << 20;

  /**
   * Looks beside the plan and at home. Bad when a file is there and is no shop book of a version
   * this program reads.
   *
   * @throws IOException when a file is there and can't be read
   */
  public static Result<ShopBookFile> find(Path planFolder, Path home) throws IOException {
    for (Path file : List.of(planFolder.resolve(NAME), home.resolve(".slabwright").resolve(NAME))) {
      if (Files.isRegularFile(file)) {
        return read(file);
      }
    }
    return Result.ok(new ShopBookFile(ExampleBook.text(), Optional.empty()));
  }

  /**
   * Reads one file.
   *
   * @throws IOException when it can't be read
   */
  public static Result<ShopBookFile> read(Path file) throws IOException {
    Result<ShopBookText> text = text(file);
    if (text instanceof Result.Refused<ShopBookText> bad) {
      return Result.refused(
          Message.of("work.shop-book-file.fault", file.toString(), bad.message()));
    }
    return text.map(t -> new ShopBookFile(t, Optional.of(file)));
  }

  /** The text of a file that may be none. */
  private static Result<ShopBookText> text(Path file) throws IOException {
    if (Files.size(file) > MOST_BYTES) {
      return Result.refused(Message.of("work.shop-book-text.this-is-no-shop-book"));
    }
    try {
      return ShopBookText.parse(Files.readString(file));
    } catch (CharacterCodingException e) {
      return Result.refused(Message.of("work.shop-book-file.not-utf-8"));
    }
  }
}
