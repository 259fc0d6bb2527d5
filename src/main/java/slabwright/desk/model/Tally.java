package slabwright.desk.model;

import java.util.ArrayList;
import java.util.List;
import slabwright.floor.FloorTakeoff;
import slabwright.inlay.InlayPlan;
import slabwright.units.Quantity;
import slabwright.units.UnitSystem;

/** The figures that never leave, from whatever has been worked out. */
public final class Tally {
  private Tally() {}

  public static List<TallyItem> of(Answers answers, UnitSystem units) {
    List<TallyItem> items = new ArrayList<>();
    if (answers.takeoff().isPresent()) {
      floor(answers.takeoff().get(), units, items);
    } else {
      for (String what : List.of("Net floor", "Machine", "By hand", "Edges", "Cut-in")) {
        items.add(TallyItem.unknown(what));
      }
    }
    items.add(inlay(answers, units));
    return items;
  }

  private static void floor(FloorTakeoff t, UnitSystem units, List<TallyItem> items) {
    items.add(TallyItem.of("Net floor", Quantity.area(t.net().area(), units)));
    boolean machines = !t.area().machines().isEmpty();
    items.add(
        machines
            ? TallyItem.of("Machine", Quantity.area(t.asFound().machine().area(), units))
            : new TallyItem("Machine", "none set", TallyItem.Tone.UNKNOWN));
    String hand = Quantity.area(t.asFound().hand().area(), units);
    items.add(new TallyItem("By hand", hand, TallyItem.Tone.LOOK));
    items.add(TallyItem.of("Edges", Quantity.run(t.edgeLength(), units)));
    items.add(TallyItem.of("Cut-in", Quantity.run(t.cutIn(), units)));
  }

  private static TallyItem inlay(Answers answers, UnitSystem units) {
    double area =
        answers.inlays().stream()
            .flatMap(i -> i.plan().stream())
            .mapToDouble(InlayPlan::openingArea)
            .sum();
    return area > 0
        ? TallyItem.of("Inlay", Quantity.area(area, units))
        : TallyItem.unknown("Inlay");
  }
}
