package slabwright.work.book;

/** The shop book that comes with the program, for tests of other rooms. */
public final class BookSamples {
  private BookSamples() {}

  public static ShopBookText text() {
    return ExampleBook.text();
  }

  public static ShopBook book() {
    return ExampleBook.book();
  }
}
