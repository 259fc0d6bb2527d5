package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import slabwright.drawing.Frame;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.Ways;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;

/**
 * Sheet 2: what is ground by hand, numbered on the plan and listed to tick off; then who grinds
 * what floor, how far a machine of which width gets, and the edges.
 */
final class HandSheet {
  private final Ways ways;
  private final FloorTakeoff takeoff;
  private final FloorArea area;
  private final SheetContext context;
  private final HandList list;
  private final HandPlan plan;

  HandSheet(Ways ways, SheetContext context) {
    this.ways = ways;
    this.takeoff = ways.takeoff();
    this.area = takeoff.area();
    this.context = context;
    this.plan = new HandPlan(ways, context);
    this.list = new HandList(ways, context.units());
  }

  List<Draft> drafts() {
    PlanSheet sheet =
        new PlanSheet(
            context,
            "2",
            "Prep and hand work",
            subtitle(),
            area.name(),
            Frame.SITE,
            takeoff.gross().bounds());
    List<Draft> drafts = new ArrayList<>(sheet.drafts(this::draw, blocks()));
    Draft more =
        new Draft(
            "2",
            "Prep: machines, ways and edges",
            subtitle(),
            area.name(),
            Optional.empty(),
            List.of());
    drafts.addAll(ColumnPages.of(context.page(), more, new PrepTables(ways, context).blocks()));
    return drafts;
  }

  private String subtitle() {
    if (area.machines().isEmpty()) {
      return "No machine is named on the plan: all floor is ground by hand";
    }
    String machines =
        area.machines().stream()
            .map(m -> m.name() + " (strip " + context.length(m.strip()) + ")")
            .collect(Collectors.joining(", "));
    String from =
        area.doorways().stream()
            .filter(Doorway::wayIn)
            .map(Doorway::name)
            .collect(Collectors.joining(", "));
    return "Hatched floor is ground by hand, the rest by "
        + machines
        + (from.isEmpty() ? "; no way in is marked" : " · way in: " + from);
  }

  private void draw(Sketch sketch) {
    plan.draw(sketch);
    numbers(sketch);
    plan.gaps(sketch);
  }

  private void numbers(Sketch sketch) {
    double off = 6.4 * context.type().k();
    int n = 0;
    for (HandItem item : numbered(list)) {
      n++;
      sketch.number(item.at().orElseThrow(), item.wishes(sketch.view(), off), Integer.toString(n));
    }
  }

  /** The items with a place, in the order of their numbers. */
  static List<HandItem> numbered(HandList list) {
    return all(list).stream().filter(p -> p.at().isPresent()).toList();
  }

  private static List<HandItem> all(HandList list) {
    List<HandItem> all = new ArrayList<>(list.edges());
    all.addAll(list.along());
    all.addAll(list.pieces());
    return all;
  }

  private List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading("By hand, to tick off"));
    blocks.add(table());
    blocks.add(new Gap(3));
    blocks.add(new Heading("Key"));
    blocks.add(key());
    blocks.add(new Gap(3));
    blocks.add(
        new Caution(
            "Dust",
            "Dry grinding of concrete sets free crystalline silica. Shroud and collector on every"
                + " grinder; see sheet 7. Local rules and the makers’ instructions come first."));
    return blocks;
  }

  private Block table() {
    List<List<Cell>> rows = new ArrayList<>();
    int n = 0;
    for (HandItem item : all(list)) {
      boolean numbered = item.at().isPresent();
      n += numbered ? 1 : 0;
      rows.add(
          List.of(
              new Cell.Tick(),
              numbered ? new Cell.Ringed(Integer.toString(n)) : Cell.of(""),
              Cell.of(item.words()),
              Cell.of(item.edge().isPresent() ? context.length(item.edge().getAsDouble()) : ""),
              Cell.of(item.area().isPresent() ? context.bareArea(item.area().getAsDouble()) : "")));
    }
    return new Table(columns(), rows, total());
  }

  private List<Column> columns() {
    return List.of(
        Column.narrow(""),
        Column.narrow(""),
        Column.words("what"),
        Column.number("edge"),
        Column.number(context.areaUnit()));
  }

  private List<Cell> total() {
    double length = list.edges().stream().mapToDouble(e -> e.edge().orElse(0)).sum();
    return List.of(
        Cell.of(""),
        Cell.of(""),
        Cell.of("Total, edges and hand work"),
        Cell.of(context.length(length)),
        Cell.of(context.bareArea(takeoff.asFound().hand().area())));
  }

  private Block key() {
    return plan.key();
  }
}
