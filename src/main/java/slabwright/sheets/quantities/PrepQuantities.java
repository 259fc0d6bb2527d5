package slabwright.sheets.quantities;

import java.util.ArrayList;
import java.util.List;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.site.Exposure;
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
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading("Aggregate to show"));
    blocks.add(new Paragraph(wanted()));
    if (!prep.steps().isEmpty()) {
      blocks.add(new Paragraph(prep.bond().sentence()));
    }
    QuantitiesSheet.section(blocks, "Where it will look different", changes());
    QuantitiesSheet.section(blocks, "Prep, step by step", steps());
    QuantitiesSheet.section(blocks, "Grinding by zone, all passes", zones());
    return blocks;
  }

  private String wanted() {
    String word = work.floor().prep().wanted().map(PrepQuantities::word).orElse("");
    return prep.chart()
        .map(
            c ->
                "Wanted: %s. Chart before 2017: %s. Chart since 2017: %s."
                    .formatted(word, c.before2017(), c.since2017()))
        .orElse("How much aggregate shall show is not chosen yet: no grinding is planned.");
  }

  private static String word(Exposure e) {
    return switch (e) {
      case CREAM -> "cream";
      case FINE -> "fine (salt and pepper)";
      case MEDIUM -> "medium";
      case COARSE -> "coarse";
    };
  }

  private TableBlock changes() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (ExposureChange c : prep.changes()) {
      rows.add(List.of(TableCell.bold(c.zone()), TableCell.of(c.looks() + " → " + c.dye())));
    }
    return TableBlock.of(
        List.of(TableColumn.narrow("zone"), TableColumn.words("looks → what dye does")), rows);
  }

  private TableBlock steps() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (PrepStep s : prep.steps()) {
      rows.add(
          List.of(
              TableCell.of(s.name()),
              TableCell.of(context.bareArea(s.machine())),
              TableCell.of(s.machineTime().text(context.times()::duration)),
              TableCell.of(context.bareArea(s.hand())),
              TableCell.of(s.handTime().text(context.times()::duration))));
    }
    return new TableBlock(
        List.of(
            TableColumn.words("step"),
            TableColumn.number("machine, " + context.areaUnit()),
            TableColumn.number("time"),
            TableColumn.number("hand, " + context.areaUnit()),
            TableColumn.number("time")),
        rows,
        List.of(
            TableCell.of("All steps"),
            TableCell.of(""),
            TableCell.of(prep.machineTime().text(context.times()::duration)),
            TableCell.of(""),
            TableCell.of(prep.handTime().text(context.times()::duration))));
  }

  private TableBlock zones() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (ZoneHours z : prep.byZone()) {
      rows.add(
          List.of(
              TableCell.of(z.zone().name() + " (" + z.zone().kind().word() + ")"),
              TableCell.of(context.bareArea(z.zone().machine())),
              TableCell.of(z.machine().text(context.times()::duration)),
              TableCell.of(context.bareArea(z.zone().hand())),
              TableCell.of(z.hand().text(context.times()::duration))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.words("zone"),
            TableColumn.number("machine, " + context.areaUnit()),
            TableColumn.number("time"),
            TableColumn.number("hand, " + context.areaUnit()),
            TableColumn.number("time")),
        rows);
  }
}
