package slabwright.drawing;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** Turns a hatch into lines and dots that lie wholly inside its region. */
final class HatchParts {
  private HatchParts() {}

  static List<PrimitiveInk> of(Hatch h, Bounds window) {
    return switch (h.pattern()) {
      case NONE -> List.of();
      case RISING -> List.of(lines(h, window, -45));
      case FALLING -> List.of(lines(h, window, 45));
      case NET -> List.of(lines(h, window, -45), lines(h, window, 45));
      case LEVEL -> List.of(lines(h, window, 0));
      case UPRIGHT -> List.of(lines(h, window, 90));
      case DOTS, CROSSES, DASHES -> List.of(HatchLattice.of(h, window));
    };
  }

  /** Lines turned from level by {@code degrees}, from x towards y. */
  private static Stroke lines(Hatch h, Bounds window, double degrees) {
    Affine turned = Affine.move(-h.origin().x(), -h.origin().y()).then(turn(-degrees));
    Affine back = turned.inverse();
    Bounds seen = seen(h, window, turned);
    List<Ring> rings = h.rings().stream().map(r -> r.map(turned)).toList();
    int low = first(seen, h.pitch());
    int high = last(seen, h.pitch());
    ScanLines rows = ScanLines.of(rings, h.pitch(), 0, low, high);
    List<Line> lines = new ArrayList<>();
    for (int k = low; k <= high; k++) {
      double[] row = rows.row(k);
      for (int i = 0; i + 1 < row.length; i += 2) {
        double from = Math.max(row[i], seen.minX());
        double to = Math.min(row[i + 1], seen.maxX());
        if (to - from > 0.01) {
          double y = k * h.pitch();
          lines.add(Line.of(back.apply(new Vec(from, y)), back.apply(new Vec(to, y))));
        }
      }
    }
    return Stroke.lines(h.pen(), lines);
  }

  static int first(Bounds seen, double pitch) {
    return seen.isEmpty() ? 0 : (int) Math.ceil(seen.minY() / pitch);
  }

  static int last(Bounds seen, double pitch) {
    return seen.isEmpty() ? -1 : (int) Math.floor(seen.maxY() / pitch);
  }

  /** The part of the hatch's bounds inside the window, in the pattern's own turned frame. */
  static Bounds seen(Hatch h, Bounds window, Affine turned) {
    Bounds b = h.reach();
    Bounds cut =
        new Bounds(
            Math.max(b.minX(), window.minX()),
            Math.max(b.minY(), window.minY()),
            Math.min(b.maxX(), window.maxX()),
            Math.min(b.maxY(), window.maxY()));
    return cut.isEmpty()
        ? cut
        : Ring.rectangle(cut.minX(), cut.minY(), cut.maxX(), cut.maxY()).map(turned).bounds();
  }

  private static Affine turn(double degrees) {
    return Affine.turn(Math.toRadians(degrees));
  }
}
