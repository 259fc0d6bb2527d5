package slabwright.inlay.proof;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * Lines that meet end to end become rings; some programs write every side of a shape by itself.
 * Where another outline fills the gap between two lines (an opening that runs along its panel's
 * edge is cut as opening), the ring goes along it.
 */
final class RingJoiner {
  /** Ends closer than this meet, mm. */
  private static final double MEET_MM = 0.1;

  private static final int MOST_LINES = 5000;
  private static final int MOST_BRIDGED = 400;
  private static final double BRIDGE_STEP_MM = 2;
  private static final int MOST_STEPS = 2000;
  private static final int MOST_TRIED = 6;

  /** A free line, to be taken from its start or from its end. */
  private record Follower(int index, boolean back, Vec start) {}

  private final List<List<Vec>> free = new ArrayList<>();
  private final Optional<ContourSegments> bridges;

  private RingJoiner(List<Line> lines, List<Ring> outlines) {
    lines.stream().limit(MOST_LINES).forEach(l -> free.add(l.points()));
    bridges =
        lines.size() > MOST_BRIDGED || outlines.isEmpty()
            ? Optional.empty()
            : Optional.of(new ContourSegments(outlines));
  }

  /**
   * The rings that the lines make; what does not close is left out.
   *
   * @param outlines that may fill gaps
   */
  static List<Ring> rings(List<Line> lines, List<Ring> outlines) {
    RingJoiner joiner = new RingJoiner(lines, lines.isEmpty() ? List.of() : outlines);
    List<Ring> rings = new ArrayList<>();
    while (!joiner.free.isEmpty()) {
      joiner.next().ifPresent(rings::add);
    }
    return rings;
  }

  private Optional<Ring> next() {
    Deque<Vec> chain = new ArrayDeque<>(free.remove(free.size() - 1));
    while (apart(chain.getFirst(), chain.getLast()) || chain.size() < 3) {
      Optional<List<Vec>> more = follower(chain.getLast());
      // a line of one point is at its own start already: the way back would lead nowhere, for ever
      if (more.isEmpty() && apart(chain.getFirst(), chain.getLast())) {
        more = acrossGap(chain.getFirst(), chain.getLast());
      }
      if (more.isEmpty()) {
        return Optional.empty();
      }
      more.get().forEach(p -> addNew(chain, p));
    }
    return Optional.of(new Ring(new ArrayList<>(chain)));
  }

  private static void addNew(Deque<Vec> chain, Vec p) {
    if (!chain.getLast().equals(p)) {
      chain.addLast(p);
    }
  }

  /** Takes a line that starts or ends there out of the free ones, turned to start there. */
  private Optional<List<Vec>> follower(Vec end) {
    return followers().stream().filter(f -> !apart(f.start, end)).findFirst().map(this::taken);
  }

  /** The nearest line, or the chain's own start, that lies across a filled gap. */
  private Optional<List<Vec>> acrossGap(Vec first, Vec end) {
    if (bridges.isEmpty()) {
      return Optional.empty();
    }
    List<Follower> near = new ArrayList<>(followers());
    near.add(new Follower(-1, false, first));
    near.sort(Comparator.comparingDouble(f -> f.start.distanceTo(end)));
    return near.stream()
        .limit(MOST_TRIED)
        .filter(f -> isFilled(end, f.start))
        .findFirst()
        .map(f -> f.index < 0 ? List.of(first) : taken(f));
  }

  private List<Follower> followers() {
    List<Follower> all = new ArrayList<>();
    for (int i = 0; i < free.size(); i++) {
      List<Vec> line = free.get(i);
      all.add(new Follower(i, false, line.get(0)));
      all.add(new Follower(i, true, line.get(line.size() - 1)));
    }
    return all;
  }

  private List<Vec> taken(Follower f) {
    List<Vec> line = new ArrayList<>(free.remove(f.index));
    if (f.back) {
      Collections.reverse(line);
    }
    return line;
  }

  private boolean isFilled(Vec a, Vec b) {
    ContourSegments outlines = bridges.orElseThrow();
    int steps = (int) Math.min(MOST_STEPS, Math.ceil(a.distanceTo(b) / BRIDGE_STEP_MM));
    for (int k = 0; k <= steps; k++) {
      Vec p = a.towards(b, steps == 0 ? 0 : (double) k / steps);
      if (outlines.nearest(p, MEET_MM).isEmpty()) {
        return false;
      }
    }
    return true;
  }

  private static boolean apart(Vec a, Vec b) {
    return a.distanceTo(b) > MEET_MM;
  }
}
