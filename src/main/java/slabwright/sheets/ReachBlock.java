package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import slabwright.floor.ReachCurve;
import slabwright.site.Machine;
import slabwright.units.UnitSystem;

/** Reach against width as a picture in a column, with its key. */
record ReachBlock(List<ReachCurve> curves, List<Machine> machines, UnitSystem units)
    implements Block {
  @Override
  public List<Slice> slices(Type type, double width) {
    double height = 52 * type.k();
    ReachChart chart = new ReachChart(curves, machines, units, width, height, type.k());
    List<Slice> slices = new ArrayList<>();
    slices.add(new Slice(height + 2 * type.k(), true, chart.inks()));
    if (curves.size() > 1) {
      List<Key.Entry> key =
          List.of(
              Key.line(ReachChart.FOUND, "as found"),
              Key.line(ReachChart.LEVEL, "once every trench is level"));
      slices.addAll(Key.of(key).slices(type, width));
    }
    return slices;
  }
}
