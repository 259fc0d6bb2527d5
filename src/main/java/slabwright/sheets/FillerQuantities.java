package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import slabwright.units.Quantity;
import slabwright.work.AreaWork;
import slabwright.work.prep.FillerGap;
import slabwright.work.prep.FillerPlan;

/** Joints, cracks and spalls to fill, and the dust that fills the vacuum's bags. */
record FillerQuantities(AreaWork work, SheetContext context) {

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    FillerPlan filler = work.prep().filler();
    if (!filler.gaps().isEmpty()) {
      QuantitiesSheet.section(blocks, "Filler: length × width × depth", gaps(filler));
    }
    QuantitiesSheet.section(blocks, "Dust", dust());
    return blocks;
  }

  private Table gaps(FillerPlan filler) {
    List<List<Cell>> rows = new ArrayList<>();
    for (FillerGap g : filler.gaps()) {
      rows.add(
          List.of(
              Cell.of(g.name() + " (" + g.kind() + ")"),
              Cell.of(context.length(g.run())),
              Cell.of(Quantity.volume(g.mm3(), context.units()))));
    }
    return new Table(
        List.of(Column.words("gap"), Column.number("run"), Column.number("volume")),
        rows,
        List.of(
            Cell.of("All gaps, without loss"),
            Cell.of(""),
            Cell.of(Quantity.volume(filler.mm3(), context.units()))));
  }

  private Table dust() {
    return Table.of(
        List.of(Column.words(""), Column.number("")),
        List.of(
            List.of(
                Cell.of("taken off the floor"),
                Cell.of(work.prep().dust().text(kg -> Quantity.number(kg, 1) + " kg"))),
            List.of(
                Cell.of("vacuum bags, tops and steps included"),
                Cell.of(work.bags().text(n -> n.toString())))));
  }
}
