package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import slabwright.site.Exposure;
import slabwright.work.AreaWork;
import slabwright.work.prep.ExposureChange;
import slabwright.work.prep.PrepPlan;
import slabwright.work.prep.PrepStep;
import slabwright.work.prep.ZoneHours;

/** How the floor is ground: what shall show, with which bond, step by step and zone by zone. */
final class PrepQuantities {
  private final AreaWork work;
  private final PrepPlan prep;
  private final SheetContext context;

  PrepQuantities(AreaWork work, SheetContext context) {
    this.work = work;
    this.prep = work.prep();
    this.context = context;
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading("Aggregate to show"));
    blocks.add(new Prose(wanted()));
    if (!prep.steps().isEmpty()) {
      blocks.add(new Prose(prep.bond().sentence()));
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

  private Table changes() {
    List<List<Cell>> rows = new ArrayList<>();
    for (ExposureChange c : prep.changes()) {
      rows.add(List.of(Cell.bold(c.zone()), Cell.of(c.looks() + " → " + c.dye())));
    }
    return Table.of(List.of(Column.narrow("zone"), Column.words("looks → what dye does")), rows);
  }

  private Table steps() {
    List<List<Cell>> rows = new ArrayList<>();
    for (PrepStep s : prep.steps()) {
      rows.add(
          List.of(
              Cell.of(s.name()),
              Cell.of(context.bareArea(s.machine())),
              Cell.of(s.machineTime().text(Words::time)),
              Cell.of(context.bareArea(s.hand())),
              Cell.of(s.handTime().text(Words::time))));
    }
    return new Table(
        List.of(
            Column.words("step"),
            Column.number("machine, " + context.areaUnit()),
            Column.number("time"),
            Column.number("hand, " + context.areaUnit()),
            Column.number("time")),
        rows,
        List.of(
            Cell.of("All steps"),
            Cell.of(""),
            Cell.of(prep.machineTime().text(Words::time)),
            Cell.of(""),
            Cell.of(prep.handTime().text(Words::time))));
  }

  private Table zones() {
    List<List<Cell>> rows = new ArrayList<>();
    for (ZoneHours z : prep.byZone()) {
      rows.add(
          List.of(
              Cell.of(z.zone().name() + " (" + z.zone().kind().word() + ")"),
              Cell.of(context.bareArea(z.zone().machine())),
              Cell.of(z.machine().text(Words::time)),
              Cell.of(context.bareArea(z.zone().hand())),
              Cell.of(z.hand().text(Words::time))));
    }
    return Table.of(
        List.of(
            Column.words("zone"),
            Column.number("machine, " + context.areaUnit()),
            Column.number("time"),
            Column.number("hand, " + context.areaUnit()),
            Column.number("time")),
        rows);
  }
}
