package slabwright.sheets.quantities;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.masking.DyeNeed;
import slabwright.inlay.masking.PaperRun;
import slabwright.inlay.panel.BlankSide;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.stencil.Stencil;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.units.QuantityFormat;
import slabwright.work.AreaWorkPlan;

/** The quantities of one inlay, as tables. */
final class InlayQuantities {
  private final PlacedInlay inlay;
  private final InlayPlan plan;
  private final Optional<AreaWorkPlan> work;
  private final SheetContext context;

  InlayQuantities(PlacedInlay inlay, Optional<AreaWorkPlan> work, SheetContext context) {
    this.inlay = inlay;
    this.work = work;
    this.plan = inlay.plan();
    this.context = context;
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    QuantitiesSheet.section(
        blocks, context.say("sheets.inlay-quantities.inlay", inlay.inlay().name()), main());
    QuantitiesSheet.section(
        blocks, context.say("sheets.inlay-quantities.dye", inlay.inlay().name()), dye());
    QuantitiesSheet.section(
        blocks,
        context.say("sheets.inlay-quantities.masking-paper", inlay.inlay().name()),
        paper());
    return blocks;
  }

  private TableBlock main() {
    List<List<TableCell>> rows = new ArrayList<>();
    rows.add(
        row(context.say("sheets.inlay-quantities.painted-size"), size(inlay.artwork().painted())));
    rows.add(row(context.say("sheets.inlay-quantities.blank"), size(plan.stencils().blank())));
    plan.panels().ifPresent(p -> local(rows, p));
    double openings = plan.openingArea();
    rows.add(row(context.say("sheets.inlay-quantities.openings"), context.area(openings)));
    rows.add(
        row(
            context.say("sheets.inlay-quantities.mask"),
            context.area(plan.blankArea() - openings)));
    rows.add(
        row(
            context.say("sheets.inlay-quantities.length-of-cut"),
            context.length(plan.cutLength())));
    rows.add(
        row(
            context.say("sheets.inlay-quantities.loose-pieces"),
            Integer.toString(plan.loosePieces())));
    plan.panels()
        .ifPresent(
            p ->
                rows.add(
                    row(
                        context.say("sheets.inlay-quantities.panels"),
                        Integer.toString(p.all().size()))));
    rows.add(row(context.say("sheets.inlay-quantities.film"), context.length(plan.rollLength())));
    plan.panels()
        .ifPresent(
            p ->
                rows.add(
                    row(
                        context.say("sheets.inlay-quantities.waste"),
                        QuantityFormat.number(plan.waste() * 100, 0) + " %")));
    rows.add(
        row(context.say("sheets.inlay-quantities.press-band"), context.area(plan.pressBandArea())));
    rows.add(row(context.say("sheets.inlay-quantities.skirt"), context.area(plan.skirtArea())));
    return TableBlock.of(List.of(TableColumn.words(""), TableColumn.number("")), rows);
  }

  private void local(List<List<TableCell>> rows, PanelPlan p) {
    for (Stencil s : plan.stencils().stencils()) {
      if (p.isLocal(s)) {
        String sizes = p.of(s).blanks().stream().map(this::size).collect(Collectors.joining("; "));
        String colour = context.say(inlay.colourName(s.colour()));
        rows.add(row(context.say("sheets.inlay-quantities.local-blanks", colour), sizes));
      }
    }
  }

  private String size(slabwright.shape.Bounds b) {
    return context.length(b.width()) + " × " + context.length(b.height());
  }

  private static List<TableCell> row(String label, String value) {
    return List.of(TableCell.of(label), TableCell.of(value));
  }

  private TableBlock dye() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (int i = 0; i < plan.stencils().stencils().size(); i++) {
      Stencil s = plan.stencils().stencils().get(i);
      Optional<DyeNeed> need = work.flatMap(w -> w.dyeNeed(inlay.inlay().id(), s.colour()));
      OptionalInt jars = need.map(DyeNeed::jars).orElse(OptionalInt.empty());
      rows.add(
          List.of(
              TableCell.of((i + 1) + ". " + context.say(inlay.colourName(s.colour()))),
              TableCell.of(context.bareArea(s.openings().area())),
              TableCell.of(volume(need.map(DyeNeed::litres).orElse(OptionalDouble.empty()))),
              TableCell.of(jars.isPresent() ? Integer.toString(jars.getAsInt()) : "–")));
    }
    return TableBlock.of(
        List.of(
            TableColumn.words(context.say("sheets.inlay-quantities.dye-in-laying-order")),
            TableColumn.number(context.areaUnit()),
            TableColumn.number(context.say("sheets.inlay-quantities.volume")),
            TableColumn.number(context.say("sheets.inlay-quantities.jars"))),
        rows);
  }

  private String volume(OptionalDouble litres) {
    return litres.isPresent()
        ? QuantityFormat.volume(litres.getAsDouble() * QuantityFormat.LITRE_MM3, context.units())
        : context.say("sheets.inlay-quantities.not-in-the-shop-book");
  }

  private String side(BlankSide side) {
    return switch (side) {
      case TOP -> context.say("sheets.inlay-quantities.top");
      case BOTTOM -> context.say("sheets.inlay-quantities.bottom");
      case LEFT -> context.say("sheets.inlay-quantities.left");
      case RIGHT -> context.say("sheets.inlay-quantities.right");
    };
  }

  private TableBlock paper() {
    List<List<TableCell>> rows = new ArrayList<>();
    plan.masking()
        .ifPresent(
            m -> {
              for (PaperRun run : m.paper()) {
                rows.add(
                    List.of(
                        TableCell.of(side(run.side())),
                        TableCell.of(run.strips() + " × " + context.length(run.width())),
                        TableCell.of(context.length(run.length()))));
              }
            });
    for (Stencil s : plan.stencils().stencils()) {
      if (plan.panels().filter(p -> p.isLocal(s)).isPresent()) {
        rows.add(
            List.of(
                TableCell.of(
                    context.say(
                        "sheets.inlay-quantities.around-local",
                        context.say(inlay.colourName(s.colour())))),
                TableCell.of(context.area(plan.skirtArea(s))),
                TableCell.of("")));
      }
    }
    return TableBlock.of(
        List.of(
            TableColumn.words(context.say("sheets.inlay-quantities.side-as-read")),
            TableColumn.number(context.say("sheets.inlay-quantities.strips")),
            TableColumn.number(context.say("sheets.inlay-quantities.each-long"))),
        rows);
  }
}
