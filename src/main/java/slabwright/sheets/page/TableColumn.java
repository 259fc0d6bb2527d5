package slabwright.sheets.page;

/**
 * One column of a table.
 *
 * @param end whether words stand against the right side, as numbers do
 * @param wide whether it takes the room that is left, and wraps first
 */
public record TableColumn(String head, boolean end, boolean wide) {
  public static TableColumn words(String head) {
    return new TableColumn(head, false, true);
  }

  public static TableColumn number(String head) {
    return new TableColumn(head, true, false);
  }

  public static TableColumn narrow(String head) {
    return new TableColumn(head, false, false);
  }
}
