package slabwright.sheets.packet.shop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.drawing.CoordinateFrame;
import slabwright.drawing.Palette;
import slabwright.drawing.Symbol;
import slabwright.figures.DyeStyle;
import slabwright.figures.StencilInks;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.stencil.LoosePiece;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.RegionDistance;
import slabwright.shape.Vec;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.KeyBlock;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.PairBlock;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.plan.OverviewBlock;
import slabwright.sheets.plan.PlanComposer;
import slabwright.sheets.plan.PlanLabel;

/** One stencil as it is weeded, every panel with its size. */
final class PanelPage {
  /** About half of a letter's size on paper, mm: as far as it keeps from openings and rims. */
  private static final double CLEAR = 5.5;

  /** Steps in which a free place is looked for across a panel. */
  private static final int GRID = 24;

  /** Findings within this of an opening are ringed, mm. */
  private static final double NEAR = 1;

  private final PlacedInlay placed;
  private final InlayPlan plan;
  private final SheetContext context;

  PanelPage(PlacedInlay placed, SheetContext context) {
    this.placed = placed;
    this.plan = placed.plan();
    this.context = context;
  }

  List<PageDraft> drafts(int place) {
    List<Stencil> stencils = plan.stencils().stencils();
    Stencil stencil = stencils.get(place);
    PageDraft draft =
        new PageDraft(
            context.say(
                "sheets.panel-page.title", stencil.layer(), stencils.size(), colour(stencil)),
            context.say("sheets.panel-page.subtitle", placed.inlay().name()),
            "",
            Optional.empty(),
            List.of());
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new OverviewBlock(
            CoordinateFrame.GRAPHIC,
            StencilInks.around(plan, stencil),
            168,
            24,
            s -> draw(s, stencil, place)));
    blocks.add(key(stencil, place));
    return ColumnPages.of(context, draft, blocks);
  }

  private String colour(Stencil stencil) {
    return context.say(placed.colourName(stencil.colour()));
  }

  private Block key(Stencil stencil, int place) {
    List<KeyBlock.Entry> left = new ArrayList<>();
    left.add(
        KeyBlock.look(
            DyeStyle.of(stencil.colour(), place), context.say("sheets.panel-page.weeded")));
    boolean seamed = plan.panels().filter(p -> p.cut(stencil).size() > 1).isPresent();
    if (seamed) {
      left.add(KeyBlock.line(StencilInks.seamPen(), context.say("sheets.panel-page.seam")));
    }
    List<KeyBlock.Entry> right = new ArrayList<>();
    if (!stencil.loosePieces().isEmpty()) {
      right.add(
          KeyBlock.ringed(
              "1", context.say("sheets.panel-page.stays", stencil.loosePieces().size())));
    }
    if (seamed) {
      right.add(
          KeyBlock.sign(
              Symbol.Kind.WITNESS, Palette.INK, context.say("sheets.panel-page.witness")));
    }
    if (findings(stencil).findAny().isPresent()) {
      right.add(
          KeyBlock.sign(Symbol.Kind.LOOK, Palette.RED, context.say("sheets.panel-page.look")));
    }
    return right.isEmpty()
        ? KeyBlock.of(left)
        : new PairBlock(0.5, List.of(KeyBlock.of(left)), List.of(KeyBlock.of(right)));
  }

  private java.util.stream.Stream<Vec> findings(Stencil stencil) {
    return plan.findings().stream()
        .flatMap(f -> f.at().stream())
        .filter(p -> stencil.openings().distanceTo(p) < NEAR);
  }

  private void draw(PlanComposer sketch, Stencil stencil, int place) {
    sketch.addInks(DyeStyle.of(stencil.colour(), place).on(stencil.openings()));
    sketch.addInks(StencilInks.blank(plan, stencil));
    sketch.addInks(StencilInks.seams(plan, List.of(stencil)));
    plan.panels().ifPresent(p -> panels(sketch, p.of(stencil), stencil.openings()));
    Bounds b = StencilInks.around(plan, stencil);
    Vec topLeft = new Vec(b.minX(), b.minY());
    sketch.placeDimension(topLeft, new Vec(b.maxX(), b.minY()), 1, 7, context.length(b.width()));
    sketch.placeDimension(new Vec(b.minX(), b.maxY()), topLeft, 1, 7, context.length(b.height()));
    double off = 10 / sketch.view().scale();
    Vec beside = new Vec(b.maxX() + off, b.middle().y());
    sketch.placeSign(Symbol.of(Symbol.Kind.NEEDLE, beside, 9, Palette.INK));
    sketch.placeLabel(
        PlanLabel.of(beside, context.say("sheets.panel-page.top"), context.type().label())
            .nearBy(10));
    int n = 0;
    for (LoosePiece piece : stencil.loosePieces()) {
      n++;
      sketch.placeNumber(piece.place(), List.of(), Integer.toString(n), 5.03);
    }
    findings(stencil)
        .forEach(p -> sketch.addInks(List.of(Symbol.of(Symbol.Kind.LOOK, p, 3.4, Palette.RED))));
  }

  private void panels(PlanComposer sketch, PanelPlan p, Region openings) {
    p.laps().stream()
        .flatMap(s -> s.marks().stream())
        .forEach(
            m -> sketch.addInks(List.of(Symbol.of(Symbol.Kind.WITNESS, m.at(), 3, Palette.INK))));
    RegionDistance weeded = new RegionDistance(openings);
    Bounds blank = p.blank();
    int row = 0;
    for (Panel panel : p.panels()) {
      Bounds box = panel.box();
      Vec m = box.middle();
      sketch.placeLabel(
          PlanLabel.of(m, panel.name(), context.type().title())
              .wishing(besideOpenings(sketch, box, weeded))
              .on(Palette.WHITE)
              .nearBy(60));
      boolean lowest = box.maxY() >= blank.maxY();
      boolean first = box.minX() <= blank.minX();
      if (lowest && box.width() < blank.width()) {
        sketch.placeDimension(
            new Vec(box.minX(), blank.maxY()),
            new Vec(box.maxX(), blank.maxY()),
            -1,
            6 + 6.5 * (row % 2),
            context.length(box.width()));
        row++;
      }
      if (first && box.height() < blank.height()) {
        sketch.placeDimension(
            new Vec(blank.minX(), box.maxY()),
            new Vec(blank.minX(), box.minY()),
            1,
            6,
            context.length(box.height()));
      }
    }
  }

  /**
   * Places on paper for a panel's letter where it hides nothing that is weeded, the lowest middle
   * first; by the panel's foot where there is none.
   */
  private static List<Vec> besideOpenings(PlanComposer sketch, Bounds box, RegionDistance weeded) {
    double mm = 1 / sketch.view().scale();
    Bounds inside = box.grown(-CLEAR * mm);
    Vec foot = new Vec(box.middle().x(), box.maxY() - 5 * mm);
    List<Vec> free = new ArrayList<>();
    for (int i = 0; i <= GRID; i++) {
      for (int j = 0; j <= GRID; j++) {
        Vec at =
            new Vec(
                inside.minX() + inside.width() * i / GRID,
                inside.minY() + inside.height() * j / GRID);
        if (!weeded.isWithin(at, CLEAR * mm)) {
          free.add(at);
        }
      }
    }
    free.sort(Comparator.comparingDouble(at -> at.distanceTo(foot)));
    free.add(foot);
    return free.stream().map(sketch.view()::onPaper).toList();
  }
}
