package slabwright.shape;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * What of many small parts is worth growing. Thousands of dots that grow by far more than lies
 * between them cross each other some hundred times each, and next to nothing of that is seen: only
 * those along the rim are.
 *
 * <p>Square cells that the growth of one part covers wholly belong to what is grown. A part whose
 * own growth lies within such cells adds nothing to them, so the cells stand for it. No rim of the
 * cells is a rim of what is grown: where it leaves them, a part that is kept covers it.
 */
final class GrownCells {
  /** Fewer are grown as they are. */
  private static final int FEW = 64;

  private static final int CELLS_A_STEP = 8;
  private static final double MOST_CELLS = 4e6;

  /** Points of a part from which cells are covered. */
  private static final int ANCHORS = 4;

  private final double step;
  private final double slack;
  private final Bounds around;
  private final double cell;
  private final int columns;
  private final int rows;
  private final BitSet covered = new BitSet();

  private GrownCells(Region region, double step, double slack) {
    this.step = step;
    this.slack = slack;
    around = region.bounds().grown(step + slack);
    double finest = Math.sqrt(around.width() * around.height() / MOST_CELLS);
    cell = Math.ceil(Math.max(step / CELLS_A_STEP, finest) * Jts.STEPS_PER_MM) / Jts.STEPS_PER_MM;
    columns = (int) (around.width() / cell) + 1;
    rows = (int) (around.height() / cell) + 1;
  }

  /**
   * Rings that grown by the step are the same as the region's own; those to be grown, and those of
   * cells, which are not.
   */
  record Kept(List<Ring> toGrow, List<Ring> asTheyAre) {}

  /**
   * The rings of what is seen of a region once it is grown.
   *
   * @param slack by which the curve of a grown ring may stray, mm
   */
  static Kept of(Region region, double step, double slack) {
    return region.geometry().getNumGeometries() <= FEW
        ? new Kept(region.rings(), List.of())
        : new GrownCells(region, step, slack).kept(region);
  }

  private Kept kept(Region region) {
    Geometry parts = region.geometry();
    for (int i = 0; i < parts.getNumGeometries(); i++) {
      if (isSmall(parts.getGeometryN(i))) {
        cover((Polygon) parts.getGeometryN(i));
      }
    }
    BitSet left = new BitSet();
    for (int i = 0; i < parts.getNumGeometries(); i++) {
      left.set(i, !(isSmall(parts.getGeometryN(i)) && isHidden(parts.getGeometryN(i))));
    }
    if (left.cardinality() == parts.getNumGeometries()) {
      return new Kept(region.rings(), List.of());
    }
    List<Ring> rings = new ArrayList<>();
    left.stream()
        .mapToObj(i -> ((Polygon) parts.getGeometryN(i)).getExteriorRing())
        .forEach(r -> rings.add(Jts.ring(r, true)));
    left.stream()
        .mapToObj(i -> (Polygon) parts.getGeometryN(i))
        .forEach(
            p -> {
              for (int k = 0; k < p.getNumInteriorRing(); k++) {
                rings.add(Jts.ring(p.getInteriorRingN(k), false));
              }
            });
    return new Kept(rings, boxes());
  }

  private boolean isSmall(Geometry part) {
    return part.getEnvelopeInternal().getDiameter() <= 2 * step;
  }

  private void cover(Polygon part) {
    int corners = part.getExteriorRing().getNumPoints() - 1;
    for (int k = 0; k < ANCHORS; k++) {
      coverFrom(Jts.vec(part.getExteriorRing().getCoordinateN(k * corners / ANCHORS)));
    }
  }

  /** Every cell of which all lies within the step of the point, by more than curves stray. */
  private void coverFrom(Vec p) {
    double reach = step - slack;
    for (int row = rowAt(p.y() - reach); row <= rowAt(p.y() + reach); row++) {
      double low = around.minY() + row * cell;
      double off = Math.max(Math.abs(low - p.y()), Math.abs(low + cell - p.y()));
      double half = Math.sqrt(reach * reach - off * off);
      if (off < reach) {
        int from = (int) Math.ceil((p.x() - half - around.minX()) / cell);
        int to = (int) Math.floor((p.x() + half - around.minX()) / cell);
        if (from < to) {
          covered.set(row * columns + from, row * columns + to);
        }
      }
    }
  }

  /** Whether all that a part can grow to lies in covered cells. */
  private boolean isHidden(Geometry part) {
    Vec p = Jts.vec(part.getEnvelopeInternal().centre());
    double reach = step + slack + part.getEnvelopeInternal().getDiameter() / 2;
    for (int row = rowAt(p.y() - reach); row <= rowAt(p.y() + reach); row++) {
      double low = around.minY() + row * cell;
      double off = Math.max(0, Math.max(low - p.y(), p.y() - low - cell));
      double half = Math.sqrt(Math.max(0, reach * reach - off * off));
      int from = columnAt(p.x() - half);
      int to = columnAt(p.x() + half);
      if (covered.nextClearBit(row * columns + from) <= row * columns + to) {
        return false;
      }
    }
    return true;
  }

  private int rowAt(double y) {
    return clamped((int) Math.floor((y - around.minY()) / cell), rows);
  }

  private int columnAt(double x) {
    return clamped((int) Math.floor((x - around.minX()) / cell), columns);
  }

  private static int clamped(int at, int count) {
    return Math.max(0, Math.min(count - 1, at));
  }

  /** The covered cells, those beside each other in a row as one box. */
  private List<Ring> boxes() {
    List<Ring> boxes = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      int end = (row + 1) * columns;
      for (int from = covered.nextSetBit(row * columns); from >= 0 && from < end; ) {
        int to = Math.min(end, covered.nextClearBit(from));
        double x = around.minX() + (from - row * columns) * cell;
        double y = around.minY() + row * cell;
        boxes.add(Ring.rectangle(x, y, x + (to - from) * cell, y + cell));
        from = covered.nextSetBit(to);
      }
    }
    return boxes;
  }
}
