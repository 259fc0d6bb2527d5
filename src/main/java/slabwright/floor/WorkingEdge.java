package slabwright.floor;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.SegmentGeometry;
import slabwright.shape.Vec;
import slabwright.site.GrindingAccess;
import slabwright.site.Mark;
import slabwright.site.MarkKind;

/**
 * A line that the machine works along without crossing it; the floor it drives on is on the left.
 */
record WorkingEdge(Optional<Edge> edge, Optional<Mark> along, List<Line> lines) {
  /** All banks of a floor as found: its edges but for the ways in, then what lies in it. */
  static List<WorkingEdge> of(FloorTakeoff t) {
    List<WorkingEdge> banks = new ArrayList<>();
    t.edges().stream()
        .filter(e -> !isWayIn(t, e))
        .forEach(e -> banks.add(new WorkingEdge(Optional.of(e), Optional.empty(), e.lines())));
    lying(t)
        .forEach((m, lines) -> banks.add(new WorkingEdge(Optional.empty(), Optional.of(m), lines)));
    return banks;
  }

  /** What lies in the floor and keeps machines off, each with its whole border to driven floor. */
  private static Map<Mark, List<Line>> lying(FloorTakeoff t) {
    Map<Mark, List<Line>> lying = new LinkedHashMap<>();
    for (Transition tr : t.transitions()) {
      boolean above = keepsOff(tr.above());
      boolean below = tr.below().filter(WorkingEdge::keepsOff).isPresent();
      if (above && !below) {
        lying.computeIfAbsent(tr.above(), m -> new ArrayList<>()).addAll(tr.lines());
      } else if (below && !above) {
        List<Line> turned = tr.lines().stream().map(WorkingEdge::reversed).toList();
        lying.computeIfAbsent(tr.below().get(), m -> new ArrayList<>()).addAll(turned);
      }
    }
    return lying;
  }

  /** A machine crosses a way in; it leaves no strip there. */
  private static boolean isWayIn(FloorTakeoff t, Edge e) {
    return t.area().doorways().stream().anyMatch(d -> d.wayIn() && d.id().equals(e.id()));
  }

  private static boolean keepsOff(Mark m) {
    return m.kind().type().worker() == GrindingAccess.NOBODY
        || (m.kind() instanceof MarkKind.Trench t && t.stopsMachine());
  }

  private static Line reversed(Line line) {
    List<Vec> points = new ArrayList<>(line.points());
    Collections.reverse(points);
    return new Line(points);
  }

  double length() {
    return lines.stream().mapToDouble(Line::length).sum();
  }

  Bounds bounds() {
    Bounds all = Bounds.EMPTY;
    for (Line line : lines) {
      all = all.including(Bounds.of(line.points()));
    }
    return all;
  }

  double distanceTo(Vec p) {
    return lines.stream()
        .mapToDouble(line -> SegmentGeometry.distance(line, p))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
