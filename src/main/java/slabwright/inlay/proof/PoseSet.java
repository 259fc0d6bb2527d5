package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Poses of which no two are nearly alike, in the order they came. A drawing of many contours that
 * look alike has tens of thousands, so only those of about the same size and place are compared.
 */
final class PoseSet {
  private static final double TURNS_ALIKE = 0.01;
  private static final double PLACES_ALIKE = 5;

  /** More than {@link #TURNS_ALIKE}, so that poses alike are at most one step apart. */
  private static final double STEP = Math.log(1.03);

  private record Cell(boolean mirrored, int step, long x, long y) {}

  private final List<Pose> poses = new ArrayList<>();
  private final Map<Cell, List<Pose>> cells = new HashMap<>();

  /** In the order they came. */
  List<Pose> list() {
    return poses;
  }

  /** Takes a pose unless one is there that is nearly the same. */
  void add(Pose pose) {
    int step = (int) Math.floor(Math.log(pose.scale()) / STEP);
    if (!isThere(pose, step)) {
      poses.add(pose);
      cells.computeIfAbsent(cell(pose, step), c -> new ArrayList<>()).add(pose);
    }
  }

  private boolean isThere(Pose pose, int step) {
    for (int s = step - 1; s <= step + 1; s++) {
      Cell middle = cell(pose, s);
      for (long x = middle.x - 1; x <= middle.x + 1; x++) {
        for (long y = middle.y - 1; y <= middle.y + 1; y++) {
          for (Pose p : cells.getOrDefault(new Cell(pose.mirrored(), s, x, y), List.of())) {
            if (near(p, pose)) {
              return true;
            }
          }
        }
      }
    }
    return false;
  }

  /** As wide as poses of this size and the next are ever alike. */
  private static Cell cell(Pose pose, int step) {
    double side = PLACES_ALIKE * Math.exp((step + 2) * STEP);
    return new Cell(
        pose.mirrored(),
        step,
        (long) Math.floor(pose.dx() / side),
        (long) Math.floor(pose.dy() / side));
  }

  private static boolean near(Pose a, Pose b) {
    double s = Math.max(a.scale(), b.scale());
    return a.mirrored() == b.mirrored()
        && Math.hypot(a.re() - b.re(), a.im() - b.im()) < TURNS_ALIKE * s
        && Math.hypot(a.dx() - b.dx(), a.dy() - b.dy()) < PLACES_ALIKE * s;
  }
}
