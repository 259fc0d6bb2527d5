package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Frame;
import slabwright.drawing.Look;
import slabwright.drawing.Palette;
import slabwright.drawing.Pattern;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.Standing;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.work.WorkPlan;
import slabwright.work.coat.CoatPlan;
import slabwright.work.coat.Lane;
import slabwright.work.coat.LanePlan;

/** The lanes of one rolled coat in the order of rolling, as a plan; part of the day plan. */
final class LanesSheet {
  private static final Look LANE = new Look(Palette.WHITE, Pattern.NONE, Palette.BLUE, 2, 0.25);
  private static final Look EVERY_OTHER = Look.of(Pattern.RISING, Palette.BLUE).outlined(0.25);

  private static final int PACE = 5;

  private final FloorTakeoff takeoff;
  private final FloorArea area;
  private final CoatPlan coat;
  private final LanePlan lanes;
  private final SheetContext context;

  LanesSheet(FloorTakeoff takeoff, CoatPlan coat, LanePlan lanes, SheetContext context) {
    this.takeoff = takeoff;
    this.area = takeoff.area();
    this.coat = coat;
    this.lanes = lanes;
    this.context = context;
  }

  /** A sheet for every coat of the floor area that is rolled in lanes. */
  static List<Draft> all(FloorTakeoff takeoff, List<CoatPlan> coats, SheetContext context) {
    List<Draft> drafts = new ArrayList<>();
    for (CoatPlan c : coats) {
      c.lanes()
          .maybe()
          .flatMap(l -> l)
          .filter(l -> !l.lanes().isEmpty())
          .ifPresent(l -> drafts.addAll(new LanesSheet(takeoff, c, l, context).drafts()));
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
      sketch.ink((lane.number() % 2 == 0 ? EVERY_OTHER : LANE).on(lane.region()));
    }
    for (Standing s : takeoff.standing()) {
      sketch.ink(MarkLooks.of(s.mark().kind().type()).on(s.region()));
    }
    sketch.ink(AreaInks.outline(area));
    new OutlineWords(area, context.units(), sketch).walls().doorways();
    for (Lane lane : lanes.lanes()) {
      sketch.ink(
          List.of(Stroke.lines(Pen.of(0.2, Palette.INK).dashed(1.5, 1), List.of(lane.walk()))));
      List<Vec> walk = lane.walk().points();
      sketch.number(walk.get(0), List.of(), Integer.toString(lane.number()), 4.6);
    }
  }

  private List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading("Wet edge"));
    blocks.add(new Prose(wetEdge()));
    blocks.add(new Gap(2));
    blocks.add(new Heading("In step"));
    blocks.add(pace());
    blocks.add(new Prose(WorkPlan.NOTICE));
    return blocks;
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

  private String wetEdge() {
    String open = coat.wetEdge().text(Words::time);
    boolean keeps = coat.keepsWetEdge().maybe().orElse(false);
    boolean known = coat.keepsWetEdge().isKnown();
    String verdict = !known ? "? " : keeps ? "✓ " : "✕ ";
    return verdict
        + "The oldest edge that a lane laps is "
        + Words.time(lanes.worstEdge())
        + " old; it stays wet for "
        + open
        + ".";
  }
}
