package slabwright.sheets.prep;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import slabwright.figures.PassageWords;
import slabwright.figures.ReachCurveLabels;
import slabwright.figures.WaysWords;
import slabwright.floor.CutIn;
import slabwright.floor.EdgeStrip;
import slabwright.floor.EdgeTally;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.LevelStep;
import slabwright.floor.MachineShare;
import slabwright.floor.TrenchWork;
import slabwright.floor.reach.MachinePassage;
import slabwright.floor.reach.PocketAccess;
import slabwright.floor.reach.ReachAnalysis;
import slabwright.floor.reach.ReachCurve;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.sheets.quantities.QuantitiesSheet;
import slabwright.site.Doorway;
import slabwright.site.EdgeClass;
import slabwright.site.Machine;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.work.top.TopTakeoff;

/** The tables of sheet 2 that go with the plan: machines, ways, trenches, edges, tops. */
final class PrepTables {
  private final ReachAnalysis ways;
  private final FloorTakeoff takeoff;
  private final SheetContext context;

  PrepTables(ReachAnalysis ways, SheetContext context) {
    this.ways = ways;
    this.takeoff = ways.takeoff();
    this.context = context;
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    QuantitiesSheet.section(blocks, context.say("sheets.prep-tables.who-grinds-what"), machines());
    reach(blocks);
    QuantitiesSheet.section(blocks, context.say("sheets.prep-tables.passages"), passages());
    QuantitiesSheet.section(blocks, context.say("sheets.prep-tables.trenches"), trenches());
    QuantitiesSheet.section(blocks, context.say("sheets.prep-tables.thresholds"), thresholds());
    QuantitiesSheet.section(blocks, context.say("sheets.prep-tables.level-changes"), levels());
    QuantitiesSheet.section(blocks, context.say("sheets.prep-tables.edges-by-class"), edges());
    QuantitiesSheet.section(blocks, context.say("sheets.prep-tables.counts"), counts());
    QuantitiesSheet.section(blocks, context.say("sheets.prep-tables.cut-in"), cutIns());
    QuantitiesSheet.section(blocks, context.say("sheets.prep-tables.tops"), tops());
    return blocks;
  }

  private TableBlock machines() {
    List<MachineShare> found = ways.takeoff().asFound().shares();
    List<MachineShare> level = takeoff.levelled().shares();
    List<List<TableCell>> rows = new ArrayList<>();
    for (int i = 0; i < found.size(); i++) {
      rows.add(
          List.of(
              new TableCell.Ringed(Integer.toString(i + 1)),
              TableCell.of(found.get(i).machine().name()),
              TableCell.of(context.bareArea(found.get(i).area())),
              TableCell.of(context.bareArea(level.get(i).area()))));
    }
    rows.add(
        List.of(
            TableCell.of(""),
            TableCell.of(context.say("sheets.prep-tables.by-hand")),
            TableCell.of(context.bareArea(takeoff.asFound().hand().area())),
            TableCell.of(context.bareArea(takeoff.levelled().hand().area()))));
    String all = context.bareArea(takeoff.ground().area());
    return new TableBlock(
        List.of(
            TableColumn.narrow(""),
            TableColumn.words(context.say("sheets.prep-tables.largest-first", context.areaUnit())),
            TableColumn.number(context.say("sheets.prep-tables.as-found")),
            TableColumn.number(context.say("sheets.prep-tables.trenches-level"))),
        rows,
        List.of(
            TableCell.of(""),
            TableCell.of(
                takeoff.isGrindingChosen()
                    ? context.say("sheets.prep-tables.to-be-ground")
                    : context.say("sheets.quantities-sheet.if-ground")),
            TableCell.of(all),
            TableCell.of(all)));
  }

  private void reach(List<Block> blocks) {
    List<ReachCurve> curves = ways.curves();
    WaysWords words = new WaysWords(context.units(), context.words());
    if (!curves.isEmpty()) {
      blocks.add(new Heading(context.say("sheets.prep-tables.reach")));
      blocks.add(new ReachBlock(curves, ReachCurveLabels.machines(takeoff), context));
      blocks.add(
          new Paragraph(ReachCurveLabels.about(takeoff, context.words()) + drops(words, curves)));
      blocks.add(new Gap(3));
    }
    if (!ways.pockets().isEmpty()) {
      QuantitiesSheet.section(
          blocks, context.say("sheets.prep-tables.ways-to-pockets"), pockets(words));
    }
  }

