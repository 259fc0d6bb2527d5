package slabwright.sheets.stencil;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.drawing.CoordinateFrame;
import slabwright.drawing.Palette;
import slabwright.drawing.Symbol;
import slabwright.drawing.TextStyle;
import slabwright.figures.DyeStyle;
import slabwright.figures.StencilInks;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.stencil.Finding;
import slabwright.inlay.stencil.LoosePiece;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.plan.PlanComposer;
import slabwright.sheets.plan.PlanLabel;
import slabwright.sheets.plan.PlanSheet;
import slabwright.site.FloorArea;

/** Sheet 4: one inlay's stencils as they are weeded, with panels, seams and loose pieces. */
public final class StencilSheet {
  /** A finding about the whole this near an opening, mm, is ringed there. */
  private static final double NEAR = 1;

  private final FloorArea area;
  private final PlacedInlay inlay;
  private final InlayPlan plan;
  private final SheetContext context;

  public StencilSheet(FloorArea area, PlacedInlay inlay, SheetContext context) {
    this.area = area;
    this.inlay = inlay;
    this.plan = inlay.plan();
    this.context = context;
  }

  public List<PageDraft> drafts() {
    List<PageDraft> drafts = new ArrayList<>();
    List<Stencil> stencils = plan.stencils().stencils();
    for (int i = 0; i < stencils.size(); i++) {
      int place = i;
      Stencil stencil = stencils.get(i);
      drafts.addAll(
          sheet(stencil, stencils.size())
              .drafts(
                  s -> draw(s, stencil, place),
                  new StencilColumn(inlay, stencil, i, context).blocks()));
    }
    return drafts;
  }

  private PlanSheet sheet(Stencil stencil, int of) {
    String title =
        of == 1
            ? context.say("sheets.stencil-sheet.title")
            : context.say("sheets.stencil-sheet.title-of-many", stencil.layer(), of);
    return new PlanSheet(
        context,
        title,
        context.say("sheets.stencil-sheet.subtitle", inlay.inlay().name(), colour(stencil)),
        area.name(),
        CoordinateFrame.GRAPHIC,
        StencilInks.around(plan, stencil));
  }

  private String colour(Stencil stencil) {
    return context.say(inlay.colourName(stencil.colour()));
  }

  private void draw(PlanComposer sketch, Stencil stencil, int place) {
    sketch.addInks(DyeStyle.of(stencil.colour(), place).on(stencil.openings()));
    List<Stencil> one = List.of(stencil);
    sketch.addInks(StencilInks.blank(plan, stencil));
    sketch.addInks(StencilInks.seams(plan, one));
    sketch.addInks(StencilInks.witnesses(plan, one, sketch.view().scale()));
    sketch.addInks(StencilInks.ticks(plan, one));
    ticks(sketch, stencil);
    Bounds b = StencilInks.around(plan, stencil);
    sketch.keepOff(List.of(StencilInks.ring(b)));
    Optional<PanelPlan> own = plan.panels().map(p -> p.of(stencil));
    sizes(sketch, b, own);
    up(sketch, b);
    own.ifPresent(p -> panels(sketch, p));
    loose(sketch, stencil);
    findings(sketch, stencil);
  }

  /** A small red ring at every place that wants a look before this stencil is cut. */
  private void findings(PlanComposer sketch, Stencil stencil) {
    plan.findings().stream()
        .filter(f -> f.isOf(stencil) || (f.seen().isEmpty() && isNear(f, stencil)))
        .flatMap(f -> f.at().stream())
        .forEach(p -> sketch.addInks(List.of(Symbol.of(Symbol.Kind.LOOK, p, 3, Palette.RED))));
  }

  private static boolean isNear(Finding f, Stencil stencil) {
    return f.at().filter(p -> stencil.openings().distanceTo(p) < NEAR).isPresent();
  }

  /** Panel widths in the first row, the blank's width and height outside them. */
  private void sizes(PlanComposer sketch, Bounds b, Optional<PanelPlan> own) {
    Vec topLeft = new Vec(b.minX(), b.minY());
    own.filter(p -> p.panels().size() > 1).ifPresent(p -> widths(sketch, p));
    sketch.placeDimension(topLeft, new Vec(b.maxX(), b.minY()), 1, 7, context.length(b.width()));
    sketch.placeDimension(new Vec(b.minX(), b.maxY()), topLeft, 1, 7, context.length(b.height()));
  }

  private void widths(PlanComposer sketch, PanelPlan p) {
    for (Panel panel : p.panels()) {
      Bounds box = panel.box();
      if (box.minY() == p.blank().minY() && box.width() < p.blank().width()) {
        Vec from = new Vec(box.minX(), box.minY());
        Vec to = new Vec(box.maxX(), box.minY());
        sketch.placeDimension(from, to, 1, 7, context.length(box.width()));
      }
    }
  }

  private void up(PlanComposer sketch, Bounds b) {
    double off = 7 * context.type().k() / sketch.view().scale();
    Vec at = new Vec(b.maxX() + off, b.middle().y());
    sketch.placeSign(Symbol.of(Symbol.Kind.NEEDLE, at, 8, Palette.INK));
    TextStyle style = context.type().label();
    sketch.placeLabel(PlanLabel.of(at, context.say("sheets.stencil-sheet.top"), style).nearBy(9));
  }

  private void panels(PlanComposer sketch, PanelPlan p) {
    TextStyle style = TextStyle.bold(6 * context.type().k());
    double off = 5.5 * context.type().k() / sketch.view().scale();
    for (Panel panel : p.panels()) {
      boolean lowest = panel.box().maxY() >= p.blank().maxY();
      boolean first = panel.box().minX() <= p.blank().minX();
      Vec m = panel.box().middle();
      Vec at = lowest ? new Vec(m.x(), p.blank().maxY() + off) : m;
      Vec beside = first ? new Vec(p.blank().minX() - off, m.y()) : at;
      sketch.placeLabel(
          PlanLabel.of(lowest ? at : beside, panel.name(), style).on(Palette.WHITE).nearBy(12));
    }
  }

  private void ticks(PlanComposer sketch, Stencil stencil) {
    TextStyle style = TextStyle.bold(2.6 * context.type().k()).in(Palette.BLUE);
    StencilInks.ticksOf(plan, List.of(stencil))
        .forEach(
            t ->
                sketch.placeLabel(
                    PlanLabel.of(t.at(), Integer.toString(t.number()), style)
                        .on(Palette.WHITE)
                        .nearBy(8)));
  }

  private void loose(PlanComposer sketch, Stencil stencil) {
    int n = 0;
    for (LoosePiece piece : stencil.loosePieces()) {
      n++;
      sketch.placeNumber(piece.place(), List.of(), Integer.toString(n), 3.9);
    }
  }
}
