package slabwright.sheets;

/**
 * One column of a table.
 *
 * @param end whether words stand against the right side, as numbers do
 * @param wide whether it takes the room that is left, and wraps first
 */
record Column(String head, boolean end, boolean wide) {
  static Column words(String head) {
    return new Column(head, false, true);
  }

  static Column number(String head) {
    return new Column(head, true, false);
  }

  static Column narrow(String head) {
    return new Column(head, false, false);
  }
}
