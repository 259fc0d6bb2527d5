package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
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
  private static final int LOCKING = 12;

  /** An edge so many times as far off as the middle one counts half. */
  private static final double USUAL = 2;

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

  /** As much as nothing gives way: the sheet is as large as its edge says. */
  private static final double STIFF = 1e3;

  private static final double AGREED_MM = 0.1;
  private static final double MORE = 0.05;

  /** When so many agree there is nothing to explain. */
  private static final double ALL = 0.97;

  private static final int UNKNOWNS = 7;

  /**
   * Fits. Where the edges don't agree with what fits best, a plainer map that more of them agree
   * with is the true one: a part that has moved is then no reason to stretch or turn all.
   *
   * @param sheet the plan's side
   * @param drawn contours in a frame in which they nearly lie on the plan
   * @param blank the blank's edge in this frame
   */
  static OpeningsFit of(PlannedPiece sheet, ContourSegments drawn, BlankFit blank) {
    Solver free = new Solver(sheet, drawn, blank, STRAIN_HELD, 0);
    free.solve();
    Solver best = free;
    if (free.agreed() < ALL && blank.found()) {
      for (double turnHeld : new double[] {0, STIFF}) {
        Solver plainer = new Solver(sheet, drawn, blank, STIFF, turnHeld);
        plainer.x = free.x.clone();
        plainer.solve();
        best = plainer.agreed() > Math.max(best.agreed(), free.agreed() + MORE) ? plainer : best;
      }
    }
    return new OpeningsFit(best.map(), best.x[6]);
  }

  /** The seven numbers: a move, a linear map of the sheet's half size, and the fat. */
  private static final class Solver {
    private final List<EdgeSample> samples;
    private final ContourSegments drawn;
    private final Vec middle;
    private final double size;
    private final Affine blank;
    private final double strainHeld;
    private final double turnHeld;
    private double[] x = new double[UNKNOWNS];

    /** How far each edge was off in the last round, mm. */
    private final List<Double> off = new ArrayList<>();

    Solver(
        PlannedPiece sheet,
        ContourSegments drawn,
        BlankFit edge,
        double strainHeld,
        double turnHeld) {
      this.strainHeld = strainHeld;
      this.turnHeld = turnHeld;
      this.samples = sheet.edgeSamples();
      this.drawn = drawn;
      Bounds b = sheet.bounds;
      middle = b.middle();
      size = Math.max(b.width(), b.height()) / 2;
      blank = edge.found() ? edge.whole(b) : Affine.IDENTITY;
    }

    Affine map() {
      double k = 1 / size;
      Affine about = new Affine(1 + x[2] * k, x[4] * k, x[3] * k, 1 + x[5] * k, x[0], x[1]);
      return Affine.move(-middle.x(), -middle.y())
          .then(about)
          .then(Affine.move(middle.x(), middle.y()));
    }

    /** Ever closer, until nothing moves. */
    void solve() {
      double reach = FIRST_REACH_SHARE * size * 2;
      double moved = Double.POSITIVE_INFINITY;
      for (int i = 0; i < STEPS && (reach > LAST_REACH_MM || moved > SETTLED_MM); i++) {
        moved = step(Math.max(reach, LAST_REACH_MM));
        reach *= moved < NEAR_MM ? MUCH_NARROWER : NARROWER;
      }
      lockOn();
    }

    /** Share of the edges that lie where the map puts them. */
    double agreed() {
      return off.stream().filter(far -> far <= AGREED_MM).count() / (double) samples.size();
    }

    /**
     * Goes on with weights that fall with the square of how far an edge is off. A part that has
     * moved and lies far out has so long a lever that least absolute deviations still turn and
     * stretch everything towards it; edges that agree with each other outvote it here. Where nearly
     * all agreed before and no longer do it is undone: the few edges that say a size can be given
     * up for the many that run along it.
     */
    void lockOn() {
      double[] before = x;
      List<Double> offBefore = List.copyOf(off);
      double agreedBefore = agreed();
      double moved = Double.POSITIVE_INFINITY;
      for (int i = 0; i < LOCKING && moved > SETTLED_MM; i++) {
        double usual = Math.max(FLOOR_MM, USUAL * median(off));
        moved = step(LAST_REACH_MM, far -> 1 / (far * far + usual * usual));
      }
      if (agreedBefore >= ALL && agreed() < ALL) {
        x = before;
        off.clear();
        off.addAll(offBefore);
      }
    }

    private static double median(List<Double> of) {
      return of.isEmpty() ? 0 : of.stream().sorted().skip(of.size() / 2).findFirst().orElseThrow();
    }

    /** One round; gives the largest change of an unknown, mm. */
    double step(double reach) {
      return step(reach, far -> 1 / Math.max(far, Math.max(FLOOR_MM, reach / 60)));
    }

    private double step(double reach, DoubleUnaryOperator weight) {
      off.clear();
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
          double far = Math.abs(near.get().at().minus(moved).dot(n));
          off.add(far);
          double w = weight.applyAsDouble(far);
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
      hold(matrix, right, weights);
      double[] found = new SymmetricSystem(matrix, right).solve(HOLD).orElse(x);
      double change = 0;
      for (int i = 0; i < UNKNOWNS; i++) {
        change = Math.max(change, Math.abs(found[i] - x[i]));
      }
      x = found;
      return change;
    }

    /** Strain, shear and, if it is held, the turn, as the blank's edge says. */
    private void hold(double[][] matrix, double[] right, double weights) {
      double w = weights * strainHeld;
      double shear = (blank.c() + blank.b()) * size;
      double turn = (blank.b() - blank.c()) * size;
      accumulate(matrix, right, new double[] {0, 0, 1, 0, 0, 0, 0}, (blank.a() - 1) * size, w);
      accumulate(matrix, right, new double[] {0, 0, 0, 0, 0, 1, 0}, (blank.d() - 1) * size, w);
      accumulate(matrix, right, new double[] {0, 0, 0, 1, 1, 0, 0}, shear, w);
      accumulate(matrix, right, new double[] {0, 0, 0, -1, 1, 0, 0}, turn, weights * turnHeld);
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
