package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.masking.DyeNeed;
import slabwright.inlay.masking.PaperRun;
import slabwright.inlay.stencil.Stencil;
import slabwright.units.Quantity;
import slabwright.work.AreaWork;

/** The quantities of one inlay, as tables. */
final class InlayQuantities {
  private final PlacedInlay inlay;
  private final InlayPlan plan;
  private final Optional<AreaWork> work;
  private final SheetContext context;

  InlayQuantities(PlacedInlay inlay, Optional<AreaWork> work, SheetContext context) {
    this.inlay = inlay;
    this.work = work;
    this.plan = inlay.plan();
    this.context = context;
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    QuantitiesSheet.section(blocks, "Inlay: " + inlay.inlay().name(), main());
    QuantitiesSheet.section(blocks, "Dye, " + inlay.inlay().name(), dye());
    QuantitiesSheet.section(blocks, "Masking paper, " + inlay.inlay().name(), paper());
    return blocks;
  }

  private Table main() {
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(row("painted size", size(inlay.artwork().painted())));
    rows.add(row("blank", size(plan.stencils().blank())));
    double openings = plan.openingArea();
    rows.add(row("openings", context.area(openings)));
    rows.add(row("mask", context.area(plan.blankArea() - openings)));
    rows.add(row("length of cut", context.length(plan.cutLength())));
    rows.add(row("loose pieces", Integer.toString(plan.loosePieces())));
    plan.panels().ifPresent(p -> rows.add(row("panels", Integer.toString(p.panels().size()))));
    rows.add(row("film from the roll", context.length(plan.rollLength())));
    plan.panels()
        .ifPresent(p -> rows.add(row("waste", Quantity.number(p.waste() * 100, 0) + " %")));
    rows.add(row("press band", context.area(plan.pressBandArea())));
    rows.add(row("skirt of paper", context.area(plan.skirtArea())));
    return Table.of(List.of(Column.words(""), Column.number("")), rows);
  }

  private String size(slabwright.shape.Bounds b) {
    return context.length(b.width()) + " × " + context.length(b.height());
  }

  private static List<Cell> row(String label, String value) {
    return List.of(Cell.of(label), Cell.of(value));
  }

  private Table dye() {
    List<List<Cell>> rows = new ArrayList<>();
    for (int i = 0; i < plan.stencils().stencils().size(); i++) {
      Stencil s = plan.stencils().stencils().get(i);
      DyeNeed planned = plan.dye().get(i);
      DyeNeed need = work.flatMap(w -> w.dyeNeed(inlay.inlay().id(), s.colour())).orElse(planned);
      rows.add(
          List.of(
              Cell.of((i + 1) + ". " + s.colour()),
              Cell.of(context.bareArea(need.area())),
              Cell.of(volume(need.litres())),
              Cell.of(need.jars().isPresent() ? Integer.toString(need.jars().getAsInt()) : "–")));
    }
    return Table.of(
        List.of(
            Column.words("dye, in laying order"),
            Column.number(context.areaUnit()),
            Column.number("volume"),
            Column.number("jars")),
        rows);
  }

  private String volume(OptionalDouble litres) {
    return litres.isPresent()
        ? Quantity.volume(litres.getAsDouble() * Quantity.LITRE_MM3, context.units())
        : "not in the shop book";
  }

  private Table paper() {
    List<List<Cell>> rows = new ArrayList<>();
    plan.masking()
        .ifPresent(
            m -> {
              for (PaperRun run : m.paper()) {
                rows.add(
                    List.of(
                        Cell.of(run.side().name().toLowerCase(java.util.Locale.ROOT)),
                        Cell.of(run.strips() + " × " + context.length(run.width())),
                        Cell.of(context.length(run.length()))));
              }
            });
    return Table.of(
        List.of(Column.words("side as read"), Column.number("strips"), Column.number("each long")),
        rows);
  }
}
