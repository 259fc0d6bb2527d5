package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import slabwright.work.days.DayTable;
import slabwright.work.days.OthersOut;

/**
 * The steps of the day plan to tick off: when, who, when the next may follow, and what a late start
 * does.
 *
 * @param dated whether the days are real dates
 */
record StepList(DayTable table, boolean dated) {
  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    if (!table.others().isEmpty()) {
      blocks.add(new Heading("Other trades stay off"));
      blocks.add(others());
      blocks.add(new Gap(3));
    }
    blocks.add(new Heading("Step by step"));
    blocks.add(steps());
    blocks.add(
        new Prose(
            "● sets the end: each such step holds up the next. A late start is reckoned with all"
                + " other steps in the same order; a step that can wait says \"no change\";"
                + " \"abrade first\": a recoat window is missed and the floor is abraded before the"
                + " coat."));
    return blocks;
  }

  private Table others() {
    List<List<Cell>> rows = new ArrayList<>();
    for (OthersOut o : table.others()) {
      rows.add(
          List.of(
              Cell.of(o.area()),
              Cell.of(o.reason()),
              Cell.of(Words.moment(o.span().start(), dated)),
              Cell.of(Words.moment(o.span().end(), dated))));
    }
    return Table.of(
        List.of(
            Column.narrow("where"),
            Column.words("why"),
            Column.number("from"),
            Column.number("until")),
        rows);
  }

  private Table steps() {
    List<List<Cell>> rows = new ArrayList<>();
    for (DayTable.Line l : table.lines()) {
      rows.add(row(l));
    }
    List<Column> columns =
        new ArrayList<>(
            List.of(
                Column.narrow(""),
                Column.words("step"),
                Column.number("starts"),
                Column.number("ends"),
                Column.number("takes"),
                Column.number("crew"),
                Column.number("next from"),
                Column.number("recoat until")));
    DayTable.DELAYS.forEach(d -> columns.add(Column.number(Words.days(d) + " late: ends")));
    return Table.of(columns, rows);
  }

  private List<Cell> row(DayTable.Line l) {
    List<Cell> cells =
        new ArrayList<>(
            List.of(
                new Cell.Tick(),
                l.critical() ? Cell.bold("● " + name(l)) : Cell.of(name(l)),
                Cell.of(Words.moment(l.starts(), dated)),
                Cell.of(Words.moment(l.ends(), dated)),
                Cell.of(Words.time(l.works())),
                Cell.of(Integer.toString(l.people())),
                Cell.of(l.nextFrom().map(t -> Words.moment(t, dated)).orElse("")),
                Cell.of(l.nextUntil().map(t -> Words.moment(t, dated)).orElse(""))));
    for (int i = 0; i < DayTable.DELAYS.size(); i++) {
      cells.add(Cell.of(i < l.late().size() ? late(l.late().get(i)) : ""));
    }
    return cells;
  }

  private static String name(DayTable.Line l) {
    return l.area().isEmpty() ? l.name() : l.name() + " · " + l.area();
  }

  private static String late(DayTable.Late late) {
    String end =
        late.later()
            .map(d -> d.isZero() ? "no change" : Words.days(d) + " later")
            .orElse("✕ " + late.why());
    int abrade = late.abrade().size();
    return abrade == 0 ? end : end + ", abrade " + (abrade == 1 ? "first" : abrade + " coats");
  }
}
