package slabwright.sheets.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slabwright.inlay.settingout.KnownCorner;
import slabwright.inlay.settingout.SettingOut;
import slabwright.inlay.settingout.SettingOutMethod;
import slabwright.inlay.settingout.SettingOutPoint;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;

/** How every panel corner is found with two tapes, and the diagonals that check it. */
record SwingTieTable(SettingOut settingOut, SheetContext context) {
  TableBlock ties() {
    List<List<TableCell>> rows = new ArrayList<>();
    int n = 0;
    for (SettingOutPoint p : settingOut.points()) {
      n++;
      List<TableCell> row = new ArrayList<>();
      row.add(new TableCell.Ringed(Integer.toString(n)));
      row.addAll(fix(p));
      rows.add(row);
    }
    return TableBlock.of(
        List.of(
            TableColumn.narrow(""),
            TableColumn.words("panel corner, side of the baseline"),
            TableColumn.number("first tape"),
            TableColumn.number("second tape"),
            TableColumn.number("±")),
        rows);
  }

  private List<TableCell> fix(SettingOutPoint p) {
    if (p.fix() instanceof SettingOutMethod.SwingTies t) {
      return List.of(
          TableCell.of(
              context.words().say(p.name()) + "; " + side(t.side(), t.first(), t.second())),
          TableCell.of(from(t.first(), t.fromFirst())),
          TableCell.of(from(t.second(), t.fromSecond())),
          TableCell.of(error(t.error())));
    } else if (p.fix() instanceof SettingOutMethod.Offset o) {
      return List.of(
          TableCell.of(
              context.words().say(p.name())
                  + "; square off, "
                  + side(o.side(), o.first(), o.second())),
          TableCell.of("along " + context.length(o.along())),
          TableCell.of("out " + context.length(o.out())),
          TableCell.of(error(o.error())));
    }
    return List.of(
        TableCell.of(
            context.words().say(p.name()) + ": not in sight of two corners; add a corner that is"),
        TableCell.of("–"),
        TableCell.of("–"),
        TableCell.of("–"));
  }

  private static String side(SettingOutMethod.Hand hand, KnownCorner first, KnownCorner second) {
    String word = hand.name().toLowerCase(Locale.ROOT);
    return word + " of " + first.number() + " → " + second.number();
  }

  private String from(KnownCorner corner, double length) {
    return corner.number() + ": " + context.length(length);
  }

  private String error(double mm) {
    return context.length(mm);
  }

  TableBlock diagonals() {
    List<List<TableCell>> rows = new ArrayList<>();
    settingOut
        .diagonals()
        .forEach(
            d ->
                rows.add(
                    List.of(
                        new TableCell.Tick(),
                        TableCell.of(d.panel()),
                        TableCell.of(context.length(d.length())))));
    return TableBlock.of(
        List.of(
            TableColumn.narrow(""),
            TableColumn.words("panel"),
            TableColumn.number("both diagonals measure")),
        rows);
  }
}
