package slabwright.sheets.page;

import java.util.ArrayList;
import java.util.List;

/**
 * A table: a head that is repeated where the table goes on, rows that are never cut, and a total.
 *
 * @param total a last row in bold under a strong rule; empty for none
 */
public record TableBlock(
    List<TableColumn> columns, List<List<TableCell>> rows, List<TableCell> total) implements Block {
  private static final int SHORT = 6;

  public TableBlock {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    total = List.copyOf(total);
    for (List<TableCell> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException("a row has another number of fields than the table");
      }
    }
  }

  public static TableBlock of(List<TableColumn> columns, List<List<TableCell>> rows) {
    return new TableBlock(columns, rows, List.of());
  }

  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    TableLayout row = TableLayout.of(this, type, width);
    List<Slice> slices = new ArrayList<>(repeatedHead(type, width));
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
  public List<Slice> repeatedHead(TypeSizes type, double width) {
    boolean bare = columns.stream().allMatch(c -> c.head().isEmpty());
    return bare ? List.of() : List.of(TableLayout.of(this, type, width).head());
  }
}
