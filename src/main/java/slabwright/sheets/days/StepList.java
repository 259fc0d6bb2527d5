package slabwright.sheets.days;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.work.days.DayTable;
import slabwright.work.days.KeepOutPeriod;
import slabwright.work.days.PersonRota;
import slabwright.work.days.TimeSpan;

/**
 * The steps of the day plan to tick off: when, who, when the next may follow, and what a late start
 * does.
 *
 * @param dated whether the days are real dates
 * @param rota who does which step
 */
record StepList(DayTable table, boolean dated, PersonRota rota, SheetContext context) {
  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    if (!table.others().isEmpty()) {
      blocks.add(new Heading(context.say("sheets.step-list.others-stay-off")));
      blocks.add(others());
      blocks.add(new Gap(3));
    }
    blocks.add(new Heading(context.say("sheets.step-list.step-by-step")));
    blocks.add(steps());
    blocks.add(new Paragraph(context.say("sheets.step-list.how-to-read")));
    return blocks;
  }

  private TableBlock others() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (KeepOutPeriod o : table.others()) {
      TimeSpan told = o.span().toldAsShut();
      List<String> times =
          List.of(
              context.times().moment(told.start(), dated),
              context.times().moment(told.end(), dated));
      rows.add(
          List.of(
              TableCell.of(o.area()),
              TableCell.of(
                  o.reasons().stream().map(context::say).collect(Collectors.joining(", "))),
              TableCell.of(times.get(0)),
              TableCell.of(times.get(1))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.narrow(context.say("sheets.step-list.where")),
            TableColumn.words(context.say("sheets.step-list.why")),
            TableColumn.number(context.say("sheets.step-list.from")),
            TableColumn.number(context.say("sheets.step-list.until"))),
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
                TableColumn.words(context.say("sheets.step-list.step")),
                TableColumn.number(context.say("sheets.step-list.starts")),
                TableColumn.number(context.say("sheets.step-list.ends")),
                TableColumn.number(context.say("sheets.step-list.takes")),
                TableColumn.number(context.say("sheets.step-list.crew")),
                TableColumn.number(context.say("sheets.step-list.next-from")),
                TableColumn.number(context.say("sheets.step-list.recoat-until"))));
    DayTable.DELAYS.forEach(
        d ->
            columns.add(
                TableColumn.number(
                    context.say("sheets.step-list.late-ends", context.times().days(d)))));
    return TableBlock.of(columns, rows);
  }

  private List<TableCell> row(DayTable.Line l) {
    TimeSpan told = new TimeSpan(l.starts(), l.ends()).toldAsWork();
    List<String> times =
        List.of(
            context.times().moment(told.start(), dated), context.times().moment(told.end(), dated));
    List<TableCell> cells =
        new ArrayList<>(
            List.of(
                new TableCell.Tick(),
                l.critical() ? TableCell.bold("● " + name(l)) : TableCell.of(name(l)),
                TableCell.of(times.get(0)),
                TableCell.of(times.get(1)),
                TableCell.of(context.times().works(l.works()).replace(' ', '\u00a0')),
                TableCell.of(String.join("", rota.letters(l.id()))),
                TableCell.of(l.nextFrom().map(t -> context.times().from(t, dated)).orElse("")),
                TableCell.of(l.nextUntil().map(t -> context.times().until(t, dated)).orElse(""))));
    for (int i = 0; i < DayTable.DELAYS.size(); i++) {
      cells.add(TableCell.of(i < l.late().size() ? late(l.late().get(i)) : ""));
    }
    return cells;
  }

  private String name(DayTable.Line l) {
    String name = context.say(l.name());
    return l.area().isEmpty() ? name : name + " · " + l.area();
  }

  private String late(DayTable.Late late) {
    String end = late.later().map(this::later).orElse("✕ " + context.say(late.why()));
    int coats = late.abrade().size();
    return coats == 0 ? end : context.say("sheets.step-list.late-abrade", end, coats);
  }

  private String later(Duration d) {
    return d.isZero()
        ? context.say("sheets.step-list.no-change")
        : context.say("sheets.step-list.later", context.times().wait(d));
  }
}
