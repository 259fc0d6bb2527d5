package slabwright.inlay.masking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import slabwright.inlay.panel.BlankSide;
import slabwright.shape.Bounds;
import slabwright.shape.Region;

/** Which paper covers the skirt: top and bottom runs take the corners, side runs fit between. */
final class PaperRunPlanner {
  private static final double FAR = 1e6;

  private PaperRunPlanner() {}

  static List<PaperRun> runs(Region skirt, Bounds blank, MaskingParameters rules) {
    List<PaperRun> runs = new ArrayList<>();
    if (skirt.isEmpty() || rules.paperWidths().isEmpty()) {
      return runs;
    }
    for (BlankSide side : BlankSide.values()) {
      Bounds part = skirt.intersect(Region.rectangle(beyond(side, blank))).bounds();
      boolean level = side == BlankSide.TOP || side == BlankSide.BOTTOM;
      double depth = level ? part.height() : part.width();
      if (depth > 0) {
        double width = bestWidth(depth, rules);
        double length = level ? part.width() : part.height();
        double from = level ? part.minX() - blank.minX() : part.minY() - blank.minY();
        runs.add(new PaperRun(side, strips(depth, width, rules.paperLap()), width, length, from));
      }
    }
    return runs;
  }

  private static Bounds beyond(BlankSide side, Bounds b) {
    return switch (side) {
      case TOP -> new Bounds(b.minX() - FAR, b.minY() - FAR, b.maxX() + FAR, b.minY());
      case BOTTOM -> new Bounds(b.minX() - FAR, b.maxY(), b.maxX() + FAR, b.maxY() + FAR);
      case LEFT -> new Bounds(b.minX() - FAR, b.minY(), b.minX(), b.maxY());
      case RIGHT -> new Bounds(b.maxX(), b.minY(), b.maxX() + FAR, b.maxY());
    };
  }

  /** The width that needs the fewest strips, of those the narrowest. */
  private static double bestWidth(double depth, MaskingParameters rules) {
    return rules.paperWidths().stream()
        .min(
            Comparator.comparingInt((Double w) -> strips(depth, w, rules.paperLap()))
                .thenComparing(Comparator.naturalOrder()))
        .orElseThrow();
  }

  private static int strips(double depth, double width, double lap) {
    return (int) Math.max(1, Math.ceil((depth - lap) / (width - lap) - 1e-9));
  }
}
