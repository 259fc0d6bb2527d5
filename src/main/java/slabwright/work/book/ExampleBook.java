package slabwright.work.book;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The shop book that comes with the program: invented, and it says so. */
final class ExampleBook {
  private ExampleBook() {}

  /**
   * Its text, to copy and fill in.
   *
   * @throws UncheckedIOException when the program's own file can't be read
   */
  public static ShopBookText text() {
    try (InputStream in = ExampleBook.class.getResourceAsStream("example.book")) {
      return ShopBookText.parse(new String(in.readAllBytes(), StandardCharsets.UTF_8)).orThrow();
    } catch (IOException e) {
      throw new UncheckedIOException("the example shop book can't be read", e);
    }
  }

  public static ShopBook book() {
    return ShopBook.of(text());
  }
}
