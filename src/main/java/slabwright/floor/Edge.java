package slabwright.floor;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import slabwright.shape.Line;
import slabwright.site.EdgeClass;

/**
 * Where the free floor meets one thing. The lines run with the floor on their left.
 *
 * @param piece index of the outline piece, for walls, open edges, kerbs and doorways
 * @param id of the doorway or the mark; empty for a bare outline piece
 */
public record Edge(EdgeClass kind, OptionalInt piece, String id, List<Line> lines) {
  public Edge {
    lines = List.copyOf(lines);
  }

  /** Length in mm. */
  public double length() {
    return lines.stream().mapToDouble(Line::length).sum();
  }

  /** Length in mm of them all. */
  static double length(List<Edge> edges) {
    return edges.stream().mapToDouble(Edge::length).sum();
  }

  /** Length in mm of those whose class a product is cut in along. */
  static double cutIn(List<Edge> edges, Set<EdgeClass> leftOut) {
    return edges.stream().filter(e -> !leftOut.contains(e.kind())).mapToDouble(Edge::length).sum();
  }
}
