package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Frame;
import slabwright.drawing.Palette;
import slabwright.drawing.Symbol;
import slabwright.drawing.TextStyle;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.stencil.Finding;
import slabwright.inlay.stencil.LoosePiece;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;

/** Sheet 4: one inlay's stencils as they are weeded, with panels, seams and loose pieces. */
final class StencilSheet {
  /** A finding about the whole this near an opening, mm, is ringed there. */
  private static final double NEAR = 1;

  private final FloorArea area;
  private final PlacedInlay inlay;
  private final InlayPlan plan;
  private final SheetContext context;

  StencilSheet(FloorArea area, PlacedInlay inlay, SheetContext context) {
    this.area = area;
    this.inlay = inlay;
    this.plan = inlay.plan();
    this.context = context;
  }

  List<Draft> drafts() {
    List<Draft> drafts = new ArrayList<>();
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
    String which = of == 1 ? "" : ", stencil " + stencil.layer() + " of " + of;
    return new PlanSheet(
        context,
        "4",
        "Stencil panels and weed picture" + which,
        inlay.inlay().name()
            + " · dye "
            + stencil.colour()
            + " · seen from the face of the film, as it reads on the floor, not mirrored",
        area.name(),
        Frame.GRAPHIC,
        plan.stencils().blank());
  }

  private void draw(Sketch sketch, Stencil stencil, int place) {
    sketch.ink(DyeLook.of(stencil.colour(), place).on(stencil.openings()));
    sketch.ink(List.of(InlayInks.blank(plan)));
    sketch.ink(InlayInks.seams(plan)).ink(InlayInks.witnesses(plan));
    Bounds b = plan.stencils().blank();
    sketch.keepOff(List.of(InlayInks.ring(b)));
    sizes(sketch, b);
    up(sketch, b);
    plan.panels().ifPresent(p -> panels(sketch, p));
    loose(sketch, stencil);
    findings(sketch, stencil);
  }

  /** A small red ring at every place that wants a look before this stencil is cut. */
  private void findings(Sketch sketch, Stencil stencil) {
    plan.findings().stream()
        .filter(f -> f.isOf(stencil) || (f.seen().isEmpty() && isNear(f, stencil)))
        .flatMap(f -> f.at().stream())
        .forEach(p -> sketch.ink(List.of(Symbol.of(Symbol.Kind.LOOK, p, 3, Palette.RED))));
  }

  private static boolean isNear(Finding f, Stencil stencil) {
    return f.at().filter(p -> stencil.openings().distanceTo(p) < NEAR).isPresent();
  }

  /** Panel widths in the first row, the blank's width and height outside them. */
  private void sizes(Sketch sketch, Bounds b) {
    Vec topLeft = new Vec(b.minX(), b.minY());
    plan.panels().filter(p -> p.panels().size() > 1).ifPresent(p -> widths(sketch, p));
    sketch.dimension(topLeft, new Vec(b.maxX(), b.minY()), 1, 7, context.length(b.width()));
    sketch.dimension(new Vec(b.minX(), b.maxY()), topLeft, 1, 7, context.length(b.height()));
  }

  private void widths(Sketch sketch, PanelPlan p) {
    for (Panel panel : p.panels()) {
      Bounds box = panel.box();
      if (box.minY() == p.blank().minY() && box.width() < p.blank().width()) {
        Vec from = new Vec(box.minX(), box.minY());
        Vec to = new Vec(box.maxX(), box.minY());
        sketch.dimension(from, to, 1, 7, context.length(box.width()));
      }
    }
  }

  private void up(Sketch sketch, Bounds b) {
    double off = 7 * context.type().k() / sketch.view().scale();
    Vec at = new Vec(b.maxX() + off, b.middle().y());
    sketch.sign(Symbol.of(Symbol.Kind.NEEDLE, at, 8, Palette.INK));
    TextStyle style = context.type().strong().sized(2.8 * context.type().k());
    sketch.words(PlanWords.of(at, "top", style).nearBy(9));
  }

  private void panels(Sketch sketch, PanelPlan p) {
    TextStyle style = TextStyle.bold(6 * context.type().k()).in(Palette.RED);
    double off = 5.5 * context.type().k() / sketch.view().scale();
    for (Panel panel : p.panels()) {
      boolean lowest = panel.box().maxY() >= p.blank().maxY();
      boolean first = panel.box().minX() <= p.blank().minX();
      Vec m = panel.box().middle();
      Vec at = lowest ? new Vec(m.x(), p.blank().maxY() + off) : m;
      Vec beside = first ? new Vec(p.blank().minX() - off, m.y()) : at;
      sketch.words(
          PlanWords.of(lowest ? at : beside, panel.name(), style).on(Palette.WHITE).nearBy(12));
    }
  }

  private void loose(Sketch sketch, Stencil stencil) {
    int n = 0;
    for (LoosePiece piece : stencil.loosePieces()) {
      n++;
      sketch.number(piece.place(), List.of(), Integer.toString(n), 3.9);
    }
  }
}
