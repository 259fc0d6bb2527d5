package slabwright.sheets.prep;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import slabwright.figures.ReachCurveLabels;
import slabwright.figures.WaysWords;
import slabwright.floor.CutIn;
import slabwright.floor.EdgeStrip;
import slabwright.floor.EdgeTally;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.LevelStep;
import slabwright.floor.MachineShare;
import slabwright.floor.PocketAccess;
import slabwright.floor.ReachAnalysis;
import slabwright.floor.ReachCurve;
import slabwright.floor.TrenchWork;
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
import slabwright.units.Message;
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
    QuantitiesSheet.section(blocks, "Who grinds what", machines());
    reach(blocks);
    QuantitiesSheet.section(blocks, "Trenches", trenches());
    QuantitiesSheet.section(blocks, "Thresholds", thresholds());
    QuantitiesSheet.section(blocks, "Level changes, feathered by hand", levels());
    QuantitiesSheet.section(blocks, "Edges, by what they meet", edges());
    QuantitiesSheet.section(blocks, "Corners, joints and transitions", counts());
    QuantitiesSheet.section(blocks, "Cut-in, by product", cutIns());
    QuantitiesSheet.section(blocks, "Tops and steps, a job apart", tops());
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
            TableCell.of("by hand"),
            TableCell.of(context.bareArea(takeoff.asFound().hand().area())),
            TableCell.of(context.bareArea(takeoff.levelled().hand().area()))));
    String all = context.bareArea(takeoff.ground().area());
    return new TableBlock(
        List.of(
            TableColumn.narrow(""),
            TableColumn.words("largest first, " + context.areaUnit()),
            TableColumn.number("as found"),
            TableColumn.number("trenches level")),
        rows,
        List.of(
            TableCell.of(""), TableCell.of("To be ground"), TableCell.of(all), TableCell.of(all)));
  }

  private void reach(List<Block> blocks) {
    List<ReachCurve> curves = ways.curves();
    WaysWords words = new WaysWords(context.units());
    if (!curves.isEmpty()) {
      blocks.add(new Heading("How wide a machine reaches how far"));
      blocks.add(new ReachBlock(curves, ReachCurveLabels.machines(takeoff), context.units()));
      blocks.add(new Paragraph(ReachCurveLabels.about(takeoff) + drops(words, curves)));
      blocks.add(new Gap(3));
    }
    if (!ways.pockets().isEmpty()) {
      QuantitiesSheet.section(blocks, "Ways to the pockets", pockets(words));
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
            TableColumn.words("pocket"),
            TableColumn.number(context.areaUnit())),
        rows);
  }

  private TableBlock trenches() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (TrenchWork t : TrenchWork.of(takeoff)) {
      rows.add(
          List.of(
              TableCell.of(t.mark().name() + ", " + say(t.state()) + ": " + say(t.due())),
              TableCell.of(t.length().isPresent() ? context.length(t.length().getAsDouble()) : "–"),
              TableCell.of(t.width().isPresent() ? context.length(t.width().getAsDouble()) : "–"),
              TableCell.of(context.bareArea(t.area())),
              TableCell.of(context.bareArea(t.handFound())),
              TableCell.of(context.bareArea(t.handLevel()))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.words("trench"),
            TableColumn.number("length"),
            TableColumn.number("width"),
            TableColumn.number(context.areaUnit()),
            TableColumn.number("by hand"),
            TableColumn.number("once level")),
        rows);
  }

  private TableBlock thresholds() {
    List<List<TableCell>> rows = new ArrayList<>();
    List<EdgeStrip> strips = ways.strips();
    for (Doorway d : takeoff.area().doorways()) {
      double strip =
          strips.stream()
              .filter(s -> s.edge().filter(e -> e.id().equals(d.id())).isPresent())
              .mapToDouble(EdgeStrip::area)
              .sum();
      rows.add(
          List.of(
              TableCell.of(
                  d.name() + (d.wayIn() ? ": way in, the machine passes" : ": shut to machines")),
              TableCell.of(context.length(d.width().mm())),
              TableCell.of(d.wayIn() ? "" : context.bareArea(strip))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.words("doorway"),
            TableColumn.number("width"),
            TableColumn.number("strip, " + context.areaUnit())),
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
            TableColumn.words("line"), TableColumn.number("length"), TableColumn.number("step")),
        rows);
  }

  private TableBlock edges() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (EdgeClass kind : EdgeClass.values()) {
      long runs = takeoff.edges().stream().filter(e -> e.kind() == kind).count();
      if (runs > 0) {
        rows.add(
            List.of(
                TableCell.of(kind.word()),
                TableCell.of(Long.toString(runs)),
                TableCell.of(context.length(takeoff.edgeLength(kind)))));
      }
    }
    return new TableBlock(
        List.of(
            TableColumn.words("meets"), TableColumn.number("number"), TableColumn.number("edge")),
        rows,
        List.of(
            TableCell.of("Total"),
            TableCell.of(""),
            TableCell.of(context.length(takeoff.edgeLength()))));
  }

  private String say(Message message) {
    return context.words().say(message);
  }

  private TableBlock counts() {
    EdgeTally tally = ways.takeoff().tally();
    List<List<TableCell>> rows = new ArrayList<>();
    rows.add(row("inside corners", tally.corners().inside().size(), ""));
    rows.add(row("outside corners", tally.corners().outside().size(), ""));
    rows.add(row("free-standing ends", tally.ends().size(), ""));
    tally.lines().stream()
        .filter(l -> l.length() > 0)
        .forEach(l -> rows.add(row(l.kind().word(), l.count(), context.length(l.length()))));
    for (EdgeTally.Meeting m : tally.transitions()) {
      rows.add(
          List.of(
              TableCell.of(say(m.below()) + " to " + say(m.above())),
              TableCell.of(""),
              TableCell.of(context.length(m.length()))));
    }
    return TableBlock.of(
        List.of(TableColumn.words(""), TableColumn.number("number"), TableColumn.number("length")),
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
    return TableBlock.of(List.of(TableColumn.words("product"), TableColumn.number("length")), rows);
  }

  private TableBlock tops() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (TopTakeoff t : TopTakeoff.of(takeoff)) {
      rows.add(
          List.of(
              new TableCell.Tick(),
              TableCell.of(t.name() + (t.steps() > 1 ? ", " + t.steps() + " steps" : "")),
              TableCell.of(context.bareArea(t.face())),
              TableCell.of(context.length(t.edgeLength())),
              TableCell.of(context.length(t.thickness()))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.narrow(""),
            TableColumn.words("top or steps"),
            TableColumn.number("faces, " + context.areaUnit()),
            TableColumn.number("edges"),
            TableColumn.number("thick")),
        rows);
  }
}
