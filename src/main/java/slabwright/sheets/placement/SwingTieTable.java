package slabwright.sheets.placement;

import java.util.ArrayList;
import java.util.List;
import slabwright.inlay.settingout.KnownCorner;
import slabwright.inlay.settingout.SettingOut;
import slabwright.inlay.settingout.SettingOutMethod;
import slabwright.inlay.settingout.SettingOutPoint;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.units.Message;

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
            TableColumn.words(context.say("sheets.swing-tie-table.panel-corner")),
            TableColumn.number(context.say("sheets.swing-tie-table.first-tape")),
            TableColumn.number(context.say("sheets.swing-tie-table.second-tape")),
            TableColumn.number("±")),
        rows);
  }

  private List<TableCell> fix(SettingOutPoint p) {
    if (p.fix() instanceof SettingOutMethod.SwingTies t) {
      return List.of(
          TableCell.of(tied(p.name(), t)),
          TableCell.of(from(t.first(), t.fromFirst())),
          TableCell.of(from(t.second(), t.fromSecond())),
          TableCell.of(error(t.error())));
    } else if (p.fix() instanceof SettingOutMethod.Offset o) {
      return List.of(
          TableCell.of(squared(p.name(), o)),
          TableCell.of(context.say("sheets.swing-tie-table.along", context.length(o.along()))),
          TableCell.of(context.say("sheets.swing-tie-table.out", context.length(o.out()))),
          TableCell.of(error(o.error())));
    }
    return List.of(
        TableCell.of(context.say("sheets.swing-tie-table.not-in-sight", p.name())),
        TableCell.of("–"),
        TableCell.of("–"),
        TableCell.of("–"));
  }

  private String tied(Message name, SettingOutMethod.SwingTies t) {
    int first = t.first().number();
    int second = t.second().number();
    return switch (t.side()) {
      case LEFT -> context.say("sheets.swing-tie-table.left", name, first, second);
      case RIGHT -> context.say("sheets.swing-tie-table.right", name, first, second);
    };
  }

  private String squared(Message name, SettingOutMethod.Offset o) {
    int first = o.first().number();
    int second = o.second().number();
    return switch (o.side()) {
      case LEFT -> context.say("sheets.swing-tie-table.square-left", name, first, second);
      case RIGHT -> context.say("sheets.swing-tie-table.square-right", name, first, second);
    };
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
            TableColumn.words(context.say("sheets.swing-tie-table.panel")),
            TableColumn.number(context.say("sheets.swing-tie-table.both-diagonals"))),
        rows);
  }
}
