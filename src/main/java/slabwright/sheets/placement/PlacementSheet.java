package slabwright.sheets.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.drawing.CoordinateFrame;
import slabwright.drawing.Drawing;
import slabwright.drawing.FillStyle;
import slabwright.drawing.HatchPattern;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Symbol;
import slabwright.drawing.TextStyle;
import slabwright.drawing.View;
import slabwright.figures.AreaInks;
import slabwright.figures.MarkStyles;
import slabwright.figures.SettingOutInks;
import slabwright.figures.StencilInks;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.Obstacle;
import slabwright.floor.Zone;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.settingout.SettingOut;
import slabwright.inlay.settingout.SettingOutOrigin;
import slabwright.inlay.settingout.SnappedLines;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.plan.OutlineLabels;
import slabwright.sheets.plan.PlanComposer;
import slabwright.sheets.plan.PlanLabel;
import slabwright.sheets.plan.PlanSheet;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.work.AreaResult;

/** Sheet 3: where one inlay lies on its floor, which way it reads, and how to find its corners. */
public final class PlacementSheet {
  private final FloorTakeoff takeoff;
  private final FloorArea area;
  private final PlacedInlay placed;
  private final Inlay inlay;
  private final Affine toSite;
  private final SheetContext context;
  private final Ring blank;
  private final Optional<SettingOut> settingOut;

  public PlacementSheet(AreaResult area, PlacedInlay placed, SheetContext context) {
    this.takeoff = area.takeoff();
    this.area = takeoff.area();
    this.placed = placed;
    this.inlay = placed.inlay();
    this.toSite = placed.plan().toSite().orElse(Affine.IDENTITY);
    this.context = context;
    this.settingOut = placed.settingOut(takeoff, context.units());
    this.blank = StencilInks.ring(placed.plan().stencils().blank()).map(toSite);
  }

  public List<PageDraft> drafts() {
    String subtitle =
        context.say(
            "sheets.placement-sheet.subtitle",
            inlay.name(),
            inlay.graphic(),
            context.length(inlay.width().mm()));
    return sheet(context.say("sheets.placement-sheet.title"), subtitle)
        .drafts(
            this::draw, new PlacementColumn(takeoff, placed, settingOut, blank, context).blocks());
  }

  /** The same plan without film and paper, beside the words that the client signs. */
  public List<PageDraft> approval(String title, String subtitle, List<Block> words) {
    return sheet(title, subtitle).drafts(sketch -> draw(sketch, List.of()), words);
  }

  private PlanSheet sheet(String title, String subtitle) {
    return new PlanSheet(
        context, title, subtitle, area.name(), CoordinateFrame.SITE, takeoff.gross().bounds());
  }

  private void draw(PlanComposer sketch) {
    List<Ink> film = new ArrayList<>(onSite(StencilInks.skirt(placed.plan())));
    film.addAll(onSite(StencilInks.seams(placed.plan())));
    draw(sketch, film);
  }

  /**
   * @param film what lies on the floor only while it is worked
   */
  private void draw(PlanComposer sketch, List<Ink> film) {
    for (Zone z : takeoff.zones()) {
      z.mark().ifPresent(m -> sketch.addInks(quiet(z)));
    }
    for (Obstacle s : takeoff.standing()) {
      sketch.addInks(MarkStyles.of(s.mark().kind().type()).on(s.region()));
    }
    sketch.addInks(onSite(StencilInks.flat(placed.plan())));
    sketch.addInks(film);
    sketch.addInks(List.of(Stroke.rings(Pen.of(0.4, Palette.INK), List.of(blank))));
    sketch.addInks(AreaInks.outline(area));
    sketch.keepOffWhole(blank).keepOff(List.of(blank));
    new OutlineLabels(area, context, sketch).avoidWalls().labelDoorways();
    settingOut.flatMap(SettingOut::lines).ifPresent(l -> lines(sketch, l));
    reading(sketch);
  }

  /** Marks on the floor as a thin outline, so that the inlay stands out. */
  private static List<Ink> quiet(Zone z) {
    FillStyle look = MarkStyles.of(z.mark().orElseThrow().kind().type());
    return new FillStyle(Palette.WHITE, HatchPattern.NONE, look.colour(), 1, 0.25).on(z.region());
  }

  private List<Ink> onSite(List<Ink> inks) {
    return new View(toSite).place(Drawing.of(CoordinateFrame.GRAPHIC, inks)).inks();
  }

  /** The tape's way from the origin, with its lengths; the walls by their letters. */
  private void lines(PlanComposer sketch, SnappedLines lines) {
    sketch.addInks(SettingOutInks.of(lines));
    dimension(sketch, lines.origin().at(), lines.station(), lines.along());
    if (lines.aside() > 0) {
      dimension(sketch, lines.station(), lines.cross(), lines.aside());
    }
    if (lines.origin() instanceof SettingOutOrigin.WallPoint p) {
      dimension(sketch, p.from().at(), p.at(), p.distance());
    }
    new OutlineLabels(area, context, sketch).labelWalls();
  }

  /** Beside the measured line, where it does not run through the words. */
  private void dimension(PlanComposer sketch, Vec from, Vec to, double mm) {
    TextStyle style = context.type().strong().in(Palette.BLUE);
    sketch.placeLabel(
        PlanLabel.of(from.towards(to, 0.5), context.length(mm), style).nearBy(6).on(Palette.WHITE));
  }

  /** Beside the paper skirt, so that its edge doesn't run through the words. */
  private void reading(PlanComposer sketch) {
    Bounds b = blank.bounds();
    Bounds skirt =
        placed.plan().masking().map(m -> m.skirt().map(toSite).bounds()).orElse(Bounds.EMPTY);
    double right = b.including(skirt).maxX();
    double off = 13 * context.type().k() / sketch.view().scale();
    Vec at = new Vec(right + off, b.middle().y());
    sketch.placeSign(Symbol.of(Symbol.Kind.NEEDLE, at, 9, Palette.INK).turned(inlay.turn()));
    TextStyle style = context.type().label();
    sketch.placeLabel(
        PlanLabel.of(at, context.say("sheets.placement-sheet.reads-up"), style)
            .nearBy(10)
            .on(Palette.WHITE));
  }
}
