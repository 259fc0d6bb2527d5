package slabwright.sheets.days;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.CoordinateFrame;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.figures.AreaInks;
import slabwright.figures.BatchStyle;
import slabwright.figures.BesideWall;
import slabwright.figures.DivisionWords;
import slabwright.figures.MarkStyles;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.Obstacle;
import slabwright.shape.Vec;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.KeyBlock;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.sheets.plan.OutlineLabels;
import slabwright.sheets.plan.PlanComposer;
import slabwright.sheets.plan.PlanLabel;
import slabwright.sheets.plan.PlanSheet;
import slabwright.sheets.plan.Poster;
import slabwright.site.FloorArea;
import slabwright.work.WorkPlan;
import slabwright.work.coat.BatchLanes;
import slabwright.work.coat.CoatPlan;
import slabwright.work.coat.Lane;
import slabwright.work.coat.LanePlan;

/** The lanes of one rolled coat in the order of rolling, as a plan; part of the day plan. */
public final class LanesSheet {
  private static final Pen CUT_IN = Pen.of(1.1, Palette.AMBER);
  private static final Pen WALK = Pen.of(0.2, Palette.INK).dashed(1.5, 1);

  private static final int PACE = 5;
  private static final int QUARTERS = 4;

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
  public static List<PageDraft> all(
      FloorTakeoff takeoff, List<CoatPlan> coats, String origin, SheetContext context) {
    return each(takeoff, coats, origin, context).stream()
        .flatMap(l -> l.drafts().stream())
        .toList();
  }

  /** The same for the wall, without what every packet says once. */
  public static List<Poster> posters(
      FloorTakeoff takeoff, List<CoatPlan> coats, String origin, SheetContext context) {
    return each(takeoff, coats, origin, context).stream().map(LanesSheet::poster).toList();
  }

  private static List<LanesSheet> each(
      FloorTakeoff takeoff, List<CoatPlan> coats, String origin, SheetContext context) {
    List<LanesSheet> sheets = new ArrayList<>();
    for (CoatPlan c : coats) {
      c.lanes()
          .maybe()
          .flatMap(l -> l)
          .filter(l -> !l.lanes().isEmpty())
          .ifPresent(l -> sheets.add(new LanesSheet(takeoff, c, l, origin, context)));
    }
    return sheets;
  }

  private List<PageDraft> drafts() {
    String subtitle = context.say("sheets.lanes-sheet.subtitle", coat.product().label());
    return sheet(context.say("sheets.lanes-sheet.title"), subtitle).drafts(this::draw, blocks());
  }

  private Poster poster() {
    String title = context.say("sheets.lanes-sheet.poster", coat.product().shortLabel());
    return sheet(title, context.say("sheets.lanes-sheet.poster-subtitle"))
        .poster(this::draw, list(), keyed());
  }

  private PlanSheet sheet(String title, String subtitle) {
    return new PlanSheet(
        context, title, subtitle, area.name(), CoordinateFrame.SITE, takeoff.gross().bounds());
  }

  private void draw(PlanComposer sketch) {
    for (Lane lane : lanes.lanes()) {
      sketch.addInks(BatchStyle.of(lane, lanes.lanes().size(), batches).on(lane.region()));
    }
    for (Obstacle s : takeoff.standing()) {
      sketch.addInks(MarkStyles.of(s.mark().kind().type()).on(s.region()));
    }
    sketch.addInks(AreaInks.outline(area));
    sketch.addInks(cutIn(BesideWall.OFF / sketch.view().scale()));
    takeoff.standing().forEach(s -> sketch.keepOffInside(s.region()));
    new OutlineLabels(area, context, sketch).avoidWalls().labelDoorways().labelWalls();
    for (Lane lane : lanes.lanes()) {
      sketch.addInks(List.of(Stroke.lines(WALK, List.of(lane.walk()))));
      if (isNumbered(lane)) {
        Vec start = lane.walk().points().get(0);
        sketch.placeNumber(start, List.of(), Integer.toString(lane.number()), 4.6);
      }
    }
    lanes.lanes().stream().filter(l -> !isNumbered(l)).forEach(l -> number(sketch, l));
  }

  /** Without a ring, where it has room: nobody follows an order of which every fifth is told. */
  private void number(PlanComposer sketch, Lane lane) {
    List<Vec> walk = lane.walk().points();
    sketch.placeLabel(
        PlanLabel.of(
                walk.get(0).towards(walk.get(walk.size() - 1), 0.12),
                Integer.toString(lane.number()),
                context.type().label())
            .nearBy(6)
            .on(Palette.WHITE));
  }

