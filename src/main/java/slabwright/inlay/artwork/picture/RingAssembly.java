package slabwright.inlay.artwork.picture;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import slabwright.shape.Vec;

/** Puts borders together to the outlines of each colour. Neighbours get the very same points. */
final class RingAssembly {
  /** A chain walked one way. */
  private record Walk(int chain, boolean forward) {}

  private final List<BoundaryChain> chains;
  private final List<List<Vec>> lines;
  private final Map<Long, Walk> leaving = new HashMap<>();
  private final boolean[] doneForward;
  private final boolean[] doneBackward;

  RingAssembly(PictureTrace trace) {
    this.chains = trace.chains();
    this.lines = trace.lines();
    this.doneForward = new boolean[chains.size()];
    this.doneBackward = new boolean[chains.size()];
    for (int i = 0; i < chains.size(); i++) {
      BoundaryChain c = chains.get(i);
      if (!c.closed()) {
        int n = c.steps();
        leaving.put(key(c.x()[0], c.y()[0], c.firstDirection()), new Walk(i, true));
        leaving.put(key(c.x()[n], c.y()[n], c.lastDirectionBack()), new Walk(i, false));
      }
    }
  }

  private static long key(int x, int y, int direction) {
    return ((long) y << 32 | x) * 4 + direction;
  }

  /** The outline of each of so many colours, by the even-odd rule. */
  List<Path2D> outlines(int colours) {
    List<Path2D> paths = new ArrayList<>();
    for (int k = 0; k < colours; k++) {
      paths.add(new Path2D.Double(Path2D.WIND_EVEN_ODD));
    }
    for (int i = 0; i < chains.size(); i++) {
      add(new Walk(i, true), paths);
      add(new Walk(i, false), paths);
    }
    return paths;
  }

  private void add(Walk start, List<Path2D> paths) {
    int label = left(start);
    if (label == LabelMap.OUTSIDE || isDone(start)) {
      return;
    }
    List<Vec> ring = new ArrayList<>();
    Walk walk = start;
    do {
      (walk.forward() ? doneForward : doneBackward)[walk.chain()] = true;
      List<Vec> line = new ArrayList<>(lines.get(walk.chain()));
      if (!walk.forward()) {
        Collections.reverse(line);
      }
      boolean closed = chains.get(walk.chain()).closed();
      ring.addAll(closed ? line : line.subList(0, line.size() - 1));
      walk = closed ? start : next(walk, label);
    } while (!walk.equals(start));
    append(ring, paths.get(label));
  }

  private boolean isDone(Walk w) {
    return (w.forward() ? doneForward : doneBackward)[w.chain()];
  }

  private int left(Walk w) {
    BoundaryChain c = chains.get(w.chain());
    return w.forward() ? c.left() : c.right();
  }

  /** Keeps to the colour's own side: turns left where it can, so that pieces stay apart. */
  private Walk next(Walk w, int label) {
    BoundaryChain c = chains.get(w.chain());
    int n = c.steps();
    int x = w.forward() ? c.x()[n] : c.x()[0];
    int y = w.forward() ? c.y()[n] : c.y()[0];
    int arriving = PixelEdge.back(w.forward() ? c.lastDirectionBack() : c.firstDirection());
    for (int turn : new int[] {3, 0, 1}) {
      Walk other = leaving.get(key(x, y, (arriving + turn) % 4));
      if (other != null && left(other) == label) {
        return other;
      }
    }
    throw new IllegalStateException("an outline ends nowhere");
  }

  private static void append(List<Vec> ring, Path2D path) {
    if (ring.size() < 3) {
      return;
    }
    path.moveTo(ring.get(0).x(), ring.get(0).y());
    for (Vec p : ring.subList(1, ring.size())) {
      path.lineTo(p.x(), p.y());
    }
    path.closePath();
  }
}
