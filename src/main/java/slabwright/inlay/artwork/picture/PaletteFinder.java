package slabwright.inlay.artwork.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import slabwright.inlay.artwork.picture.ColourHistogram.Cell;
import slabwright.units.CieLab;

/**
 * The few colours a picture was made of. Only pixels that look like all their neighbours vote, so
 * smoothed edges don't; colours nearer than {@link #APART} count as one. Lines too thin to hold
 * such a pixel are found as colours that no two others mix to.
 */
final class PaletteFinder {
  /** CIE 1976 Delta E below which two colours are one: our own choice, no source. */
  static final double APART = 10;

  /** More than these are not told from shading; merged, and asked about. */
  static final int MOST = 12;

  /** Brightness steps (of 255) between neighbours of a flat place, at least and at most. */
  private static final double FLAT_LEAST = 3;

  private static final double FLAT_MOST = 14;

  /** Brightness steps off every mixture that make a colour of its own. */
  private static final double OFF_MIXTURE = 34;

  private static final double LEAST_SHARE = 2e-5;
  private static final int LEAST_PIXELS = 6;
  private static final int ROUNDS = 4;
  private static final double FARTHEST_SHARE = 0.1;

  private final Pixels pixels;
  private final double leastCount;

  PaletteFinder(Pixels pixels) {
    this.pixels = pixels;
    this.leastCount = Math.max(LEAST_PIXELS, LEAST_SHARE * pixels.count());
  }

  /**
   * The colours, the most frequent first.
   *
   * @param wished how many, when a person said so
   */
  Found find(OptionalInt wished) {
    ColourHistogram all = new ColourHistogram();
    ColourHistogram flat = new ColourHistogram();
    double step = flatStep();
    for (int y = 0; y < pixels.height(); y++) {
      for (int x = 0; x < pixels.width(); x++) {
        int c = pixels.at(x, y);
        all.add(c);
        if (roughness(x, y) <= step * step) {
          flat.add(c);
        }
      }
    }
    List<Cell> cells = all.cells();
    List<Cell> modes = modes(flat.cells());
    modes.removeIf(m -> m.count() < leastCount);
    if (modes.isEmpty()) {
      modes.add(cells.get(0));
    }
    thin(modes, cells);
    int told = modes.size();
    return new Found(
        fewer(modes, wished.orElse(MOST)).stream().mapToInt(Cell::rgb).toArray(), told);
  }

  /**
   * What was found.
   *
   * @param told how many colours could be told apart before they were brought down
   */
  @SuppressWarnings("ArrayRecordComponent")
  record Found(int[] colours, int told) {}

  /** The square of the largest step to one of four neighbours. */
  private double roughness(int x, int y) {
    int c = pixels.at(x, y);
    double most = 0;
    if (x > 0) {
      most = Math.max(most, PixelColour.distance(c, pixels.at(x - 1, y)));
    }
    if (y > 0) {
      most = Math.max(most, PixelColour.distance(c, pixels.at(x, y - 1)));
    }
    if (x + 1 < pixels.width()) {
      most = Math.max(most, PixelColour.distance(c, pixels.at(x + 1, y)));
    }
    if (y + 1 < pixels.height()) {
      most = Math.max(most, PixelColour.distance(c, pixels.at(x, y + 1)));
    }
    return most;
  }

  /** A step that noise makes: three times what most of the picture shows. */
  private double flatStep() {
    int apart = Math.max(1, (int) Math.sqrt(pixels.count() / 40_000.0));
    List<Double> seen = new ArrayList<>();
    for (int y = 0; y < pixels.height(); y += apart) {
      for (int x = 0; x < pixels.width(); x += apart) {
        seen.add(Math.sqrt(roughness(x, y)));
      }
    }
    double[] sorted = seen.stream().mapToDouble(d -> d).sorted().toArray();
    return Math.max(FLAT_LEAST, Math.min(FLAT_MOST, 3 * sorted[sorted.length / 2]));
  }

  private static List<Cell> modes(List<Cell> cells) {
    List<CieLab> centres = new ArrayList<>();
    for (Cell c : cells) {
      if (centres.stream().noneMatch(m -> m.deltaE(c.lab()) < APART)) {
        centres.add(c.lab());
      }
    }
    List<Cell> modes = new ArrayList<>();
    for (int round = 0; round < ROUNDS; round++) {
      modes = means(cells, centres);
      centres = modes.stream().map(Cell::lab).toList();
    }
    List<Cell> apart = new ArrayList<>();
    for (Cell m : modes) {
      int near = nearest(m.lab(), apart.stream().map(Cell::lab).toList());
      if (near >= 0 && apart.get(near).lab().deltaE(m.lab()) < APART) {
        apart.set(near, merged(apart.get(near), m));
      } else {
        apart.add(m);
      }
    }
    return apart;
  }

