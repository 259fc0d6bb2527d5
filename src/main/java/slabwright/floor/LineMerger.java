package slabwright.floor;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slabwright.shape.Line;
import slabwright.shape.Vec;

/** Sorts straight pieces by what they belong to and joins those that follow one another. */
final class LineMerger<K> {
  /** Corners are rounded to this, mm. */
  private static final double GRID = 0.001;

  /** So little is no length, mm: the runs still sum to the boundary they were read off. */
  private static final double NO_LENGTH = 1e-8;

  private record Piece(Vec from, Vec to) {}

  private final Map<K, List<Piece>> pieces = new LinkedHashMap<>();

  void add(K key, Vec from, Vec to) {
    pieces.computeIfAbsent(key, k -> new ArrayList<>()).add(new Piece(from, to));
  }

  Map<K, List<Line>> lines() {
    Map<K, List<Line>> lines = new LinkedHashMap<>();
    pieces.forEach((key, list) -> lines.put(key, join(list)));
    return lines;
  }

  private static List<Line> join(List<Piece> list) {
    Map<Vec, Deque<Piece>> leaving = new HashMap<>();
    Map<Vec, Integer> arriving = new HashMap<>();
    for (Piece p : list) {
      leaving.computeIfAbsent(p.from, v -> new ArrayDeque<>()).add(p);
      arriving.merge(p.to, 1, Integer::sum);
    }
    Set<Vec> starts = new LinkedHashSet<>();
    list.stream().map(Piece::from).filter(v -> !arriving.containsKey(v)).forEach(starts::add);
    list.forEach(p -> starts.add(p.from));
    List<Line> lines = new ArrayList<>();
    for (Vec start : starts) {
      while (!leaving.get(start).isEmpty()) {
        lines.add(follow(start, leaving));
      }
    }
    return lines;
  }

  private static Line follow(Vec start, Map<Vec, Deque<Piece>> leaving) {
    List<Vec> points = new ArrayList<>();
    points.add(start);
    Vec at = start;
    while (leaving.containsKey(at) && !leaving.get(at).isEmpty()) {
      at = leaving.get(at).removeFirst().to;
      points.add(at);
    }
    return new Line(straightened(points));
  }

  /**
   * Without the corners where something else met a straight stretch; they are off it by rounding.
   */
  private static List<Vec> straightened(List<Vec> points) {
    List<Vec> kept = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      boolean end = i == 0 || i == points.size() - 1;
      if (end || !isBetween(points.get(i), kept.get(kept.size() - 1), points.get(i + 1))) {
        kept.add(points.get(i));
      }
    }
    return kept;
  }

  private static boolean isBetween(Vec p, Vec from, Vec to) {
    Vec along = to.minus(from);
    Vec off = p.minus(from);
    double shorter = off.length() + to.distanceTo(p) - along.length();
    return Math.abs(along.cross(off)) <= GRID * along.length()
        && off.dot(along) > 0
        && off.dot(along) < along.dot(along)
        && shorter <= NO_LENGTH;
  }
}
