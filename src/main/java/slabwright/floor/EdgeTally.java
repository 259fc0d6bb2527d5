package slabwright.floor;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkType;
import slabwright.site.Spot;
import slabwright.units.Message;

/**
 * The edges of a floor, counted.
 *
 * @param corners of the net floor, inside and outside
 * @param ends middles of free-standing ends
 * @param transitions where zones meet, by their kinds
 * @param lines marks that are lines, by kind: joints, cracks, level changes, trim
 */
public record EdgeTally(
    FloorCorners corners, List<Vec> ends, List<Meeting> transitions, List<LineMarks> lines) {
  public EdgeTally {
    ends = List.copyOf(ends);
    transitions = List.copyOf(transitions);
    lines = List.copyOf(lines);
  }

  /** How far two kinds of floor meet, mm; the later lies on top. */
  public record Meeting(Message below, Message above, double length) {}

  /** Lines of one kind: how many, and their length on the net floor together, mm. */
  public record LineMarks(MarkType kind, int count, double length) {}

  static EdgeTally of(FloorArea area, Region net, List<Transition> transitions) {
    return new EdgeTally(
        FloorCorners.of(net), FreeEnds.of(net), meetings(transitions), lines(area, net));
  }

  private static List<Meeting> meetings(List<Transition> transitions) {
    Map<List<Message>, Double> sums = new LinkedHashMap<>();
    for (Transition tr : transitions) {
      List<Message> kinds = List.of(Zone.kind(tr.below()), Zone.kind(Optional.of(tr.above())));
      sums.merge(kinds, tr.length(), Double::sum);
    }
    List<Meeting> meetings = new ArrayList<>();
    sums.forEach((k, v) -> meetings.add(new Meeting(k.get(0), k.get(1), v)));
    return meetings;
  }

  private static List<LineMarks> lines(FloorArea area, Region net) {
    Map<MarkType, LineMarks> sums = new EnumMap<>(MarkType.class);
    for (Mark m : area.marks()) {
      if (m.form() instanceof Form.Trace) {
        MarkType kind = m.kind().type();
        LineMarks one = new LineMarks(kind, 1, length(m, net));
        sums.merge(kind, one, (a, b) -> new LineMarks(kind, a.count + 1, a.length + b.length));
      }
    }
    return List.copyOf(sums.values());
  }

  /** Length in mm of a mark's path inside a region. */
  static double length(Mark mark, Region inside) {
    List<Vec> path = mark.form().spots().stream().map(Spot::vec).toList();
    return inside.clip(new Line(path)).stream().mapToDouble(Line::length).sum();
  }
}
