package slabwright.sheets.prep;

import java.util.ArrayList;
import java.util.List;
import slabwright.figures.ReachChart;
import slabwright.floor.reach.ReachCurve;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.KeyBlock;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.Slice;
import slabwright.sheets.page.TypeSizes;
import slabwright.site.Machine;

/** Reach against width as a picture in a column, with its key. */
record ReachBlock(List<ReachCurve> curves, List<Machine> machines, SheetContext context)
    implements Block {
  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    double height = 52 * type.k();
    ReachChart chart =
        new ReachChart(curves, machines, context.units(), context.words(), width, height, type.k());
    List<Slice> slices = new ArrayList<>();
    slices.add(new Slice(height + 2 * type.k(), true, chart.inks()));
    if (curves.size() > 1) {
      List<KeyBlock.Entry> key =
          List.of(
              KeyBlock.line(ReachChart.FOUND, context.say("sheets.reach-block.as-found")),
              KeyBlock.line(ReachChart.LEVEL, context.say("sheets.reach-block.once-level")));
      slices.addAll(KeyBlock.of(key).slices(type, width));
    }
    return slices;
  }
}
