package slabwright.sheets.quantities;

import java.util.ArrayList;
import java.util.List;
import slabwright.sheets.days.StopTable;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.site.Exposure;
import slabwright.units.Message;
import slabwright.work.AreaWorkPlan;
import slabwright.work.prep.ExposureChange;
import slabwright.work.prep.PrepPlan;
import slabwright.work.prep.PrepStep;
import slabwright.work.prep.ZoneHours;

/** How the floor is ground: what shall show, with which bond, step by step and zone by zone. */
final class PrepQuantities {
  private final AreaWorkPlan work;
  private final PrepPlan prep;
  private final SheetContext context;

  PrepQuantities(AreaWorkPlan work, SheetContext context) {
    this.work = work;
    this.prep = work.prep();
    this.context = context;
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>(new StopTable(work.stops(), context).blocks());
    blocks.add(new Heading(context.say("sheets.prep-quantities.aggregate")));
    blocks.add(new Paragraph(wanted()));
    if (!prep.steps().isEmpty()) {
      blocks.add(new Paragraph(said(prep.bond().sentence())));
    }
    QuantitiesSheet.section(
        blocks, context.say("sheets.prep-quantities.looks-different"), changes());
    QuantitiesSheet.section(blocks, context.say("sheets.prep-quantities.prep-steps"), steps());
    QuantitiesSheet.section(blocks, context.say("sheets.prep-quantities.by-zone"), zones());
    return blocks;
  }

  private String said(Message m) {
    return context.words().say(m);
  }

  private String wanted() {
    String word = work.floor().prep().wanted().map(this::word).orElse("");
    return prep.chart()
        .map(c -> context.say("sheets.prep-quantities.wanted", word, c.before2017(), c.since2017()))
        .orElseGet(() -> context.say("sheets.prep-quantities.not-chosen"));
  }

  private String word(Exposure e) {
    return switch (e) {
      case CREAM -> context.say("sheets.prep-quantities.cream");
      case FINE -> context.say("sheets.prep-quantities.fine");
      case MEDIUM -> context.say("sheets.prep-quantities.medium");
      case COARSE -> context.say("sheets.prep-quantities.coarse");
    };
  }

  private TableBlock changes() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (ExposureChange c : prep.changes()) {
      rows.add(
          List.of(
              TableCell.bold(said(c.zone())),
              TableCell.of(said(c.looks()) + " → " + said(c.dye()))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.narrow(context.say("sheets.prep-quantities.zone")),
            TableColumn.words(context.say("sheets.prep-quantities.looks"))),
        rows);
  }

  private TableBlock steps() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (PrepStep s : prep.steps()) {
      rows.add(
          List.of(
              TableCell.of(said(s.name())),
              TableCell.of(context.bareArea(s.machine())),
              TableCell.of(said(s.machineTime().text(context.times()::duration))),
              TableCell.of(context.bareArea(s.hand())),
              TableCell.of(said(s.handTime().text(context.times()::duration)))));
    }
    return new TableBlock(
        List.of(
            TableColumn.words(context.say("sheets.prep-quantities.step")),
            TableColumn.number(context.say("sheets.prep-quantities.machine", context.areaUnit())),
            TableColumn.number(context.say("sheets.prep-quantities.time")),
            TableColumn.number(context.say("sheets.prep-quantities.hand", context.areaUnit())),
            TableColumn.number(context.say("sheets.prep-quantities.time"))),
        rows,
        List.of(
            TableCell.of(context.say("sheets.prep-quantities.all-steps")),
            TableCell.of(""),
            TableCell.of(said(prep.machineTime().text(context.times()::duration))),
            TableCell.of(""),
            TableCell.of(said(prep.handTime().text(context.times()::duration)))));
  }

  private TableBlock zones() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (ZoneHours z : prep.byZone()) {
      rows.add(
          List.of(
              TableCell.of(
                  context.say(
                      "sheets.prep-quantities.name-and-kind",
                      z.zone().name(),
                      z.zone().kind().word())),
              TableCell.of(context.bareArea(z.zone().machine())),
              TableCell.of(said(z.machine().text(context.times()::duration))),
              TableCell.of(context.bareArea(z.zone().hand())),
              TableCell.of(said(z.hand().text(context.times()::duration)))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.words(context.say("sheets.prep-quantities.zone")),
            TableColumn.number(context.say("sheets.prep-quantities.machine", context.areaUnit())),
            TableColumn.number(context.say("sheets.prep-quantities.time")),
            TableColumn.number(context.say("sheets.prep-quantities.hand", context.areaUnit())),
            TableColumn.number(context.say("sheets.prep-quantities.time"))),
        rows);
  }
}
