package slabwright.work.book;

/**
 * Something about a line of the shop book.
 *
 * @param line counted from 1
 * @param sentence what is wrong and what to do
 */
public record BookFault(int line, String sentence) {
  @Override
  public String toString() {
    return "line " + line + ": " + sentence;
  }
}
