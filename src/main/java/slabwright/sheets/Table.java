package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;

/**
 * A table: a head that is repeated where the table goes on, rows that are never cut, and a total.
 *
 * @param total a last row in bold under a strong rule; empty for none
 */
record Table(List<Column> columns, List<List<Cell>> rows, List<Cell> total) implements Block {
  private static final int SHORT = 6;

  Table {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    total = List.copyOf(total);
    for (List<Cell> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException("a row has another number of fields than the table");
      }
    }
  }

  static Table of(List<Column> columns, List<List<Cell>> rows) {
    return new Table(columns, rows, List.of());
  }

  @Override
  public List<Slice> slices(Type type, double width) {
    TableRow row = TableRow.of(this, type, width);
    List<Slice> slices = new ArrayList<>(again(type, width));
    for (int i = 0; i < rows.size(); i++) {
      slices.add(row.of(rows.get(i), keeps(i)));
    }
    if (!total.isEmpty()) {
      slices.add(row.total(total));
    }
    slices.add(Slice.space(2 * type.k()));
    return slices;
  }

  /** Short tables stay together; of long ones no single row is left behind. */
  private boolean keeps(int i) {
    boolean last = i == rows.size() - 1;
    if (last) {
      return !total.isEmpty();
    }
    return rows.size() <= SHORT || i == 0 || i == rows.size() - 2;
  }

  @Override
  public List<Slice> again(Type type, double width) {
    boolean bare = columns.stream().allMatch(c -> c.head().isEmpty());
    return bare ? List.of() : List.of(TableRow.of(this, type, width).head());
  }
}
