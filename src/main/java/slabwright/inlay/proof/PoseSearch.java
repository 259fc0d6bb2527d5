package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** Finds a sheet in the drawing. */
final class PoseSearch {
  private static final int ROUGH_KEPT = 12;
  private static final int CLOSE_KEPT = 8;
  private static final int EVERY_PLACE_KEPT = 40;
  private static final double SAME_PLACE = 0.3;
  private static final double HOPELESS = 0.6;
  private static final int CELLS = 1500;
  private static final int MOST_CELLS = 4000;

  private final DrawingContours contours;
  private final ScaleRange scales;
  private final Bitmap drawn;
  private final ContourSamples samples;
  private final boolean everyPlace;

  PoseSearch(DrawingContours contours, ScaleRange scales) {
    this(contours, scales, false);
  }

  /**
   * A search.
   *
   * @param everyPlace whether the same sheet at another place is another find: pieces that are cut
   *     by themselves may be alike
   */
  PoseSearch(DrawingContours contours, ScaleRange scales, boolean everyPlace) {
    this.everyPlace = everyPlace;
    this.contours = contours;
    this.scales = scales;
    List<Ring> rings = contours.rings().stream().map(RingMoments::ring).toList();
    double size = Math.max(contours.bounds().width(), contours.bounds().height());
    int across = (int) Math.min(MOST_CELLS, Math.max(CELLS, size / 2));
    drawn = Bitmap.of(contours.area().rings(), contours.bounds(), across);
    samples = new ContourSamples(rings, size / 1000, size / 50);
  }

  /** The best poses, best first, of which {@code wanted} says they are of the right kind. */
  List<PoseFit> fits(PlannedPiece sheet, Predicate<Pose> wanted) {
    List<PoseFit> rough = new ArrayList<>();
    for (Pose pose : PoseCandidates.of(sheet, contours.rings(), scales)) {
      if (wanted.test(pose)) {
        rough.add(sheet.roughly(pose, drawn));
      }
    }
    double top = rough.stream().mapToDouble(PoseFit::overlap).max().orElse(0);
    List<PoseFit> better = new ArrayList<>();
    PoseRefinement refine = new PoseRefinement(sheet, samples);
    for (boolean mirrored : new boolean[] {false, true}) {
      for (PoseFit fit : best(rough, kept(ROUGH_KEPT), f -> f.pose().mirrored() == mirrored)) {
        if (fit.overlap() > HOPELESS * top) {
          Pose refined = refine.run(fit.pose());
          addDistinct(sheet, sheet.roughly(refined, drawn), better);
        }
      }
    }
    List<PoseFit> close = new ArrayList<>();
    for (boolean mirrored : new boolean[] {false, true}) {
      for (PoseFit fit : best(better, kept(CLOSE_KEPT), f -> f.pose().mirrored() == mirrored)) {
        close.add(sheet.closely(fit.pose(), drawn));
      }
    }
    return best(close, close.size(), f -> true);
  }

  private int kept(int most) {
    return everyPlace ? EVERY_PLACE_KEPT : most;
  }

  private void addDistinct(PlannedPiece sheet, PoseFit fit, List<PoseFit> fits) {
    if (fits.stream()
        .noneMatch(f -> alike(f.pose(), fit.pose()) && isThere(sheet, f.pose(), fit.pose()))) {
      fits.add(fit);
    }
  }

  private boolean isThere(PlannedPiece sheet, Pose a, Pose b) {
    Vec middle = sheet.bounds.middle();
    double size = Math.min(sheet.bounds.width(), sheet.bounds.height()) * a.scale();
    return !everyPlace || a.apply(middle).distanceTo(b.apply(middle)) < SAME_PLACE * size;
  }

  /** Whether two poses differ by so little that they are one, found twice. */
  static boolean alike(Pose a, Pose b) {
    double s = Math.max(a.scale(), b.scale());
    return a.mirrored() == b.mirrored() && Math.hypot(a.re() - b.re(), a.im() - b.im()) < 0.02 * s;
  }

  private static List<PoseFit> best(List<PoseFit> fits, int most, Predicate<PoseFit> which) {
    return fits.stream()
        .filter(which)
        .sorted(Comparator.comparingDouble(PoseFit::overlap).reversed())
        .limit(most)
        .toList();
  }
}
