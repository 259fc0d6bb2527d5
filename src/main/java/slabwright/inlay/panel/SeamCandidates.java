package slabwright.inlay.panel;

import java.util.List;
import java.util.TreeSet;

/** Places at which a seam is tried. */
final class SeamCandidates {
  private static final int MOST_ON_PITCH = 2000;

  /** So that rounding never counts an edge that lies just out of reach. */
  private static final double CLEAR = 0.01;

  private final double end;
  private final double widest;
  private final double overlap;
  private final TreeSet<Double> places = new TreeSet<>();

  /**
   * @param end length to be covered
   * @param widest the widest piece
   * @param overlap between pieces
   */
  SeamCandidates(double end, double widest, double overlap) {
    this.end = end;
    this.widest = widest;
    this.overlap = overlap;
    fullWidthsAndEven();
  }

  /** So that a layout of fewest pieces is always among the tried ones, however tight. */
  private void fullWidthsAndEven() {
    int pieces = fewest(end, widest, overlap);
    double step = widest - overlap;
    for (int k = 1; k < pieces; k++) {
      add(k * step);
      add(end - overlap - k * step);
    }
    even(pieces, end, overlap).forEach(this::add);
    even(pieces + 1, end, overlap).forEach(this::add);
  }

  SeamCandidates everyStep(double pitch) {
    double step = Math.max(pitch, end / MOST_ON_PITCH);
    for (int k = 1; k * step < end; k++) {
      add(k * step);
    }
    return this;
  }

  /** The lap in the middle of each gap of the artwork, and just clear of each of its sides. */
  SeamCandidates inGaps(List<double[]> gaps, double near) {
    for (double[] gap : gaps) {
      add((gap[0] + gap[1] - overlap) / 2);
      add(gap[0] + near + CLEAR);
      add(gap[1] - near - overlap - CLEAR);
    }
    return this;
  }

  double[] sorted() {
    return places.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private void add(double place) {
    double onGrid = Math.rint(place * 1000) / 1000;
    if (onGrid > 0 && onGrid + overlap < end) {
      places.add(onGrid);
    }
  }

  /** Fewest pieces no wider than {@code widest} that cover {@code end} with overlaps. */
  static int fewest(double end, double widest, double overlap) {
    return Math.max(1, (int) Math.ceil((end - overlap) / (widest - overlap) - 1e-9));
  }

  /** Seam places that make all pieces equally wide. */
  static List<Double> even(int pieces, double end, double overlap) {
    double step = (end - overlap) / pieces;
    return java.util.stream.IntStream.range(1, pieces)
        .mapToObj(k -> Math.rint(k * step * 1000) / 1000)
        .toList();
  }
}
