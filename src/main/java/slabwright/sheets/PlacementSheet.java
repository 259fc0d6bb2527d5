package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Drawing;
import slabwright.drawing.Frame;
import slabwright.drawing.Ink;
import slabwright.drawing.Look;
import slabwright.drawing.Palette;
import slabwright.drawing.Pattern;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Symbol;
import slabwright.drawing.TextStyle;
import slabwright.drawing.View;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.Standing;
import slabwright.floor.Zone;
import slabwright.inlay.PlacedInlay;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;

/** Sheet 3: where one inlay lies on its floor, which way it reads, and how to find its corners. */
final class PlacementSheet {
  private final FloorTakeoff takeoff;
  private final FloorArea area;
  private final PlacedInlay placed;
  private final Inlay inlay;
  private final Affine toSite;
  private final SheetContext context;
  private final Ring blank;
  private final Offsets offsets;

  PlacementSheet(AreaResult area, PlacedInlay placed, SheetContext context) {
    this.takeoff = area.takeoff();
    this.area = takeoff.area();
    this.placed = placed;
    this.inlay = placed.inlay();
    this.toSite = placed.plan().toSite().orElse(Affine.IDENTITY);
    this.context = context;
    this.blank = InlayInks.ring(placed.plan().stencils().blank()).map(toSite);
    this.offsets = new Offsets(takeoff.gross(), inlay.middle().vec(), blank.bounds());
  }

  List<Draft> drafts() {
    PlanSheet sheet =
        new PlanSheet(
            context,
            "3",
            "Inlay placement and setting out",
            inlay.name()
                + " · "
                + inlay.graphic()
                + " · "
                + context.length(inlay.width().mm())
                + " wide",
            area.name(),
            Frame.SITE,
            takeoff.gross().bounds());
    return sheet.drafts(this::draw, blocks());
  }

  private void draw(Sketch sketch) {
    for (Zone z : takeoff.zones()) {
      z.mark().ifPresent(m -> sketch.ink(quiet(z)));
    }
    for (Standing s : takeoff.standing()) {
      sketch.ink(MarkLooks.of(s.mark().kind().type()).on(s.region()));
    }
    sketch.ink(onSite(InlayInks.flat(placed.plan())));
    sketch.ink(onSite(InlayInks.skirt(placed.plan())));
    sketch.ink(onSite(InlayInks.seams(placed.plan())));
    sketch.ink(List.of(Stroke.rings(Pen.of(0.4, Palette.INK), List.of(blank))));
    sketch.ink(AreaInks.outline(area));
    sketch.block(blank).keepOff(List.of(blank));
    new OutlineWords(area, context.units(), sketch).walls().doorways();
    offsets.draw(sketch, context);
    corners(sketch);
    reading(sketch);
  }

  /** Marks on the floor as a thin outline, so that the inlay stands out. */
  private static List<Ink> quiet(Zone z) {
    Look look = MarkLooks.of(z.mark().orElseThrow().kind().type());
    return new Look(Palette.WHITE, Pattern.NONE, look.colour(), 1, 0.25).on(z.region());
  }

  private List<Ink> onSite(List<Ink> inks) {
    return new View(toSite).place(Drawing.of(Frame.GRAPHIC, inks)).inks();
  }

  private void corners(Sketch sketch) {
    for (int i = 0; i < 4; i++) {
      Vec corner = blank.points().get(i);
      Vec out = corner.minus(blank.bounds().middle()).unit();
      Vec at =
          sketch
              .view()
              .onPaper(corner.plus(out.times(4.6 * context.type().k() / sketch.view().scale())));
      sketch.number(corner, List.of(at), Integer.toString(i + 1));
    }
  }

  private void reading(Sketch sketch) {
    Bounds b = blank.bounds();
    double off = 9 * context.type().k() / sketch.view().scale();
    Vec at = new Vec(b.maxX() + off, b.middle().y());
    sketch.sign(Symbol.of(Symbol.Kind.NEEDLE, at, 9, Palette.INK).turned(inlay.turn()));
    TextStyle style = context.type().strong().sized(2.8 * context.type().k());
    sketch.words(PlanWords.of(at, "reads up this way", style).nearBy(10));
  }

  private List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading("Find the middle"));
    blocks.add(new Prose(offsets.sentence(context)));
    blocks.add(new Gap(2));
    blocks.add(new Heading("Corners of the blank"));
    blocks.add(new CornerTable(takeoff, toSite, placed.plan().stencils().blank()).table(context));
    blocks.add(new Prose(diagonals()));
    blocks.add(new Gap(2));
    blocks.add(new Heading("Key"));
    blocks.add(key());
    return blocks;
  }

  private String diagonals() {
    Bounds b = placed.plan().stencils().blank();
    double d = Math.hypot(b.width(), b.height());
    return "Square when both diagonals of the blank measure "
        + context.length(d)
        + " and its sides "
        + context.length(b.width())
        + " and "
        + context.length(b.height())
        + ".";
  }

  private Block key() {
    List<Key.Entry> entries = new ArrayList<>();
    entries.add(Key.look(new Look(Palette.BLUE, Pattern.NONE, Palette.BLUE, 1, 0), "dyed"));
    entries.add(Key.line(Pen.of(0.4, Palette.INK), "blank: outer edge of the vinyl"));
    entries.add(Key.line(InlayInks.seamPen(), "seam of two panels"));
    entries.add(Key.line(InlayInks.skirtPen(), "paper skirt, out to the overspray reach"));
    entries.add(Key.line(MarkLooks.WAY_IN, "way in"));
    return Key.of(entries);
  }
}
