package slabwright.sheets.days;

import java.util.ArrayList;
import java.util.List;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.sheets.page.Words;
import slabwright.work.days.DayTable;
import slabwright.work.days.KeepOutPeriod;

/**
 * The steps of the day plan to tick off: when, who, when the next may follow, and what a late start
 * does.
 *
 * @param dated whether the days are real dates
 */
record StepList(DayTable table, boolean dated, slabwright.words.Words words) {
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
        new Paragraph(
            "● sets the end: each such step holds up the next. A late start is reckoned with all"
                + " other steps in the same order; a step that can wait says \"no change\";"
                + " \"abrade first\": a recoat window is missed and the floor is abraded before the"
                + " coat."));
    return blocks;
  }

  private TableBlock others() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (KeepOutPeriod o : table.others()) {
      rows.add(
          List.of(
              TableCell.of(o.area()),
              TableCell.of(words.say(o.reason())),
              TableCell.of(Words.moment(o.span().start(), dated)),
              TableCell.of(Words.moment(o.span().end(), dated))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.narrow("where"),
            TableColumn.words("why"),
            TableColumn.number("from"),
            TableColumn.number("until")),
        rows);
  }

  private TableBlock steps() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (DayTable.Line l : table.lines()) {
      rows.add(row(l));
    }
    List<TableColumn> columns =
        new ArrayList<>(
            List.of(
                TableColumn.narrow(""),
                TableColumn.words("step"),
                TableColumn.number("starts"),
                TableColumn.number("ends"),
                TableColumn.number("takes"),
                TableColumn.number("crew"),
                TableColumn.number("next from"),
                TableColumn.number("recoat until")));
    DayTable.DELAYS.forEach(d -> columns.add(TableColumn.number(Words.days(d) + " late: ends")));
    return TableBlock.of(columns, rows);
  }

  private List<TableCell> row(DayTable.Line l) {
    List<TableCell> cells =
        new ArrayList<>(
            List.of(
                new TableCell.Tick(),
                l.critical() ? TableCell.bold("● " + name(l)) : TableCell.of(name(l)),
                TableCell.of(Words.moment(l.starts(), dated)),
                TableCell.of(Words.moment(l.ends(), dated)),
                TableCell.of(Words.time(l.works())),
                TableCell.of(Integer.toString(l.people())),
                TableCell.of(l.nextFrom().map(t -> Words.moment(t, dated)).orElse("")),
                TableCell.of(l.nextUntil().map(t -> Words.moment(t, dated)).orElse(""))));
    for (int i = 0; i < DayTable.DELAYS.size(); i++) {
      cells.add(TableCell.of(i < l.late().size() ? late(l.late().get(i)) : ""));
    }
    return cells;
  }

  private String name(DayTable.Line l) {
    String name = words.say(l.name());
    return l.area().isEmpty() ? name : name + " · " + l.area();
  }

  private String late(DayTable.Late late) {
    String end =
        late.later()
            .map(d -> d.isZero() ? "no change" : Words.days(d) + " later")
            .orElse("✕ " + words.say(late.why()));
    int abrade = late.abrade().size();
    return abrade == 0 ? end : end + ", abrade " + (abrade == 1 ? "first" : abrade + " coats");
  }
}
