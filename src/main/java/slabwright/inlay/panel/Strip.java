package slabwright.inlay.panel;

import java.util.List;

/**
 * One run of roll across the blank.
 *
 * @param from its lower edge across the strips
 * @param to its upper edge, overlap included
 * @param joints places of its inner joints along the strip
 */
record Strip(double from, double to, List<Double> joints) {
  Strip {
    joints = List.copyOf(joints);
  }

  double width() {
    return to - from;
  }
}
