package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import slabwright.drawing.Frame;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.HandKind;
import slabwright.floor.HandPiece;
import slabwright.floor.Standing;
import slabwright.shape.Region;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Machine;
import slabwright.site.MarkType;

/** Sheet 2: what is ground by hand, numbered on the plan and listed to tick off. */
final class HandSheet {
  private final FloorTakeoff takeoff;
  private final FloorArea area;
  private final SheetContext context;
  private final List<HandItem> edges;
  private final List<HandItem> pieces;

  HandSheet(FloorTakeoff takeoff, SheetContext context) {
    this.takeoff = takeoff;
    this.area = takeoff.area();
    this.context = context;
    HandList list = new HandList(takeoff);
    this.edges = list.edges();
    this.pieces = list.pieces();
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
    return sheet.drafts(this::draw, blocks());
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
    sketch.ink(MarkLooks.HAND.on(takeoff.asFound().hand()));
    for (HandPiece p : takeoff.asFound().pieces(HandKind.TRENCH)) {
      sketch.ink(MarkLooks.of(MarkType.TRENCH).on(p.region()));
    }
    for (Standing s : takeoff.standing()) {
      sketch.ink(MarkLooks.of(s.mark().kind().type()).on(s.region()));
    }
    sketch.ink(AreaInks.outline(area));
    for (Standing s : takeoff.standing()) {
      sketch.keepOff(s.region().rings());
    }
    new OutlineWords(area, context.units(), sketch).walls().doorways().dimensions();
    numbers(sketch);
  }

  private void numbers(Sketch sketch) {
    double off = 6.4 * context.type().k();
    int n = 0;
    for (HandItem item : numbered()) {
      n++;
      sketch.number(item.at().orElseThrow(), item.wishes(sketch.view(), off), Integer.toString(n));
    }
  }

  /** The items with a place, in the order of their numbers. */
  private List<HandItem> numbered() {
    List<HandItem> all = new ArrayList<>(edges);
    pieces.stream().filter(p -> p.at().isPresent()).forEach(all::add);
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
    List<HandItem> all = new ArrayList<>(edges);
    all.addAll(pieces);
    for (HandItem item : all) {
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
    double length = edges.stream().mapToDouble(e -> e.edge().orElse(0)).sum();
    return List.of(
        Cell.of(""),
        Cell.of(""),
        Cell.of("Total"),
        Cell.of(context.length(length)),
        Cell.of(context.bareArea(takeoff.asFound().hand().area())));
  }

  private Block key() {
    List<Key.Entry> entries = new ArrayList<>();
    double strip = area.machines().stream().mapToDouble(Machine::strip).min().orElse(0);
    entries.add(
        Key.look(
            MarkLooks.HAND,
            strip > 0
                ? "by hand: edge strip " + context.length(strip) + ", corners, pockets"
                : "by hand"));
    Region trenches =
        Region.union(
            takeoff.asFound().pieces(HandKind.TRENCH).stream().map(HandPiece::region).toList());
    if (!trenches.isEmpty()) {
      entries.add(
          Key.look(
              MarkLooks.of(MarkType.TRENCH),
              "trench of new concrete: grind flush before the machine crosses"));
    }
    entries.add(Key.look(MarkLooks.MACHINE, "machine floor"));
    takeoff.standing().stream()
        .map(s -> s.mark().kind().type())
        .distinct()
        .forEach(t -> entries.add(Key.look(MarkLooks.of(t), t.word() + ", stands on the floor")));
    return Key.of(entries);
  }
}
