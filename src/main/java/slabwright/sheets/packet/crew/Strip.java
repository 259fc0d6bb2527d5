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

  /** How many rows from this one fit the height; at least one. */
  static int take(List<Strip> rows, int from, double room) {
    double y = 0;
    int i = from;
    while (i < rows.size() && (y + rows.get(i).height() <= room || i == from)) {
      y += rows.get(i++).height();
    }
    return i;
  }

  /** Draws rows one under the other; gives where the last ends. */
  static double lay(List<Ink> inks, double x, List<Strip> rows, double top) {
    double y = top;
    for (Strip r : rows) {
      inks.addAll(r.at(x, y));
      y += r.height;
    }
    return y;
  }
}
