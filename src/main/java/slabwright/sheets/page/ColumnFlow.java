package slabwright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;
import slabwright.shape.Bounds;

/**
 * Sets blocks into columns, one after the other. What does not fit a column goes on in the next;
 * nothing is cut, no heading is left alone, and a table that goes on shows its head again.
 */
final class ColumnFlow {
  private final TypeSizes type;
  private final ColumnSource source;
  private Bounds column;
  private double y;
  private boolean fresh = true;

  /** Gives the columns to fill, one after the other, without end. */
  interface ColumnSource {
    Bounds next();

    /** How high a whole column is; some begin lower on their page. */
    double whole();

    void add(List<Ink> inks);
  }

  ColumnFlow(TypeSizes type, ColumnSource source) {
    this.type = type;
    this.source = source;
    this.column = source.next();
    this.y = column.minY();
  }

  void set(List<? extends Block> blocks) {
    List<Unit> whole = new ArrayList<>();
    for (Block block : blocks) {
      List<Slice> slices = block.slices(type, column.width());
      for (int i = 0; i < slices.size(); i++) {
        whole.add(new Unit(slices.get(i), block, i > 0));
      }
    }
    List<Unit> units = parted(whole);
    for (int i = 0; i < units.size(); i++) {
      boolean blank = units.get(i).slice().inks().isEmpty();
      double group = groupHeight(units, i);
      boolean full = (!fresh || isShort()) && y + group > column.maxY() + 1e-6;
      if (full && !blank && startsGroup(units, i)) {
        turn(units.get(i), group);
      }
      put(units.get(i).slice());
    }
  }

  private record Unit(Slice slice, Block block, boolean within) {
    /** The same with no need of what follows it. */
    Unit loose() {
      return new Unit(new Slice(slice.height(), false, slice.inks()), block, within);
    }
  }

  /** What would stay together and is higher than a whole column is parted inside its blocks. */
  private List<Unit> parted(List<Unit> units) {
    List<Unit> all = new ArrayList<>();
    while (all.size() < units.size()) {
      int from = all.size();
      boolean tall = groupHeight(units, from) > source.whole() + 1e-6;
      boolean goesOn = true;
      for (int i = from; i < units.size() && goesOn; i++) {
        Unit u = units.get(i);
        goesOn = u.slice().keep();
        all.add(tall && u.within() ? u.loose() : u);
      }
    }
    return all;
  }

  /** Whether nothing but blanks of its group stands before it. */
  private static boolean startsGroup(List<Unit> units, int i) {
    int before = i - 1;
    while (before >= 0 && units.get(before).slice().keep()) {
      if (!units.get(before).slice().inks().isEmpty()) {
        return false;
      }
      before--;
    }
    return true;
  }

  /** The height from this slice to the first that need not keep to the next; blanks need none. */
  private static double groupHeight(List<Unit> units, int from) {
    double height = 0;
    for (int i = from; i < units.size(); i++) {
      Slice s = units.get(i).slice();
      height += s.inks().isEmpty() ? 0 : s.height();
      if (!s.keep()) {
        return height;
      }
    }
    return height;
  }

  private boolean isShort() {
    return column.height() < source.whole() - 1e-6;
  }

  /** To the next column that holds the group, or a whole one. */
  private void turn(Unit unit, double group) {
    List<Slice> head = unit.within() ? unit.block().repeatedHead(type, column.width()) : List.of();
    double need = group + head.stream().mapToDouble(Slice::height).sum();
    do {
      column = source.next();
    } while (isShort() && need > column.height() + 1e-6);
    y = column.minY();
    fresh = true;
    head.forEach(this::put);
  }

  private void put(Slice slice) {
    if (slice.inks().isEmpty() && fresh) {
      return;
    }
    source.add(slice.at(column.minX(), y));
    y += slice.height();
    fresh = false;
  }
}