  private static String drops(WaysWords words, List<ReachCurve> curves) {
    return curves.stream()
        .flatMap(c -> words.drops(c).stream().limit(3))
        .map(s -> " " + s)
        .collect(Collectors.joining());
  }

  private TableBlock pockets(WaysWords words) {
    List<List<TableCell>> rows = new ArrayList<>();
    PocketNumbers numbers = new PocketNumbers(ways, context.units(), context.words());
    for (PocketAccess way : ways.pockets()) {
      rows.add(
          List.of(
              new TableCell.Ringed(numbers.of(way.pocket())),
              TableCell.of(words.way(way)),
              TableCell.of(context.bareArea(way.pocket().area()))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.narrow(""),
            TableColumn.words(context.say("sheets.prep-tables.pocket")),
            TableColumn.number(context.areaUnit())),
        rows);
  }

  private TableBlock passages() {
    PassageWords say = new PassageWords(takeoff.area(), context.units(), context.words());
    List<Machine> machines = ReachCurveLabels.machines(takeoff);
    List<List<TableCell>> rows = new ArrayList<>();
    for (MachinePassage p : ways.passages()) {
      rows.add(
          List.of(
              new TableCell.Ringed(Integer.toString(machines.indexOf(p.machine()) + 1)),
              TableCell.of(say.place(p)),
              TableCell.of(context.length(p.width())),
              TableCell.of(say.verdict(p))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.narrow(""),
            TableColumn.words(context.say("sheets.prep-tables.passage")),
            TableColumn.number(context.say("sheets.prep-tables.passage-clear")),
            TableColumn.words(context.say("sheets.prep-tables.passage-verdict"))),
        rows);
  }

  private TableBlock trenches() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (TrenchWork t : TrenchWork.of(takeoff)) {
      rows.add(
          List.of(
              TableCell.of(
                  context.say(
                      "sheets.prep-tables.trench-state", t.mark().name(), t.state(), t.due())),
              TableCell.of(t.length().isPresent() ? context.length(t.length().getAsDouble()) : "–"),
              TableCell.of(t.width().isPresent() ? context.length(t.width().getAsDouble()) : "–"),
              TableCell.of(t.off().isPresent() ? context.length(t.off().getAsDouble()) : "–"),
              TableCell.of(
                  t.volume().isPresent()
                      ? QuantityFormat.volume(t.volume().getAsDouble(), context.units())
                      : "–"),
              TableCell.of(context.bareArea(t.area())),
              TableCell.of(context.bareArea(t.handFound())),
              TableCell.of(context.bareArea(t.handLevel()))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.words(context.say("sheets.prep-tables.trench")),
            TableColumn.number(context.say("sheets.prep-tables.length")),
            TableColumn.number(context.say("sheets.prep-tables.width")),
            TableColumn.number(context.say("sheets.prep-tables.off")),
            TableColumn.number(context.say("sheets.prep-tables.volume")),
            TableColumn.number(context.areaUnit()),
            TableColumn.number(context.say("sheets.prep-tables.by-hand")),
            TableColumn.number(context.say("sheets.prep-tables.once-level"))),
        rows);
  }

  private TableBlock thresholds() {
    List<List<TableCell>> rows = new ArrayList<>();
    List<EdgeStrip> strips = ways.strips();
    PassageWords say = new PassageWords(takeoff.area(), context.units(), context.words());
    for (Doorway d : takeoff.area().doorways()) {
      double strip =
          strips.stream()
              .filter(s -> s.edge().filter(e -> e.id().equals(d.id())).isPresent())
              .mapToDouble(EdgeStrip::area)
              .sum();
      rows.add(
          List.of(
              TableCell.of(
                  d.wayIn()
                      ? context.say("sheets.prep-tables.way-in", say.doorway(d))
                      : context.say("sheets.prep-tables.shut", say.doorway(d))),
              TableCell.of(context.length(d.clear())),
              TableCell.of(d.wayIn() ? "" : context.bareArea(strip))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.words(context.say("sheets.prep-tables.doorway")),
            TableColumn.number(context.say("sheets.prep-tables.width")),
            TableColumn.number(context.say("sheets.prep-tables.strip", context.areaUnit()))),
        rows);
  }

  private TableBlock levels() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (LevelStep s : LevelStep.of(takeoff)) {
      rows.add(
          List.of(
              TableCell.of(s.mark().name()),
              TableCell.of(context.length(s.length())),
              TableCell.of(context.length(s.height()))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.words(context.say("sheets.prep-tables.line")),
            TableColumn.number(context.say("sheets.prep-tables.length")),
            TableColumn.number(context.say("sheets.prep-tables.step"))),
        rows);
  }

  private TableBlock edges() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (EdgeClass kind : EdgeClass.values()) {
      long runs = takeoff.edges().stream().filter(e -> e.kind() == kind).count();
      if (runs > 0) {
        rows.add(
            List.of(
                TableCell.of(say(kind.label())),
                TableCell.of(Long.toString(runs)),
                TableCell.of(context.length(takeoff.edgeLength(kind)))));
      }
    }
    return new TableBlock(
        List.of(
            TableColumn.words(context.say("sheets.prep-tables.meets")),
            TableColumn.number(context.say("sheets.prep-tables.number")),
            TableColumn.number(context.say("sheets.prep-tables.edge"))),
        rows,
        List.of(
            TableCell.of(context.say("sheets.prep-tables.total")),
            TableCell.of(""),
            TableCell.of(context.length(takeoff.edgeLength()))));
  }

  private String say(Message message) {
    return context.words().say(message);
  }

  private TableBlock counts() {
    EdgeTally tally = ways.takeoff().tally();
    List<List<TableCell>> rows = new ArrayList<>();
    rows.add(
        row(context.say("sheets.prep-tables.inside-corners"), tally.corners().inside().size(), ""));
    rows.add(
        row(
            context.say("sheets.prep-tables.outside-corners"),
            tally.corners().outside().size(),
            ""));
    rows.add(row(context.say("sheets.prep-tables.free-standing-ends"), tally.ends().size(), ""));
    tally.lines().stream()
        .filter(l -> l.length() > 0)
        .forEach(l -> rows.add(row(say(l.kind().label()), l.count(), context.length(l.length()))));
    for (EdgeTally.Meeting m : tally.transitions()) {
      rows.add(
          List.of(
              TableCell.of(context.say("sheets.prep-tables.transition", m.below(), m.above())),
              TableCell.of(""),
              TableCell.of(context.length(m.length()))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.words(""),
            TableColumn.number(context.say("sheets.prep-tables.number")),
            TableColumn.number(context.say("sheets.prep-tables.length"))),
        rows);
  }

  private static List<TableCell> row(String words, int count, String length) {
    return List.of(
        TableCell.of(words), TableCell.of(Integer.toString(count)), TableCell.of(length));
  }

  private TableBlock cutIns() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (CutIn c : CutIn.values()) {
      rows.add(
          List.of(TableCell.of(say(c.words())), TableCell.of(context.length(c.length(takeoff)))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.words(context.say("sheets.prep-tables.product")),
            TableColumn.number(context.say("sheets.prep-tables.length"))),
        rows);
  }

  private TableBlock tops() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (TopTakeoff t : TopTakeoff.of(takeoff)) {
      rows.add(
          List.of(
              new TableCell.Tick(),
              TableCell.of(
                  t.steps() > 1
                      ? context.say("sheets.prep-tables.steps", t.name(), t.steps())
                      : t.name()),
              TableCell.of(context.bareArea(t.face())),
              TableCell.of(context.length(t.edgeLength())),
              TableCell.of(context.length(t.thickness()))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.narrow(""),
            TableColumn.words(context.say("sheets.prep-tables.top-or-steps")),
            TableColumn.number(context.say("sheets.prep-tables.faces", context.areaUnit())),
            TableColumn.number(context.say("sheets.prep-tables.edges")),
            TableColumn.number(context.say("sheets.prep-tables.thick"))),
        rows);
  }
}
