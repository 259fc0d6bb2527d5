package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/**
 * Rows of small openings, unlike each other and close together, that are still there but each in
 * another shape: letters set in another typeface. They are one fault, not a piece missing and one
 * added for every stroke.
 */
final class LetterRows {
  private static final int LEAST = 3;
  private static final double CHANGED = 0.05;
  private static final double ROW_CHANGED = 0.06;
  private static final double LEAST_INK = 0.5;
  private static final double MOST_INK = 2;
  private static final double GAP = 0.9;
  private static final double AROUND = 0.25;
  private static final double BESIDE = 0.2;
  private static final double ALIKE = 0.03;
  private static final double LONG = 1.4;
  private static final double SMALL = 0.4;

  /** Openings of one row as planned. */
  private static final class Row {
    private final List<Region> letters = new ArrayList<>();
    private Bounds box = Bounds.EMPTY;
    private double height;

    void add(Region letter) {
      letters.add(letter);
      box = box.including(letter.bounds());
      height = Math.max(height, shorter(letter));
    }

    boolean isNear(Region letter) {
      double reach = GAP * Math.max(height, shorter(letter));
      return letters.stream().anyMatch(l -> l.bounds().grown(reach).meets(letter.bounds()));
    }

    void addAll(Row o) {
      o.letters.forEach(this::add);
    }

    double area() {
      return letters.stream().mapToDouble(Region::area).sum();
    }

    Bounds around() {
      return box.grown(AROUND * height);
    }
  }

  private final Region plan;
  private final Region open;
  private final List<Region> missing;
  private final List<Region> added;

  /**
   * Looks at what differs.
   *
   * @param open the drawn openings, laid on the planned ones
   */
  LetterRows(Region plan, Region open, List<Region> missing, List<Region> added) {
    this.plan = plan;
    this.open = open;
    this.missing = missing;
    this.added = added;
  }

  /** Boxes of the rows with what is said of each. */
  List<Found> found() {
    List<Found> found = new ArrayList<>();
    if (missing.size() < LEAST || added.isEmpty()) {
      return found;
    }
    for (Row row : rows()) {
      if (row.letters.size() >= LEAST && isLong(row) && isReshaped(row) && isVaried(row)) {
        Vec at = row.box.middle();
        double size = Math.max(row.box.width(), row.box.height());
        found.add(
            new Found(
                withStrokesBeside(row),
                row.area(),
                new ProofFault.OtherTypeface(row.letters.size(), at, size)));
      }
    }
    return found;
  }

  /**
   * One row.
   *
   * @param box what differs inside it is told by the fault
   * @param area of its planned openings, mm²
   */
  record Found(Bounds box, double area, ProofFault.OtherTypeface fault) {}

  private List<Row> rows() {
    double large = SMALL * Math.max(plan.bounds().width(), plan.bounds().height());
    List<Row> rows = new ArrayList<>();
    for (Region part : plan.parts()) {
      if (shorter(part) <= large && share(missing, part) >= CHANGED) {
        List<Row> near = rows.stream().filter(r -> r.isNear(part)).toList();
        Row row = new Row();
        row.add(part);
        near.forEach(row::addAll);
        rows.removeAll(near);
        rows.add(row);
      }
    }
    return rows;
  }

  private static double share(List<Region> pieces, Region part) {
    double area = 0;
    for (Region piece : pieces) {
      if (piece.bounds().meets(part.bounds()) && part.contains(piece.labelPoint())) {
        area += piece.area();
      }
    }
    return area / part.area();
  }

  private static double shorter(Region part) {
    return Math.min(part.bounds().width(), part.bounds().height());
  }

  private static boolean isLong(Row row) {
    double w = row.box.width();
    double h = row.box.height();
    return Math.max(w, h) >= LONG * Math.min(w, h);
  }

  private boolean isReshaped(Row row) {
    double ink = open.intersect(Region.rectangle(row.around())).area() / row.area();
    return within(missing, row) >= ROW_CHANGED * row.area()
        && within(added, row) >= ROW_CHANGED * row.area()
        && ink > LEAST_INK
        && ink < MOST_INK;
  }

  /** The other letters may run wider: strokes added next to the row belong to it. */
  private Bounds withStrokesBeside(Row row) {
    Bounds box = row.around();
    for (boolean more = true; more; ) {
      Bounds reach = box.grown(BESIDE * row.height);
      Bounds grown = box;
      for (Region piece : added) {
        if (reach.meets(piece.bounds()) && shorter(piece) <= row.height) {
          grown = grown.including(piece.bounds());
        }
      }
      more = !grown.equals(box);
      box = grown;
    }
    return box;
  }

  private static double within(List<Region> pieces, Row row) {
    Bounds box = row.around();
    return pieces.stream()
        .filter(p -> box.contains(p.labelPoint()))
        .mapToDouble(Region::area)
        .sum();
  }

  /** A row of dots or stripes is no lettering. */
  private static boolean isVaried(Row row) {
    List<RingMoments> shapes =
        row.letters.stream().map(l -> RingMoments.of(l.shells().get(0))).toList();
    int unlike = 0;
    for (int i = 1; i < shapes.size(); i++) {
      unlike += shapes.get(i).dissimilarity(shapes.get(i - 1)) > ALIKE ? 1 : 0;
    }
    return 2 * unlike >= shapes.size() - 1;
  }
}
