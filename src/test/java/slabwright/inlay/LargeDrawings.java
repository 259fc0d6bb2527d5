package slabwright.inlay;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** Invented drawings that ask much of reading and planning; the same ones for the same sizes. */
final class LargeDrawings {
  private static final String[] INKS = {"#2a5078", "#7a1f2b", "#c49a3c", "#1d1d1d"};

  private LargeDrawings() {}

  /**
   * A crest of feathers as an SVG of about so many bytes: curved strokes that leave one another at
   * a tangent, bend tighter than they are wide and are drawn twice in two inks.
   */
  static String crest(int bytes) {
    Random random = new Random(5);
    StringBuilder svg = new StringBuilder(bytes + 2000);
    svg.append("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 1000 1000' fill='none'>\n");
    for (int i = 0; svg.length() < bytes; i++) {
      feather(svg, random, i);
    }
    return svg.append("</svg>\n").toString();
  }

  private static void feather(StringBuilder svg, Random random, int number) {
    double around = number * 2.39996;
    double out = 380 * Math.sqrt(random.nextDouble());
    double x = 500 + out * Math.cos(around);
    double y = 500 + out * Math.sin(around);
    double turn = random.nextDouble() * 2 * Math.PI;
    String quill = String.format(Locale.ROOT, "M%.1f %.1f", x, y) + curves(random, 6, turn, 30);
    stroke(svg, quill, INKS[number % 4], 1 + 4 * random.nextDouble());
    stroke(svg, quill, INKS[(number + 1) % 4], 0.5 + 1.5 * random.nextDouble());
    for (int barb = 0; barb < 6; barb++) {
      double side = turn + (barb % 2 == 0 ? 0.3 : -0.3) * random.nextDouble();
      double along = barb * 5;
      String path =
          String.format(
                  Locale.ROOT, "M%.1f %.1f", x + along * Math.cos(turn), y + along * Math.sin(turn))
              + curves(random, 5, side, 18);
      stroke(svg, path, INKS[(number + barb) % 4], 0.5 + 5.5 * random.nextDouble());
    }
  }

  /** Relative curves that go on as the one before ended. */
  private static String curves(Random random, int count, double start, double length) {
    StringBuilder path = new StringBuilder("c");
    double turn = start;
    for (int i = 0; i < count; i++) {
      double bend = 1.6 * (random.nextDouble() - 0.5);
      double[] at = new double[6];
      for (int k = 0; k < 3; k++) {
        double way = turn + bend * k / 2;
        at[2 * k] = length * (k + 1) / 3 * Math.cos(way);
        at[2 * k + 1] = length * (k + 1) / 3 * Math.sin(way);
      }
      for (double v : at) {
        path.append(Math.round(v)).append(' ');
      }
      turn += bend;
    }
    return path.toString().trim();
  }

  private static void stroke(StringBuilder svg, String path, String ink, double width) {
    svg.append(
        String.format(
            Locale.ROOT, "<path d='%s' stroke='%s' stroke-width='%.1f'/>\n", path, ink, width));
  }

  /**
   * Islands with rugged shores, so many segments in all, {@code width} mm wide: one large among
   * small ones, each shore a ring whose sides are broken at their middles again and again.
   */
  static List<Ring> coast(int segments, double width) {
    Random random = new Random(8);
    List<Ring> islands = new ArrayList<>();
    int sides = segments / 63;
    double cell = width / 8;
    for (int i = 0; i < 32; i++) {
      int column = i % 8;
      int row = i / 8;
      boolean large = column % 2 == 0 && row % 2 == 0;
      double reach = cell * (large ? 0.7 : 0.25);
      Vec middle = new Vec((column + 0.7) * cell, (row + 0.7) * cell);
      islands.add(shore(random, middle, reach, large ? 5 * sides : sides));
    }
    return islands;
  }

  private static Ring shore(Random random, Vec middle, double radius, int sides) {
    List<Vec> points = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      double r = radius * (0.6 + 0.4 * random.nextDouble());
      double a = i * Math.PI / 3;
      points.add(middle.plus(new Vec(Math.cos(a), Math.sin(a)).times(r)));
    }
    while (points.size() < sides) {
      List<Vec> finer = new ArrayList<>(points.size() * 2);
      int left = sides - points.size();
      for (int i = 0; i < points.size(); i++) {
        Vec a = points.get(i);
        Vec b = points.get((i + 1) % points.size());
        finer.add(a);
        if (i < left) {
          double aside = 0.2 * Math.max(-1.5, Math.min(1.5, random.nextGaussian()));
          finer.add(a.towards(b, 0.5).plus(b.minus(a).left().times(aside)));
        }
      }
      points = finer;
    }
    return new Ring(points);
  }
}
