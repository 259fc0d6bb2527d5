package slabwright.sheets.quantities;

import java.time.Duration;
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
import slabwright.work.book.Figure;
import slabwright.work.prep.ExposureChange;
import slabwright.work.prep.PrepPlan;
import slabwright.work.prep.PrepStep;
import slabwright.work.prep.PrepZone;
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
    if (prep.chart().isPresent()) {
      QuantitiesSheet.section(blocks, context.say("sheets.prep-quantities.by-zone"), zones());
    }
    return blocks;
  }

  private String said(Message m) {
    return context.words().say(m);
  }

  /** Where nothing is done there is no number, for a nought reads like one that was worked out. */
  private TableCell area(double mm2) {
    return TableCell.of(
        mm2 == 0 ? context.say("sheets.prep-quantities.none") : context.bareArea(mm2));
  }

  private TableCell time(Figure<Duration> time) {
    boolean none = time.maybe().filter(Duration::isZero).isPresent();
    return TableCell.of(
        none
            ? context.say("sheets.prep-quantities.none")
            : said(time.text(context.times()::duration)));
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
    for (List<ExposureChange> same : Crowds.of(prep.changes(), c -> List.of(c.looks(), c.dye()))) {
      ExposureChange c = same.get(0);
      String zone = many(said(c.zone()), same.size());
      rows.add(
          List.of(TableCell.bold(zone), TableCell.of(said(c.looks()) + " → " + said(c.dye()))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.narrow(context.say("sheets.prep-quantities.zone")),
            TableColumn.words(context.say("sheets.prep-quantities.looks"))),
        rows);
  }

  private TableBlock steps() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (List<PrepStep> same : Crowds.of(prep.steps(), PrepStep::kind)) {
      rows.add(
          row(
              many(said(same.get(0).name()), same.size()),
              same.stream().mapToDouble(PrepStep::machine).sum(),
              sum(same.stream().map(PrepStep::machineTime).toList()),
              same.stream().mapToDouble(PrepStep::hand).sum(),
              sum(same.stream().map(PrepStep::handTime).toList())));
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
            time(prep.machineTime()),
            TableCell.of(""),
            time(prep.handTime())));
  }

  private List<TableCell> row(
      String what, double machine, Figure<Duration> runs, double hand, Figure<Duration> takes) {
    return List.of(TableCell.of(what), area(machine), time(runs), area(hand), time(takes));
  }

  private String many(String first, int count) {
    return count == 1 ? first : context.say("sheets.prep-quantities.and-more", first, count - 1);
  }

  private static Figure<Duration> sum(List<Figure<Duration>> times) {
    return Figure.all(times).map(l -> l.stream().reduce(Duration.ZERO, Duration::plus));
  }

  private TableBlock zones() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (List<ZoneHours> same : Crowds.of(prep.byZone(), z -> z.zone().kind())) {
      PrepZone first = same.get(0).zone();
      String name =
          same.size() == 1
              ? context.say(
                  "sheets.prep-quantities.name-and-kind", first.name(), first.kind().word())
              : context.say("sheets.quantities-sheet.crowd", first.kind().word(), same.size());
      rows.add(
          row(
              name,
              same.stream().mapToDouble(z -> z.zone().machine()).sum(),
              sum(same.stream().map(ZoneHours::machine).toList()),
              same.stream().mapToDouble(z -> z.zone().hand()).sum(),
              sum(same.stream().map(ZoneHours::hand).toList())));
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
