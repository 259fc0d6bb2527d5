package slabwright.inlay.artwork.picture;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** scratch */
final class TraceTable {
  private TraceTable() {}

  public static void main(String[] a) throws IOException {
    int[] sizes = a.length > 0 ? new int[] {Integer.parseInt(a[0])} : new int[] {200, 400, 800};
    String only = a.length > 1 ? a[1] : "";
    System.out.printf(
        "%-14s %4s %5s %8s %8s %6s %6s %6s %s%n",
        "icon", "px", "kind", "diff%", "base%", "ratio", "p95", "bp95", "colours ms noise doubt");
    for (DrawnIcon icon : DrawnIcon.all()) {
      if (!only.isEmpty() && !icon.name().equals(only)) continue;
      for (int side : sizes) {
        var image = icon.drawn(side);
        for (int k = 0; k < 2; k++) {
          Pixels p = DrawnIcon.pixels(k == 0 ? DrawnIcon.png(image) : DrawnIcon.jpeg(image, 0.75));
          long t0 = System.nanoTime();
          int[] palette = new PaletteFinder(p).find(OptionalInt.empty()).colours();
          LabelMap map = PixelLabeller.label(p, palette);
          SpeckRemoval.run(map, 4);
          PictureTrace trace = new PictureTrace(p, map, 0);
          List<Path2D> out = new RingAssembly(trace).outlines(palette.length);
          long ms = (System.nanoTime() - t0) / 1_000_000;
          List<Shape> drawn = new ArrayList<>();
          List<Shape> traced = new ArrayList<>();
          List<Shape> base = new ArrayList<>();
          List<Shape> plain = PlainContour.trace(p, palette);
          for (DrawnIcon.Part part : icon.parts()) {
            int best = 0;
            for (int c = 0; c < palette.length; c++) {
              if (PixelColour.distance(palette[c], part.rgb())
                  < PixelColour.distance(palette[best], part.rgb())) best = c;
            }
            drawn.add(part.shape());
            traced.add(out.get(best));
            base.add(plain.get(best));
          }
          TraceScore s = TraceScore.of(drawn, traced, side);
          TraceScore b = TraceScore.of(drawn, base, side);
          System.out.printf(
              "%-14s %4d %5s %8.3f %8.3f %6.2f %6.3f %6.3f %d %d %.3f %.3f%s%n",
              icon.name(),
              side,
              k == 0 ? "png" : "jpeg",
              100 * s.difference(),
              100 * b.difference(),
              s.difference() / b.difference(),
              s.p95(),
              b.p95(),
              palette.length,
              ms,
              trace.noise(),
              trace.doubt(),
              s.p95() > trace.doubt() ? " !!" : "");
          if (a.length > 2)
            svg(Path.of(a[2], icon.name() + side + k + ".svg"), side, traced, drawn);
        }
      }
    }
  }

  static void svg(Path file, int side, List<? extends Shape> traced, List<Shape> drawn)
      throws IOException {
    StringBuilder b =
        new StringBuilder(
            "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 "
                + side
                + " "
                + side
                + "' width='1600' height='1600'><rect width='100%' height='100%' fill='white'/>");
    for (Shape s : drawn)
      b.append("<path transform='scale(" + side + ")' fill-rule='evenodd' fill='#9cf' d='")
          .append(d(s))
          .append("'/>");
    for (Shape s : traced)
      b.append("<path fill-rule='evenodd' fill='#0006' stroke='red' stroke-width='0.08' d='")
          .append(d(s))
          .append("'/>");
    Files.writeString(file, b + "</svg>");
  }

  static String d(Shape s) {
    StringBuilder b = new StringBuilder();
    double[] c = new double[6];
    for (var it = s.getPathIterator(null, 0.0005); !it.isDone(); it.next()) {
      switch (it.currentSegment(c)) {
        case 0 -> b.append("M%.4f %.4f".formatted(c[0], c[1]));
        case 1 -> b.append("L%.4f %.4f".formatted(c[0], c[1]));
        default -> b.append("Z");
      }
    }
    return b.toString();
  }
}
