package slabwright.floor;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * Bands along banks, on their left, mitred where two banks meet: the bisector is where the nearest
 * bank changes.
 */
final class MitredBands {
  /** No mitre reaches farther along than this many widths. */
  private static final double SPIKE = 4;

  private final Map<Vec, List<Vec>> into = new HashMap<>();
  private final Map<Vec, List<Vec>> outOf = new HashMap<>();

  MitredBands(List<WorkingEdge> banks) {
    for (WorkingEdge b : banks) {
      for (Line line : b.lines()) {
        for (int i = 0; i + 1 < line.points().size(); i++) {
          Vec from = line.points().get(i);
          Vec to = line.points().get(i + 1);
          Vec way = to.minus(from).unit();
          outOf.computeIfAbsent(from, v -> new ArrayList<>()).add(way);
          into.computeIfAbsent(to, v -> new ArrayList<>()).add(way);
        }
      }
    }
  }

  /** One quadrilateral a segment. */
  List<Ring> of(WorkingEdge bank, double width) {
    List<Ring> rings = new ArrayList<>();
    for (Line line : bank.lines()) {
      for (int i = 0; i + 1 < line.points().size(); i++) {
        Vec from = line.points().get(i);
        Vec to = line.points().get(i + 1);
        Vec way = to.minus(from).unit();
        Vec start = from.plus(mitre(into.get(from), way, width));
        Vec end = to.plus(mitre(outOf.get(to), way, width));
        if (end.minus(start).dot(way) > 0) {
          rings.add(new Ring(List.of(from, to, end, start)));
        }
      }
    }
    return rings;
  }

  /** From a corner to the corner of the band; square where several banks meet or none does. */
  private static Vec mitre(List<Vec> others, Vec way, double width) {
    Vec square = way.left().times(width);
    if (others == null || others.size() != 1) {
      return square;
    }
    Vec sum = way.left().plus(others.get(0).left());
    double half = sum.dot(sum) / 2;
    return half < 2 / (SPIKE * SPIKE) ? square : sum.times(width / half);
  }
}
