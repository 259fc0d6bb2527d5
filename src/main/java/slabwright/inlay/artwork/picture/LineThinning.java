package slabwright.inlay.artwork.picture;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.SegmentGeometry;
import slabwright.shape.Vec;

/** Leaves out points that a line can do without (Douglas and Peucker, 1973). */
final class LineThinning {
  /** In pixels: far below what any picture tells. */
  private static final double TOLERANCE = 0.01;

  private LineThinning() {}

  static List<Vec> thin(List<Vec> line, boolean closed) {
    int n = line.size();
    if (n < 4) {
      return line;
    }
    boolean[] keep = new boolean[n];
    keep[0] = true;
    keep[n - 1] = true;
    if (closed) {
      keep[n / 2] = true;
      mark(line, 0, n / 2, keep);
      mark(line, n / 2, n - 1, keep);
    } else {
      mark(line, 0, n - 1, keep);
    }
    List<Vec> out = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      if (keep[i]) {
        out.add(line.get(i));
      }
    }
    if (closed) {
      // the seams were kept only to have ends to start from
      drop(out, line.get(n / 2));
      drop(out, line.get(0));
      drop(out, line.get(n - 1));
    }
    return out;
  }

  private static void drop(List<Vec> ring, Vec seam) {
    int n = ring.size();
    int i = ring.indexOf(seam);
    if (n > 3
        && i >= 0
        && off(seam, ring.get((i + n - 1) % n), ring.get((i + 1) % n)) <= TOLERANCE) {
      ring.remove(i);
    }
  }

  private static void mark(List<Vec> line, int from, int to, boolean[] keep) {
    List<int[]> open = new ArrayList<>();
    open.add(new int[] {from, to});
    while (!open.isEmpty()) {
      int[] part = open.remove(open.size() - 1);
      int far = -1;
      double most = TOLERANCE;
      for (int i = part[0] + 1; i < part[1]; i++) {
        double d = off(line.get(i), line.get(part[0]), line.get(part[1]));
        if (d > most) {
          most = d;
          far = i;
        }
      }
      if (far >= 0) {
        keep[far] = true;
        open.add(new int[] {part[0], far});
        open.add(new int[] {far, part[1]});
      }
    }
  }

  private static double off(Vec p, Vec a, Vec b) {
    return p.distanceTo(SegmentGeometry.nearest(a, b, p));
  }
}
