package slabwright.sheets.stencil;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Symbol;
import slabwright.drawing.Text;
import slabwright.figures.DyeStyle;
import slabwright.figures.MarkStyles;
import slabwright.figures.RollDiagram;
import slabwright.figures.StencilInks;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.Seam;
import slabwright.inlay.stencil.Finding;
import slabwright.inlay.stencil.FindingGroups;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.KeyBlock;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.Slice;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.sheets.page.TypeSizes;
import slabwright.units.QuantityFormat;

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
    blocks.add(new Heading(context.say("sheets.stencil-column.weed")));
    if (!stencil.loosePieces().isEmpty()) {
      blocks.add(new Paragraph(context.say("sheets.stencil-column.ringed-stay")));
    }
    blocks.add(key());
    blocks.add(new Gap(3));
    plan.panels()
        .ifPresent(
            p -> {
              panelBlocks(blocks, p.of(stencil));
              p.saving(stencil).ifPresent(s -> blocks.add(new Paragraph(saving(p, s))));
              blocks.add(new Gap(4));
            });
    if (!stencil.loosePieces().isEmpty()) {
      blocks.add(new Heading(context.say("sheets.stencil-column.loose-pieces")));
      blocks.add(looseTable());
      blocks.add(new Gap(3));
    }
    findings(blocks);
    if (place == 0) {
      plan.panels().filter(p -> !p.ticks().isEmpty()).ifPresent(p -> ticks(blocks, p));
    }
    return blocks;
  }

  private Block key() {
    List<KeyBlock.Entry> entries = new ArrayList<>();
    entries.add(
        KeyBlock.look(
            DyeStyle.of(stencil.colour(), place), context.say("sheets.stencil-column.weeded")));
    entries.add(KeyBlock.look(MarkStyles.MACHINE, context.say("sheets.stencil-column.mask")));
    if (plan.panels().filter(p -> !p.of(stencil).laps().isEmpty()).isPresent()) {
      entries.add(KeyBlock.line(StencilInks.seamPen(), context.say("sheets.stencil-column.seam")));
      entries.add(
          KeyBlock.sign(
              Symbol.Kind.WITNESS, Palette.INK, context.say("sheets.stencil-column.witness")));
    }
    if (plan.panels().filter(p -> !p.ticks().isEmpty()).isPresent()) {
      entries.add(
          KeyBlock.sign(Symbol.Kind.LOOK, Palette.BLUE, context.say("sheets.stencil-column.tick")));
    }
    entries.add(KeyBlock.line(Pen.of(0.5, Palette.INK), context.say("sheets.stencil-column.edge")));
    return KeyBlock.of(entries);
  }

  private void panelBlocks(List<Block> blocks, PanelPlan p) {
    blocks.add(new Heading(context.say("sheets.stencil-column.panels")));
    List<List<TableCell>> rows = new ArrayList<>();
    List<Panel> cut = p.cut(stencil);
    for (String name : p.layingOrder()) {
      cut.stream()
          .filter(x -> x.name().equals(name))
          .forEach(
              x ->
                  rows.add(
                      List.of(
                          new TableCell.Tick(),
                          TableCell.bold(x.name()),
                          TableCell.of(context.length(x.box().width())),
                          TableCell.of(context.length(x.box().height())))));
    }
    blocks.add(
        TableBlock.of(
            List.of(
                TableColumn.narrow(""),
                TableColumn.words(context.say("sheets.stencil-column.panel")),
                TableColumn.number(context.say("sheets.stencil-column.width")),
                TableColumn.number(context.say("sheets.stencil-column.height"))),
            rows));
    if (cut.size() < p.panels().size()) {
      String empty =
          p.panels().stream()
              .filter(x -> !cut.contains(x))
              .map(Panel::name)
              .collect(Collectors.joining(", "));
      blocks.add(new Paragraph(context.say("sheets.stencil-column.not-cut", empty)));
    }
    blocks.add(new Paragraph(rollUse(p)));
    double roll = inlay.inlay().spec().roll().mm();
    blocks.add(new RollBlock(new RollDiagram(p, cut, List.of(), roll), context));
  }

  private String saving(PanelPlan p, PanelPlan.Saving s) {
    return context.say(
        "sheets.stencil-column.local",
        p.of(stencil).blanks().size(),
        context.length(s.roll()),
        context.area(Math.max(0, s.film())));
  }

  /** Where the ticks lie on the blank, so that they can be put on the floor. */
  private void ticks(List<Block> blocks, PanelPlan p) {
    String places =
        p.ticks().stream()
            .map(
                t ->
                    context.say(
                        "sheets.stencil-column.tick-place",
                        t.number(),
                        context.length(t.at().x() - p.blank().minX()),
                        context.length(t.at().y() - p.blank().minY())))
            .collect(Collectors.joining(" · "));
    blocks.add(new Heading(context.say("sheets.stencil-column.ticks")));
    blocks.add(new Paragraph(context.say("sheets.stencil-column.ticks-first")));
    blocks.add(new Paragraph(places));
    blocks.add(new Gap(3));
  }

  private String rollUse(PanelPlan p) {
    String used = context.length(p.rollLength(stencil));
    String waste = QuantityFormat.number(p.waste() * 100, 0);
    return p.laps().stream()
        .findFirst()
        .map(
            s ->
                context.say("sheets.stencil-column.roll-use-with-overlap", overlap(s), used, waste))
        .orElseGet(() -> context.say("sheets.stencil-column.roll-use", used, waste));
  }

  private String overlap(Seam s) {
    return context.length(Math.min(s.lap().width(), s.lap().height()));
  }

  private Block looseTable() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (int i = 0; i < stencil.loosePieces().size(); i++) {
      Bounds b = stencil.loosePieces().get(i).region().bounds();
      rows.add(
          List.of(
              new TableCell.Ringed(Integer.toString(i + 1)),
              TableCell.of(context.say("sheets.stencil-column.carry")),
              TableCell.of(context.length(b.width()) + " × " + context.length(b.height()))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.narrow(""),
            TableColumn.words(context.say("sheets.stencil-column.loose-piece")),
            TableColumn.number(context.say("sheets.stencil-column.size"))),
        rows);
  }

  /** What this stencil's check found, and on the first stencil's page what concerns all. */
  private void findings(List<Block> blocks) {
    List<Finding> here =
        plan.findings().stream()
            .filter(f -> f.isOf(stencil) || (place == 0 && f.seen().isEmpty()))
            .toList();
    if (!here.isEmpty()) {
      blocks.add(new Heading(context.say("sheets.stencil-column.before-it-is-cut")));
      FindingGroups.of(here, context.units()).forEach(g -> blocks.add(new Paragraph(words(g))));
    }
  }

  private String words(FindingGroups.Group g) {
    String sign = g.weight() == Finding.Weight.CANNOT ? "✕ " : "! ";
    String sentence = sign + context.words().say(g.sentence());
    int ringed = g.places().size();
    if (ringed == 0) {
      return sentence;
    }
    String where =
        ringed == g.count()
            ? context.say("sheets.stencil-column.ringed")
            : context.say("sheets.stencil-column.some-ringed", ringed);
    return sentence + " " + where;
  }

  /** The panels along the roll as wide as the column, with the roll's width in words. */
  private record RollBlock(RollDiagram diagram, SheetContext context) implements Block {
    @Override
    public List<Slice> slices(TypeSizes type, double width) {
      double k = type.k();
      double top = 2 * k;
      double scale = diagram.scale(width, 28 * k);
      double high = diagram.roll() * scale;
      List<Ink> inks = new ArrayList<>(diagram.inks(scale, top, 4.4 * k));
      String words =
          context.say("sheets.roll-block.along-the-roll", context.length(diagram.roll()));
      inks.add(Text.start(new Vec(0, top + high + 4 * k), words, type.small()));
      return List.of(new Slice(top + high + 7 * k, false, inks));
    }
  }
}
