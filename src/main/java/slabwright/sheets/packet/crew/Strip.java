package slabwright.sheets.packet.crew;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.View;
import slabwright.shape.Vec;

/** A piece of the page with its height, drawn from its own top-left corner. */
record Strip(double height, List<Ink> inks) {
  List<Ink> at(double x, double y) {
    View there = View.yDown(1, Vec.ZERO, new Vec(x, y));
    return inks.stream().map(i -> i.placed(there)).toList();
  }

  Strip under(Strip top) {
    List<Ink> both = new ArrayList<>(top.inks);
    both.addAll(at(0, top.height));
    return new Strip(top.height + height, both);
  }
}