  private static List<Cell> means(List<Cell> cells, List<CieLab> centres) {
    double[][] sums = new double[centres.size()][4];
    for (Cell c : cells) {
      double[] s = sums[nearest(c.lab(), centres)];
      s[0] += (double) PixelColour.red(c.rgb()) * c.count();
      s[1] += (double) PixelColour.green(c.rgb()) * c.count();
      s[2] += (double) PixelColour.blue(c.rgb()) * c.count();
      s[3] += c.count();
    }
    List<Cell> means = new ArrayList<>();
    for (double[] s : sums) {
      if (s[3] > 0) {
        means.add(Cell.of(s[0], s[1], s[2], (long) s[3]));
      }
    }
    means.sort((p, q) -> Long.compare(q.count(), p.count()));
    return means;
  }

  private static int nearest(CieLab lab, List<CieLab> centres) {
    int best = -1;
    double least = Double.MAX_VALUE;
    for (int i = 0; i < centres.size(); i++) {
      double d = centres.get(i).deltaE(lab);
      if (d < least) {
        least = d;
        best = i;
      }
    }
    return best;
  }

  private static Cell merged(Cell a, Cell b) {
    double wa = a.count();
    double wb = b.count();
    return Cell.of(
        PixelColour.red(a.rgb()) * wa + PixelColour.red(b.rgb()) * wb,
        PixelColour.green(a.rgb()) * wa + PixelColour.green(b.rgb()) * wb,
        PixelColour.blue(a.rgb()) * wa + PixelColour.blue(b.rgb()) * wb,
        a.count() + b.count());
  }

  /** Adds colours that only thin lines have. */
  private void thin(List<Cell> modes, List<Cell> cells) {
    for (int i = 0; i < MOST && modes.size() < 2 * MOST; i++) {
      List<Cell> odd = new ArrayList<>();
      double[] off = new double[cells.size()];
      long pixelsOff = 0;
      for (Cell c : cells) {
        double d = offMixtures(c.rgb(), modes);
        if (d > OFF_MIXTURE * OFF_MIXTURE) {
          off[odd.size()] = d;
          odd.add(c);
          pixelsOff += c.count();
        }
      }
      if (pixelsOff < leastCount) {
        return;
      }
      modes.add(farthest(odd, off, Math.max(1, (long) (FARTHEST_SHARE * pixelsOff))));
    }
  }

  private static Cell farthest(List<Cell> odd, double[] off, long wanted) {
    Integer[] order = new Integer[odd.size()];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, (p, q) -> Double.compare(off[q], off[p]));
    Cell sum = odd.get(order[0]);
    for (int i = 1; i < order.length && sum.count() < wanted; i++) {
      Cell next = odd.get(order[i]);
      if (next.lab().deltaE(sum.lab()) < APART) {
        sum = merged(sum, next);
      }
    }
    return sum;
  }

  private static double offMixtures(int c, List<Cell> modes) {
    double least = Double.MAX_VALUE;
    for (int i = 0; i < modes.size(); i++) {
      least = Math.min(least, PixelColour.distance(c, modes.get(i).rgb()));
      for (int j = i + 1; j < modes.size(); j++) {
        least = Math.min(least, PixelColour.offMixture(c, modes.get(i).rgb(), modes.get(j).rgb()));
      }
    }
    return least;
  }

  /** Merges what costs least (Ward's rule) until no more than so many are left. */
  private static List<Cell> fewer(List<Cell> modes, int most) {
    List<Cell> left = new ArrayList<>(modes);
    while (left.size() > Math.max(2, most)) {
      int a = 0;
      int b = 1;
      double least = Double.MAX_VALUE;
      for (int i = 0; i < left.size(); i++) {
        for (int j = i + 1; j < left.size(); j++) {
          double d = left.get(i).lab().deltaE(left.get(j).lab());
          double wi = left.get(i).count();
          double wj = left.get(j).count();
          double cost = d * d * wi * wj / (wi + wj);
          if (cost < least) {
            least = cost;
            a = i;
            b = j;
          }
        }
      }
      left.set(a, merged(left.get(a), left.remove(b)));
    }
    left.sort((p, q) -> Long.compare(q.count(), p.count()));
    return left;
  }
}
