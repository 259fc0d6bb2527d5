package slabwright.inlay.artwork.picture;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;

/**
 * An icon drawn at a size, kept as a picture, traced back, and measured beside the plain contour.
 *
 * @param kind {@code png}, or {@code jpeg} at quality 75
 * @param ours of the tracer
 * @param plain of {@link PlainContour} with the same colours
 * @param doubt what the tracer says itself, in pixels
 */
record TracedIcon(
    String icon, int side, String kind, TraceScore ours, TraceScore plain, double doubt, long ms) {
  static final List<String> KINDS = List.of("png", "jpeg");

  /** The width that edges are judged at. */
  static final double JUDGED_MM = 1800;

  /** The outlines of each color that the tracer finds in a picture. */
  record Outlines(Pixels pixels, List<Integer> palette, List<Path2D> outlines, double doubt) {
    static Outlines of(BufferedImage image, String kind) throws IOException {
      byte[] file = kind.equals("png") ? DrawnIcon.png(image) : DrawnIcon.jpeg(image, 0.75);
      Pixels pixels = DrawnIcon.pixels(file);
      int[] palette = new PaletteFinder(pixels).find(OptionalInt.empty()).colours();
      LabelMap map = PixelLabeller.label(pixels, palette);
      SpeckRemoval.run(map, 4);
      PictureTrace trace = new PictureTrace(pixels, map, 0);
      List<Path2D> outlines = new RingAssembly(trace).outlines(palette.length);
      return new Outlines(pixels, Arrays.stream(palette).boxed().toList(), outlines, trace.doubt());
    }
  }

  static TracedIcon of(DrawnIcon icon, int side, String kind) throws IOException {
    BufferedImage image = icon.drawn(side);
    long start = System.nanoTime();
    Outlines traced = Outlines.of(image, kind);
    long ms = (System.nanoTime() - start) / 1_000_000;
    int[] palette = traced.palette().stream().mapToInt(Integer::intValue).toArray();
    List<Shape> plain = PlainContour.trace(traced.pixels(), palette);
    List<Shape> drawn = new ArrayList<>();
    List<Shape> ours = new ArrayList<>();
    List<Shape> theirs = new ArrayList<>();
    for (DrawnIcon.Part part : icon.parts()) {
      int k = nearest(palette, part.rgb());
      drawn.add(part.shape());
      ours.add(traced.outlines().get(k));
      theirs.add(plain.get(k));
    }
    return new TracedIcon(
        icon.name(),
        side,
        kind,
        TraceScore.of(drawn, ours, side),
        TraceScore.of(drawn, theirs, side),
        traced.doubt(),
        ms);
  }

  private static int nearest(int[] palette, int rgb) {
    int best = 0;
    for (int k = 1; k < palette.length; k++) {
      if (PixelColour.distance(palette[k], rgb) < PixelColour.distance(palette[best], rgb)) {
        best = k;
      }
    }
    return best;
  }

  double ratio() {
    return ours.difference() / plain.difference();
  }

  /** What 95 % of the edges are off at most at {@link #JUDGED_MM}. */
  double p95Mm() {
    return ours.p95() * JUDGED_MM / side;
  }

  String row() {
    return String.format(
        Locale.ROOT,
        "| %s | %d | %s | %.3f | %.3f | %.2f | %.2f | %.2f | %d |",
        icon,
        side,
        kind,
        100 * ours.difference(),
        100 * plain.difference(),
        ratio(),
        p95Mm(),
        doubt * JUDGED_MM / side,
        ms);
  }
}
