package slabwright.inlay.cutfile;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/**
 * Cuts that divide large waste so that it comes off in pieces. They lie inside openings and end
 * before their edges, so that they never reach film that stays. When to divide, and how finely, is
 * common practice, no source.
 */
final class WeedCuts {
  private static final double LARGE_MM2 = 120_000;
  private static final double PIECE_MM = 400;
  private static final double CLEAR_MM = 2;
  private static final double SHORTEST_MM = 20;
  private static final double TOLERANCE_MM = 0.1;

  private WeedCuts() {}

  /** The cuts of all large openings. */
  static List<Line> of(Region open) {
    List<Line> cuts = new ArrayList<>();
    for (Region part : open.parts()) {
      if (part.area() > LARGE_MM2) {
        divide(part, cuts);
      }
    }
    return cuts;
  }

  private static void divide(Region part, List<Line> cuts) {
    Region inner = part.offset(-CLEAR_MM, TOLERANCE_MM);
    Bounds b = part.bounds();
    int across = (int) Math.ceil(b.width() / PIECE_MM);
    for (int i = 1; i < across; i++) {
      double x = b.minX() + i * b.width() / across;
      add(inner, Line.of(new Vec(x, b.minY()), new Vec(x, b.maxY())), cuts);
    }
    int down = (int) Math.ceil(b.height() / PIECE_MM);
    for (int i = 1; i < down; i++) {
      double y = b.minY() + i * b.height() / down;
      add(inner, Line.of(new Vec(b.minX(), y), new Vec(b.maxX(), y)), cuts);
    }
  }

  private static void add(Region inner, Line line, List<Line> cuts) {
    inner.clip(line).stream().filter(l -> l.length() >= SHORTEST_MM).forEach(cuts::add);
  }
}