  /** Ringed on a poster, where that is large: every fifth, the last, and where a batch begins. */
  private boolean isNumbered(Lane lane) {
    return !context.page().ofPacket()
        || lane.number() == 1
        || lane.number() % PACE == 0
        || lane.number() == lanes.lanes().size()
        || batches.stream().anyMatch(b -> b.from() == lane.number());
  }

  /** The edges painted by brush, beside the walls: their heavy line would hide them. */
  private List<Ink> cutIn(double off) {
    return takeoff.edges().stream()
        .filter(e -> !FloorTakeoff.NOT_CUT_IN.contains(e.kind()))
        .<Ink>map(e -> Stroke.lines(CUT_IN, BesideWall.lines(e.lines(), takeoff.net(), off)))
        .toList();
  }

  private List<Block> blocks() {
    List<Block> blocks = new ArrayList<>(list());
    blocks.addAll(keyed());
    blocks.add(new Paragraph(context.words().say(WorkPlan.NOTICE)));
    blocks.add(new Paragraph(origin));
    return blocks;
  }

  private List<Block> keyed() {
    return List.of(new Heading(context.say("sheets.lanes-sheet.key")), key());
  }

  private List<Block> list() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(cutInHeading()));
    blocks.add(new Paragraph(new CoatWords(coat, context).cutIn()));
    blocks.add(new Heading(context.say("sheets.lanes-sheet.wet-edge")));
    blocks.add(new Paragraph(new CoatWords(coat, context).wetEdge()));
    coat.divided()
        .ifPresent(
            d -> {
              blocks.add(new Heading(context.say("sheets.lanes-sheet.sections")));
              blocks.add(new Paragraph(DivisionWords.of(d, context.units(), context.words())));
            });
    blocks.add(new Gap(2));
    blocks.addAll(new BatchTable(coat, context).blocks());
    blocks.add(new Heading(context.say("sheets.lanes-sheet.in-step")));
    blocks.add(pace());
    return blocks;
  }

  /** What the text below says too: never "first" over words that say "as you go". */
  private String cutInHeading() {
    return new CoatWords(coat, context).cutInFirst()
        ? context.say("sheets.lanes-sheet.cut-in-first")
        : context.say("sheets.lanes-sheet.cut-in-as-you-go");
  }

  private KeyBlock key() {
    List<KeyBlock.Entry> entries = new ArrayList<>();
    entries.add(KeyBlock.line(CUT_IN, context.say("sheets.lanes-sheet.cut-in")));
    entries.add(KeyBlock.line(WALK, context.say("sheets.lanes-sheet.walk")));
    batches.forEach(
        b ->
            entries.add(
                KeyBlock.look(
                    BatchStyle.of(b.batch()), context.say("sheets.lanes-sheet.batch", b.batch()))));
    if (batches.isEmpty()) {
      for (int q = 1; q <= QUARTERS && q <= lanes.lanes().size(); q++) {
        entries.add(KeyBlock.look(BatchStyle.of(q), quarter(q)));
      }
    }
    return KeyBlock.of(entries);
  }

  private String quarter(int number) {
    return switch (number) {
      case 1 -> context.say("sheets.lanes-sheet.first-quarter");
      case 2 -> context.say("sheets.lanes-sheet.second-quarter");
      case 3 -> context.say("sheets.lanes-sheet.third-quarter");
      default -> context.say("sheets.lanes-sheet.last-quarter");
    };
  }

  /** When every fifth lane should be done, counted from the first stroke. */
  private TableBlock pace() {
    List<List<TableCell>> rows = new ArrayList<>();
    double done = 0;
    int last = lanes.lanes().size();
    for (int i = 0; i < last; i++) {
      Lane lane = lanes.lanes().get(i);
      done += lane.region().area();
      if ((i + 1) % PACE == 0 || i == last - 1) {
        rows.add(
            List.of(
                new TableCell.Ringed(Integer.toString(lane.number())),
                TableCell.of(context.bareArea(done)),
                TableCell.of(context.times().duration(lane.to()))));
      }
    }
    return TableBlock.of(
        List.of(
            TableColumn.narrow(context.say("sheets.lanes-sheet.lane")),
            TableColumn.number(
                context.say("sheets.lanes-sheet.rolled-by-then", context.areaUnit())),
            TableColumn.number(doneAfter())),
        rows);
  }

  /** By the plan's own pace: whether the cut-in is in it, and how many roll. */
  private String doneAfter() {
    int people = coat.job().people().maybe().orElse(1);
    return new CoatWords(coat, context).cutInFirst()
        ? context.say("sheets.lanes-sheet.done-after-cut-in", people)
        : context.say("sheets.lanes-sheet.done-after", people);
  }
}
