package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Frame;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.Standing;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.work.WorkPlan;
import slabwright.work.coat.BatchLanes;
import slabwright.work.coat.CoatPlan;
import slabwright.work.coat.Lane;
import slabwright.work.coat.LanePlan;

/** The lanes of one rolled coat in the order of rolling, as a plan; part of the day plan. */
final class LanesSheet {
  private static final Pen CUT_IN = Pen.of(1.1, Palette.AMBER);
  private static final Pen WALK = Pen.of(0.2, Palette.INK).dashed(1.5, 1);

  private static final int PACE = 5;
  private static final List<String> QUARTERS = List.of("first", "second", "third", "last");

  private final FloorTakeoff takeoff;
  private final FloorArea area;
  private final CoatPlan coat;
  private final LanePlan lanes;
  private final SheetContext context;

  private final List<BatchLanes> batches;
  private final String origin;

  private LanesSheet(
      FloorTakeoff takeoff, CoatPlan coat, LanePlan lanes, String origin, SheetContext context) {
    this.batches = coat.batchLanes();
    this.origin = origin;
    this.takeoff = takeoff;
    this.area = takeoff.area();
    this.coat = coat;
    this.lanes = lanes;
    this.context = context;
  }

  /** A sheet for every coat of the floor area that is rolled in lanes. */
  static List<Draft> all(
      FloorTakeoff takeoff, List<CoatPlan> coats, String origin, SheetContext context) {
    List<Draft> drafts = new ArrayList<>();
    for (CoatPlan c : coats) {
      c.lanes()
          .maybe()
          .flatMap(l -> l)
          .filter(l -> !l.lanes().isEmpty())
          .ifPresent(l -> drafts.addAll(new LanesSheet(takeoff, c, l, origin, context).drafts()));
    }
    return drafts;
  }

  private List<Draft> drafts() {
    String subtitle =
        coat.product().label()
            + " · cut in first, then lane by lane to the way out, always over dry floor";
    return new PlanSheet(
            context,
            "6",
            "Rolling order",
            subtitle,
            area.name(),
            Frame.SITE,
            takeoff.gross().bounds())
        .drafts(this::draw, blocks());
  }

  private void draw(Sketch sketch) {
    for (Lane lane : lanes.lanes()) {
      sketch.ink(BatchLook.of(lane, lanes.lanes().size(), batches).on(lane.region()));
    }
    for (Standing s : takeoff.standing()) {
      sketch.ink(MarkLooks.of(s.mark().kind().type()).on(s.region()));
    }
    sketch.ink(cutIn());
    sketch.ink(AreaInks.outline(area));
    new OutlineWords(area, context.units(), sketch).walls().doorways();
    for (Lane lane : lanes.lanes()) {
      sketch.ink(List.of(Stroke.lines(WALK, List.of(lane.walk()))));
      List<Vec> walk = lane.walk().points();
      sketch.number(walk.get(0), List.of(), Integer.toString(lane.number()), 4.6);
    }
  }

  /** The edges painted by brush before the first lane. */
  private List<Ink> cutIn() {
    return takeoff.edges().stream()
        .filter(e -> !FloorTakeoff.NOT_CUT_IN.contains(e.kind()))
        .<Ink>map(e -> Stroke.lines(CUT_IN, e.lines()))
        .toList();
  }

  private List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading("Cut in first"));
    blocks.add(new Prose(new CoatWords(coat, context).cutIn()));
    blocks.add(new Heading("Wet edge"));
    blocks.add(new Prose(new CoatWords(coat, context).wetEdge()));
    blocks.add(new Gap(2));
    blocks.addAll(new BatchTable(coat, context).blocks());
    blocks.add(new Heading("In step"));
    blocks.add(pace());
    blocks.add(new Heading("Key"));
    blocks.add(key());
    blocks.add(new Prose(WorkPlan.NOTICE));
    blocks.add(new Prose(origin));
    return blocks;
  }

  private Key key() {
    List<Key.Entry> entries = new ArrayList<>();
    entries.add(Key.line(CUT_IN, "cut in by brush first"));
    entries.add(Key.line(WALK, "a lane, begun at its number"));
    batches.forEach(b -> entries.add(Key.look(BatchLook.of(b.batch()), "batch " + b.batch())));
    if (batches.isEmpty()) {
      for (int q = 1; q <= QUARTERS.size() && q <= lanes.lanes().size(); q++) {
        entries.add(Key.look(BatchLook.of(q), QUARTERS.get(q - 1) + " quarter of the lanes"));
      }
    }
    return Key.of(entries);
  }

  /** When every fifth lane should be done, counted from the first stroke. */
  private Table pace() {
    List<List<Cell>> rows = new ArrayList<>();
    double done = 0;
    int last = lanes.lanes().size();
    for (int i = 0; i < last; i++) {
      Lane lane = lanes.lanes().get(i);
      done += lane.region().area();
      if ((i + 1) % PACE == 0 || i == last - 1) {
        rows.add(
            List.of(
                new Cell.Ringed(Integer.toString(lane.number())),
                Cell.of(context.bareArea(done)),
                Cell.of(Words.time(lane.to()))));
      }
    }
    return Table.of(
        List.of(
            Column.narrow("lane"),
            Column.number("rolled by then, " + context.areaUnit()),
            Column.number("done after")),
        rows);
  }
}
