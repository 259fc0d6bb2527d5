package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Symbol;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.Seam;
import slabwright.inlay.stencil.Finding;
import slabwright.inlay.stencil.FindingGroups;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Bounds;
import slabwright.units.Quantity;

/** What stands beside the picture of one stencil: key, panels, roll, loose pieces, findings. */
final class StencilColumn {
  private final PlacedInlay inlay;
  private final InlayPlan plan;
  private final Stencil stencil;
  private final int place;
  private final SheetContext context;

  StencilColumn(PlacedInlay inlay, Stencil stencil, int place, SheetContext context) {
    this.inlay = inlay;
    this.plan = inlay.plan();
    this.stencil = stencil;
    this.place = place;
    this.context = context;
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading("Weed the shaded, keep the rest"));
    blocks.add(key());
    blocks.add(new Gap(3));
    plan.panels().ifPresent(p -> panelBlocks(blocks, p));
    if (!stencil.loosePieces().isEmpty()) {
      blocks.add(new Heading("Loose pieces"));
      blocks.add(looseTable());
      blocks.add(new Gap(3));
    }
    findings(blocks);
    return blocks;
  }

  private Block key() {
    List<Key.Entry> entries = new ArrayList<>();
    entries.add(
        Key.look(
            DyeLook.of(stencil.colour(), place),
            "weeded: pulled out, so that dye reaches the floor"));
    entries.add(Key.look(MarkLooks.MACHINE, "mask: the vinyl that stays"));
    if (plan.panels().filter(p -> !p.laps().isEmpty()).isPresent()) {
      entries.add(Key.line(InlayInks.seamPen(), "seam: both panels cover what lies between"));
      entries.add(
          Key.sign(Symbol.Kind.WITNESS, Palette.INK, "witness cross, on both panels of a seam"));
    }
    entries.add(Key.line(Pen.of(0.5, Palette.INK), "edge of the blank"));
    return Key.of(entries);
  }

  private void panelBlocks(List<Block> blocks, PanelPlan p) {
    blocks.add(new Heading("Panels, in the order of laying"));
    List<List<Cell>> rows = new ArrayList<>();
    for (String name : p.layingOrder()) {
      p.panels().stream()
          .filter(x -> x.name().equals(name))
          .forEach(
              x ->
                  rows.add(
                      List.of(
                          new Cell.Tick(),
                          Cell.bold(x.name()),
                          Cell.of(context.length(x.box().width())),
                          Cell.of(context.length(x.box().height())))));
    }
    blocks.add(
        Table.of(
            List.of(
                Column.narrow(""),
                Column.words("panel"),
                Column.number("width"),
                Column.number("height")),
            rows));
    blocks.add(
        new Prose(
            "Sizes include the overlap"
                + p.laps().stream().findFirst().map(this::overlap).orElse("")
                + ". Roll used: "
                + context.length(p.rollLength())
                + ", waste "
                + Quantity.number(p.waste() * 100, 0)
                + " %."));
    blocks.add(new RollPicture(p, inlay.inlay().spec().roll().mm(), context));
    blocks.add(new Gap(4));
  }

  private String overlap(Seam s) {
    return " of " + context.length(Math.min(s.lap().width(), s.lap().height()));
  }

  private Block looseTable() {
    List<List<Cell>> rows = new ArrayList<>();
    for (int i = 0; i < stencil.loosePieces().size(); i++) {
      Bounds b = stencil.loosePieces().get(i).region().bounds();
      rows.add(
          List.of(
              new Cell.Ringed(Integer.toString(i + 1)),
              Cell.of("carry on transfer tape"),
              Cell.of(context.length(b.width()) + " × " + context.length(b.height()))));
    }
    return Table.of(
        List.of(Column.narrow(""), Column.words("loose piece"), Column.number("size")), rows);
  }

  /** What this stencil's check found, and on the first stencil's page what concerns all. */
  private void findings(List<Block> blocks) {
    List<Finding> here =
        plan.findings().stream()
            .filter(f -> f.isOf(stencil) || (place == 0 && f.seen().isEmpty()))
            .toList();
    if (!here.isEmpty()) {
      blocks.add(new Heading("Before it is cut"));
      FindingGroups.of(here, context.units()).forEach(g -> blocks.add(new Prose(words(g))));
    }
  }

  private static String words(FindingGroups.Group g) {
    String sign = g.weight() == Finding.Weight.CANNOT ? "✕ " : "! ";
    int ringed = g.places().size();
    String where =
        ringed == 0
            ? ""
            : ringed == g.count() ? " Ringed in red." : " " + ringed + " of them ringed in red.";
    return sign + g.sentence() + where;
  }
}
