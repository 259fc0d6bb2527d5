package slabwright.inlay.proof;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** Lines that meet end to end become rings; some programs write every side of a shape by itself. */
final class RingJoiner {
  /** Ends closer than this meet, mm. */
  private static final double MEET_MM = 0.1;

  private static final int MOST_LINES = 5000;

  private final List<List<Vec>> free = new ArrayList<>();

  private RingJoiner() {}

  /** The rings that the lines make; what does not close is left out. */
  static List<Ring> rings(List<Line> lines) {
    RingJoiner joiner = new RingJoiner();
    lines.stream().limit(MOST_LINES).forEach(l -> joiner.free.add(l.points()));
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
      if (more.isEmpty()) {
        return Optional.empty();
      }
      more.get().stream().skip(1).forEach(chain::addLast);
    }
    return Optional.of(new Ring(new ArrayList<>(chain)));
  }

  /** Takes a line that starts or ends there out of the free ones, turned to start there. */
  private Optional<List<Vec>> follower(Vec end) {
    for (int i = 0; i < free.size(); i++) {
      List<Vec> line = free.get(i);
      if (!apart(line.get(0), end)) {
        free.remove(i);
        return Optional.of(line);
      }
      if (!apart(line.get(line.size() - 1), end)) {
        free.remove(i);
        List<Vec> back = new ArrayList<>(line);
        java.util.Collections.reverse(back);
        return Optional.of(back);
      }
    }
    return Optional.empty();
  }

  private static boolean apart(Vec a, Vec b) {
    return a.distanceTo(b) > MEET_MM;
  }
}
