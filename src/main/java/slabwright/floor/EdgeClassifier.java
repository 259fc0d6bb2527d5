package slabwright.floor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import slabwright.shape.Border;
import slabwright.shape.BorderSource;
import slabwright.site.EdgeClass;
import slabwright.site.Mark;

/** Reads classed edges and transitions off the borders of a plan. */
final class EdgeClassifier {
  private record Key(EdgeClass kind, OptionalInt piece, String id) {}

  private record Meeting(int below, int above) {}

  private final FloorArrangement plan;
  private final LineMerger<Key> edges = new LineMerger<>();
  private final LineMerger<Meeting> transitions = new LineMerger<>();

  EdgeClassifier(FloorArrangement plan) {
    this(plan, plan.borders());
  }

  private EdgeClassifier(FloorArrangement plan, List<Border<Integer>> borders) {
    this.plan = plan;
    borders.forEach(this::sort);
  }

  private void sort(Border<Integer> border) {
    boolean left = isFree(border.left());
    boolean right = isFree(border.right());
    if (left && right) {
      boolean earlierLeft = border.left().orElseThrow() < border.right().orElseThrow();
      Border<Integer> seen = earlierLeft ? border : border.reversed();
      Meeting meeting = new Meeting(seen.left().orElseThrow(), seen.right().orElseThrow());
      transitions.add(meeting, seen.from(), seen.to());
    } else if (left || right) {
      Border<Integer> seen = left ? border : border.reversed();
      edges.add(key(seen), seen.from(), seen.to());
    }
  }

  private boolean isFree(Optional<Integer> owner) {
    return owner.filter(o -> !plan.isObstacle(o)).isPresent();
  }

  private Key key(Border<Integer> seen) {
    if (seen.right().isPresent()) {
      Mark mark = plan.mark(seen.right().get());
      return new Key(mark.kind().type().edge().orElseThrow(), OptionalInt.empty(), mark.id());
    }
    OutlineRing.Part part =
        seen.sources().stream()
            .filter(s -> s.layer() == FloorArrangement.OUTLINE)
            .map(BorderSource::segment)
            .map(plan.outline()::part)
            .findFirst()
            .orElseThrow();
    return new Key(part.kind(), OptionalInt.of(part.piece()), part.doorway());
  }

  /** Lengths in mm of all edges by class, as they are noded. */
  static Map<EdgeClass, Double> lengths(FloorArrangement plan) {
    EdgeClassifier none = new EdgeClassifier(plan, List.of());
    Map<EdgeClass, Double> lengths = new EnumMap<>(EdgeClass.class);
    for (Border<Integer> border : plan.borders()) {
      boolean left = none.isFree(border.left());
      if (left != none.isFree(border.right())) {
        EdgeClass kind = none.key(left ? border : border.reversed()).kind;
        lengths.merge(kind, border.from().distanceTo(border.to()), Double::sum);
      }
    }
    return lengths;
  }

  /** In the order of classes, then pieces of the outline, then as met. */
  List<Edge> edges() {
    List<Edge> list = new ArrayList<>();
    edges.lines().forEach((k, lines) -> list.add(new Edge(k.kind, k.piece, k.id, lines)));
    list.sort(Comparator.comparing(Edge::kind).thenComparing(e -> e.piece().orElse(-1)));
    return list;
  }

  List<Transition> transitions() {
    List<Transition> list = new ArrayList<>();
    transitions
        .lines()
        .forEach(
            (m, lines) ->
                list.add(
                    new Transition(
                        m.below == FloorArrangement.SLAB
                            ? Optional.empty()
                            : Optional.of(plan.mark(m.below)),
                        plan.mark(m.above),
                        lines)));
    return list;
  }
}
