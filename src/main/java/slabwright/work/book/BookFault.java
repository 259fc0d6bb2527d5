package slabwright.work.book;

import slabwright.units.Message;

/**
 * Something about a line of the shop book.
 *
 * @param line counted from 1
 * @param sentence what is wrong and what to do
 */
public record BookFault(int line, Message sentence) {
  /** The sentence with its line. */
  public Message said() {
    return Message.of("work.book-fault.line", line, sentence);
  }
}
