package slabwright.inlay.proof;

import java.util.List;
import java.util.Optional;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.shape.fit.SymmetricSystem;

/**
 * Where the drawing's openings lie, to a hundredth of a millimetre or so: an affine map, and by how
 * much they are fatter all round. Least absolute deviations across the edges (least squares,
 * weighted again and again), so that a piece that is wrong does not pull the rest along.
 *
 * <p>Of a shape such as a disc no one can say whether it was scaled or drawn fatter. What the edges
 * leave open is taken for fat, unless the blank's edge is scaled too.
 *
 * @param map from the plan's openings to the drawing's, in the frame of the contours given
 * @param fat mm that the openings reach farther all round than the map alone puts them
 */
record OpeningsFit(Affine map, double fat) {
  private static final int STEPS = 16;
  private static final double FIRST_REACH_SHARE = 0.03;
  private static final double NARROWER = 0.65;
  private static final double MUCH_NARROWER = 0.2;
  private static final double NEAR_MM = 1;
  private static final double SETTLED_MM = 0.002;
  private static final double LAST_REACH_MM = 6;
  private static final double LIKE = 0.8;
  private static final double FLOOR_MM = 0.05;
  private static final double HOLD = 1e-10;

  /** Share of all weights that holds the strain to what the blank's edge says. */
  private static final double STRAIN_HELD = 1e-4;

  private static final int UNKNOWNS = 7;

  /**
   * Fits.
   *
   * @param sheet the plan's side
   * @param drawn contours in a frame in which they nearly lie on the plan
   * @param strainX what the blank's edge says the drawing is stretched by along x in this frame
   * @param strainY the same along y
   */
  static OpeningsFit of(PlannedPiece sheet, ContourSegments drawn, double strainX, double strainY) {
    Solver solver = new Solver(sheet, drawn, strainX, strainY);
    double reach = FIRST_REACH_SHARE * solver.size * 2;
    double moved = Double.POSITIVE_INFINITY;
    for (int i = 0; i < STEPS && (reach > LAST_REACH_MM || moved > SETTLED_MM); i++) {
      moved = solver.step(Math.max(reach, LAST_REACH_MM));
      reach *= moved < NEAR_MM ? MUCH_NARROWER : NARROWER;
    }
    return new OpeningsFit(solver.map(), solver.x[6]);
  }

  /** The seven numbers: a move, a linear map of the sheet's half size, and the fat. */
  private static final class Solver {
    private final List<EdgeSample> samples;
    private final ContourSegments drawn;
    private final Vec middle;
    private final double size;
    private final double[] held;
    private double[] x = new double[UNKNOWNS];

    Solver(PlannedPiece sheet, ContourSegments drawn, double strainX, double strainY) {
      this.samples = sheet.edgeSamples();
      this.drawn = drawn;
      Bounds b = sheet.bounds;
      middle = b.middle();
      size = Math.max(b.width(), b.height()) / 2;
      held = new double[] {strainX * size, strainY * size};
    }

    Affine map() {
      double k = 1 / size;
      Affine about = new Affine(1 + x[2] * k, x[4] * k, x[3] * k, 1 + x[5] * k, x[0], x[1]);
      return Affine.move(-middle.x(), -middle.y())
          .then(about)
          .then(Affine.move(middle.x(), middle.y()));
    }

    /** One round; gives the largest change of an unknown, mm. */
    double step(double reach) {
      double[][] matrix = new double[UNKNOWNS][UNKNOWNS];
      double[] right = new double[UNKNOWNS];
      double weights = 0;
      for (EdgeSample s : samples) {
        Vec u = s.at().minus(middle).times(1 / size);
        Vec moved =
            s.at()
                .plus(
                    new Vec(x[0] + x[2] * u.x() + x[3] * u.y(), x[1] + x[4] * u.x() + x[5] * u.y()))
                .plus(s.outward().times(x[6]));
        Optional<ContourSegments.Near> near = drawn.nearest(moved, reach, s.along(), LIKE);
        if (near.isPresent()) {
          Vec n = near.get().along().left();
          double off = near.get().at().minus(moved).dot(n);
          double w = 1 / Math.max(Math.abs(off), Math.max(FLOOR_MM, reach / 60));
          double[] row = {
            n.x(),
            n.y(),
            n.x() * u.x(),
            n.x() * u.y(),
            n.y() * u.x(),
            n.y() * u.y(),
            n.dot(s.outward())
          };
          accumulate(matrix, right, row, near.get().at().minus(s.at()).dot(n), w);
          weights += w;
        }
      }
      hold(matrix, right, weights * STRAIN_HELD);
      double[] found = new SymmetricSystem(matrix, right).solve(HOLD).orElse(x);
      double change = 0;
      for (int i = 0; i < UNKNOWNS; i++) {
        change = Math.max(change, Math.abs(found[i] - x[i]));
      }
      x = found;
      return change;
    }

    private void hold(double[][] matrix, double[] right, double w) {
      accumulate(matrix, right, new double[] {0, 0, 1, 0, 0, 0, 0}, held[0], w);
      accumulate(matrix, right, new double[] {0, 0, 0, 0, 0, 1, 0}, held[1], w);
      accumulate(matrix, right, new double[] {0, 0, 0, 1, 1, 0, 0}, 0, w);
    }

    private static void accumulate(
        double[][] matrix, double[] right, double[] row, double value, double w) {
      for (int i = 0; i < row.length; i++) {
        for (int j = 0; j < row.length; j++) {
          matrix[i][j] += w * row[i] * row[j];
        }
        right[i] += w * row[i] * value;
      }
    }
  }
}
