package slabwright.drawing.label;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Line;
import slabwright.shape.Vec;

/**
 * Room for dimensions where an outline turns back: outside such a corner the dimensions of both
 * sides would cross. The longer side's then stands off by the shorter side's length besides, so
 * that it runs past the shorter side's end. Where both sides are long their fine lines may cross
 * near the corner, away from the words.
 */
public final class DimensionStandOffs {
  /** A side shorter than this many mm of paper has its words where the other line would run. */
  private static final double SHORT = 32;

  private DimensionStandOffs() {}

  /**
   * How much further each side's dimension stands off, mm of paper.
   *
   * @param sides of a closed outline, in order
   * @param floorOnLeft on which side of them the floor lies
   * @param scale mm of paper to a mm
   */
  public static List<Double> compute(List<Line> sides, boolean floorOnLeft, double scale) {
    List<Double> off = new ArrayList<>();
    sides.forEach(s -> off.add(0.0));
    for (int k = 0; k < sides.size(); k++) {
      int next = (k + 1) % sides.size();
      double turn = run(sides.get(k)).cross(run(sides.get(next)));
      double here = run(sides.get(k)).length() * scale;
      double there = run(sides.get(next)).length() * scale;
      boolean back = floorOnLeft ? turn < 0 : turn > 0;
      if (back && Math.min(here, there) < SHORT) {
        int longer = here >= there ? k : next;
        off.set(longer, Math.max(off.get(longer), Math.min(here, there)));
      }
    }
    return off;
  }

  private static Vec run(Line side) {
    return side.points().get(side.points().size() - 1).minus(side.points().get(0));
  }
}
