package slabwright.sheets.quantities;

import java.util.ArrayList;
import java.util.List;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.units.QuantityFormat;
import slabwright.work.AreaWorkPlan;
import slabwright.work.prep.FillerGap;
import slabwright.work.prep.FillerPlan;

/** Joints, cracks and spalls to fill, and the dust that fills the vacuum's bags. */
record FillerQuantities(AreaWorkPlan work, SheetContext context) {

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    FillerPlan filler = work.prep().filler();
    if (!filler.gaps().isEmpty()) {
      QuantitiesSheet.section(blocks, "Filler: length × width × depth", gaps(filler));
    }
    QuantitiesSheet.section(blocks, "Dust", dust());
    return blocks;
  }

  private TableBlock gaps(FillerPlan filler) {
    List<List<TableCell>> rows = new ArrayList<>();
    for (FillerGap g : filler.gaps()) {
      rows.add(
          List.of(
              TableCell.of(g.name() + " (" + g.kind() + ")"),
              TableCell.of(context.length(g.run())),
              TableCell.of(QuantityFormat.volume(g.mm3(), context.units()))));
    }
    return new TableBlock(
        List.of(TableColumn.words("gap"), TableColumn.number("run"), TableColumn.number("volume")),
        rows,
        List.of(
            TableCell.of("All gaps, without loss"),
            TableCell.of(""),
            TableCell.of(QuantityFormat.volume(filler.mm3(), context.units()))));
  }

  private TableBlock dust() {
    return TableBlock.of(
        List.of(TableColumn.words(""), TableColumn.number("")),
        List.of(
            List.of(
                TableCell.of("taken off the floor"),
                TableCell.of(
                    context
                        .words()
                        .say(work.prep().dust().text(kg -> QuantityFormat.number(kg, 1) + " kg")))),
            List.of(
                TableCell.of("vacuum bags, tops and steps included"),
                TableCell.of(context.words().say(work.bags().text(n -> n))))));
  }
}
