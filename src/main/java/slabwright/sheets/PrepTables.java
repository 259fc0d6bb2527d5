package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import slabwright.floor.CutIn;
import slabwright.floor.EdgeStrip;
import slabwright.floor.EdgeTally;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.LevelStep;
import slabwright.floor.MachineShare;
import slabwright.floor.PocketWay;
import slabwright.floor.ReachCurve;
import slabwright.floor.TrenchWork;
import slabwright.floor.Ways;
import slabwright.site.Doorway;
import slabwright.site.EdgeClass;
import slabwright.work.top.TopFoot;

/** The tables of sheet 2 that go with the plan: machines, ways, trenches, edges, tops. */
final class PrepTables {
  private final Ways ways;
  private final FloorTakeoff takeoff;
  private final SheetContext context;

  PrepTables(Ways ways, SheetContext context) {
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

  private Table machines() {
    List<MachineShare> found = ways.takeoff().asFound().shares();
    List<MachineShare> level = takeoff.levelled().shares();
    List<List<Cell>> rows = new ArrayList<>();
    for (int i = 0; i < found.size(); i++) {
      rows.add(
          List.of(
              new Cell.Ringed(Integer.toString(i + 1)),
              Cell.of(found.get(i).machine().name()),
              Cell.of(context.bareArea(found.get(i).area())),
              Cell.of(context.bareArea(level.get(i).area()))));
    }
    rows.add(
        List.of(
            Cell.of(""),
            Cell.of("by hand"),
            Cell.of(context.bareArea(takeoff.asFound().hand().area())),
            Cell.of(context.bareArea(takeoff.levelled().hand().area()))));
    String all = context.bareArea(takeoff.ground().area());
    return new Table(
        List.of(
            Column.narrow(""),
            Column.words("largest first, " + context.areaUnit()),
            Column.number("as found"),
            Column.number("trenches level")),
        rows,
        List.of(Cell.of(""), Cell.of("To be ground"), Cell.of(all), Cell.of(all)));
  }

  private void reach(List<Block> blocks) {
    List<ReachCurve> curves = ways.curves();
    WaysWords words = new WaysWords(context.units());
    if (!curves.isEmpty()) {
      blocks.add(new Heading("How wide a machine reaches how far"));
      blocks.add(new ReachBlock(curves, Curves.machines(takeoff), context.units()));
      blocks.add(new Prose(Curves.about(takeoff) + drops(words, curves)));
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

  private Table pockets(WaysWords words) {
    List<List<Cell>> rows = new ArrayList<>();
    PocketNumbers numbers = new PocketNumbers(ways, context.units());
    for (PocketWay way : ways.pockets()) {
      rows.add(
          List.of(
              new Cell.Ringed(numbers.of(way.pocket())),
              Cell.of(words.way(way)),
              Cell.of(context.bareArea(way.pocket().area()))));
    }
    return Table.of(
        List.of(Column.narrow(""), Column.words("pocket"), Column.number(context.areaUnit())),
        rows);
  }

  private Table trenches() {
    List<List<Cell>> rows = new ArrayList<>();
    for (TrenchWork t : TrenchWork.of(takeoff)) {
      rows.add(
          List.of(
              Cell.of(t.mark().name() + ", " + t.state() + ": " + t.due()),
              Cell.of(t.length().isPresent() ? context.length(t.length().getAsDouble()) : "–"),
              Cell.of(t.width().isPresent() ? context.length(t.width().getAsDouble()) : "–"),
              Cell.of(context.bareArea(t.area())),
              Cell.of(context.bareArea(t.handFound())),
              Cell.of(context.bareArea(t.handLevel()))));
    }
    return Table.of(
        List.of(
            Column.words("trench"),
            Column.number("length"),
            Column.number("width"),
            Column.number(context.areaUnit()),
            Column.number("by hand"),
            Column.number("once level")),
        rows);
  }

  private Table thresholds() {
    List<List<Cell>> rows = new ArrayList<>();
    List<EdgeStrip> strips = ways.strips();
    for (Doorway d : takeoff.area().doorways()) {
      double strip =
          strips.stream()
              .filter(s -> s.edge().filter(e -> e.id().equals(d.id())).isPresent())
              .mapToDouble(EdgeStrip::area)
              .sum();
      rows.add(
          List.of(
              Cell.of(
                  d.name() + (d.wayIn() ? ": way in, the machine passes" : ": shut to machines")),
              Cell.of(context.length(d.width().mm())),
              Cell.of(d.wayIn() ? "" : context.bareArea(strip))));
    }
    return Table.of(
        List.of(
            Column.words("doorway"),
            Column.number("width"),
            Column.number("strip, " + context.areaUnit())),
        rows);
  }

  private Table levels() {
    List<List<Cell>> rows = new ArrayList<>();
    for (LevelStep s : LevelStep.of(takeoff)) {
      rows.add(
          List.of(
              Cell.of(s.mark().name()),
              Cell.of(context.length(s.length())),
              Cell.of(context.length(s.height()))));
    }
    return Table.of(
        List.of(Column.words("line"), Column.number("length"), Column.number("step")), rows);
  }

  private Table edges() {
    List<List<Cell>> rows = new ArrayList<>();
    for (EdgeClass kind : EdgeClass.values()) {
      long runs = takeoff.edges().stream().filter(e -> e.kind() == kind).count();
      if (runs > 0) {
        rows.add(
            List.of(
                Cell.of(kind.word()),
                Cell.of(Long.toString(runs)),
                Cell.of(context.length(takeoff.edgeLength(kind)))));
      }
    }
    return new Table(
        List.of(Column.words("meets"), Column.number("number"), Column.number("edge")),
        rows,
        List.of(Cell.of("Total"), Cell.of(""), Cell.of(context.length(takeoff.edgeLength()))));
  }

  private Table counts() {
    EdgeTally tally = ways.takeoff().tally();
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(row("inside corners", tally.corners().inside().size(), ""));
    rows.add(row("outside corners", tally.corners().outside().size(), ""));
    rows.add(row("free-standing ends", tally.ends().size(), ""));
    tally.lines().stream()
        .filter(l -> l.length() > 0)
        .forEach(l -> rows.add(row(l.kind().word(), l.count(), context.length(l.length()))));
    for (EdgeTally.Meeting m : tally.transitions()) {
      rows.add(
          List.of(
              Cell.of(m.below() + " to " + m.above()),
              Cell.of(""),
              Cell.of(context.length(m.length()))));
    }
    return Table.of(
        List.of(Column.words(""), Column.number("number"), Column.number("length")), rows);
  }

  private static List<Cell> row(String words, int count, String length) {
    return List.of(Cell.of(words), Cell.of(Integer.toString(count)), Cell.of(length));
  }

  private Table cutIns() {
    List<List<Cell>> rows = new ArrayList<>();
    for (CutIn c : CutIn.values()) {
      rows.add(List.of(Cell.of(c.words()), Cell.of(context.length(c.length(takeoff)))));
    }
    return Table.of(List.of(Column.words("product"), Column.number("length")), rows);
  }

  private Table tops() {
    List<List<Cell>> rows = new ArrayList<>();
    for (TopFoot t : TopFoot.of(takeoff)) {
      rows.add(
          List.of(
              new Cell.Tick(),
              Cell.of(t.name() + (t.steps() > 1 ? ", " + t.steps() + " steps" : "")),
              Cell.of(context.bareArea(t.face())),
              Cell.of(context.length(t.edgeLength())),
              Cell.of(context.length(t.thickness()))));
    }
    return Table.of(
        List.of(
            Column.narrow(""),
            Column.words("top or steps"),
            Column.number("faces, " + context.areaUnit()),
            Column.number("edges"),
            Column.number("thick")),
        rows);
  }
}
