package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slabwright.inlay.settingout.KnownCorner;
import slabwright.inlay.settingout.PointFix;
import slabwright.inlay.settingout.SetPoint;
import slabwright.inlay.settingout.SettingOut;

/** How every panel corner is found with two tapes, and the diagonals that check it. */
record TieTable(SettingOut settingOut, SheetContext context) {
  Table ties() {
    List<List<Cell>> rows = new ArrayList<>();
    int n = 0;
    for (SetPoint p : settingOut.points()) {
      n++;
      List<Cell> row = new ArrayList<>();
      row.add(new Cell.Ringed(Integer.toString(n)));
      row.addAll(fix(p));
      rows.add(row);
    }
    return Table.of(
        List.of(
            Column.narrow(""),
            Column.words("panel corner, side of the baseline"),
            Column.number("first tape"),
            Column.number("second tape"),
            Column.number("±")),
        rows);
  }

  private List<Cell> fix(SetPoint p) {
    if (p.fix() instanceof PointFix.SwingTies t) {
      return List.of(
          Cell.of(p.name() + "; " + side(t.side(), t.first(), t.second())),
          Cell.of(from(t.first(), t.fromFirst())),
          Cell.of(from(t.second(), t.fromSecond())),
          Cell.of(error(t.error())));
    } else if (p.fix() instanceof PointFix.Offset o) {
      return List.of(
          Cell.of(p.name() + "; square off, " + side(o.side(), o.first(), o.second())),
          Cell.of("along " + context.length(o.along())),
          Cell.of("out " + context.length(o.out())),
          Cell.of(error(o.error())));
    }
    return List.of(
        Cell.of(p.name() + ": not in sight of two corners; add a corner that is"),
        Cell.of("–"),
        Cell.of("–"),
        Cell.of("–"));
  }

  private static String side(PointFix.Hand hand, KnownCorner first, KnownCorner second) {
    String word = hand.name().toLowerCase(Locale.ROOT);
    return word + " of " + number(first) + " → " + number(second);
  }

  /** The bare number of "corner 3", which stands on the plan beside it. */
  private static String number(KnownCorner corner) {
    return corner.name().replace("corner ", "");
  }

  private String from(KnownCorner corner, double length) {
    return number(corner) + ": " + context.length(length);
  }

  private String error(double mm) {
    return context.length(mm);
  }

  Table diagonals() {
    List<List<Cell>> rows = new ArrayList<>();
    settingOut
        .diagonals()
        .forEach(
            d ->
                rows.add(
                    List.of(
                        new Cell.Tick(), Cell.of(d.panel()), Cell.of(context.length(d.length())))));
    return Table.of(
        List.of(Column.narrow(""), Column.words("panel"), Column.number("both diagonals measure")),
        rows);
  }
}
