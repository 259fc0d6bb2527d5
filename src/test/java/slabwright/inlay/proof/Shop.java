package slabwright.inlay.proof;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import slabwright.inlay.artwork.ArtworkRefusal;
import slabwright.inlay.artwork.DrawnOutlines;
import slabwright.inlay.artwork.OutlinesResult;
import slabwright.inlay.artwork.batik.SvgOutlinesReader;
import slabwright.inlay.cutfile.CutLayer;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.words.Words;

/** A sign shop that redraws a stencil: other points, other transforms, 0.2 mm of unsteadiness. */
final class Shop {
  private final Random random;
  private final Affine pose;
  private final StringBuilder body = new StringBuilder();

  /** A shop that draws everything in this pose. */
  Shop(Affine pose, long seed) {
    this.pose = pose;
    this.random = new Random(seed);
  }

  Shop shade(Region region, Affine where) {
    path(region.simplified(0.1).rings(), where, "fill=\"#404a55\" fill-rule=\"evenodd\"");
    return this;
  }

  Shop lines(Region region, Affine where) {
    path(
        region.simplified(0.1).rings(),
        where,
        "fill=\"none\" stroke=\"#ff0000\" stroke-width=\".1\"");
    return this;
  }

  Shop edge(Bounds b, Affine where) {
    return lines(Region.rectangle(b), where);
  }

  /** Lettering and a frame beside the stencil, turned with it. */
  Shop labels(Bounds blank) {
    Affine at = Affine.scale(3, 3).then(Affine.move(blank.minX() + 40, blank.maxY() + 160));
    body.append("<g transform=\"%s\"><g transform=\"%s\">".formatted(matrix(pose), matrix(at)))
        .append(
            "<text font-family=\"DejaVu Sans\" font-size=\"20\">Job 17 / vinyl 2 of 3</text></g>")
        .append("</g>\n");
    return edge(
        new Bounds(blank.minX(), blank.maxY() + 60, blank.minX() + 400, blank.maxY() + 110),
        Affine.IDENTITY);
  }

  ShopDrawing drawing() {
    String svg =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"20000mm\" height=\"20000mm\""
            + " viewBox=\"-10000 -10000 20000 20000\">"
            + body
            + "</svg>";
    try {
      OutlinesResult read =
          SvgOutlinesReader.read(
              new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)),
              "shop.svg",
              CutLayer.ids());
      if (read instanceof ArtworkRefusal r) {
        throw new AssertionError(Words.english().say(r.message()));
      }
      return ShopDrawing.of((DrawnOutlines) read);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void path(List<Ring> rings, Affine where, String style) {
    // half of the way by a transform, half in the points, as programs do
    Affine points = where.then(Affine.turn(0.3)).then(Affine.scale(0.25, 0.25));
    Affine group = Affine.scale(4, 4).then(Affine.turn(-0.3)).then(pose);
    body.append("<g transform=\"")
        .append(matrix(group))
        .append("\"><path ")
        .append(style)
        .append(" d=\"");
    for (Ring r : rings) {
      String command = "M";
      for (Vec p : redrawn(r)) {
        Vec q = points.apply(p);
        body.append(command).append(String.format(Locale.ROOT, "%.5f %.5f", q.x(), q.y()));
        command = "L";
      }
      body.append("Z");
    }
    body.append("\"/></g>\n");
  }

  private List<Vec> redrawn(Ring ring) {
    List<Vec> out = new ArrayList<>();
    List<Vec> p = ring.points();
    int start = random.nextInt(p.size());
    for (int i = 0; i < p.size(); i++) {
      Vec a = p.get((start + i) % p.size());
      Vec b = p.get((start + i + 1) % p.size());
      out.add(unsteady(a));
      double length = a.distanceTo(b);
      for (double t = 10 + random.nextDouble() * 30;
          t < length;
          t += 10 + random.nextDouble() * 30) {
        out.add(unsteady(a.towards(b, t / length)));
      }
    }
    return out;
  }

  /** The noise is in the drawing's millimetres, so it is divided by the pose's scale. */
  private Vec unsteady(Vec p) {
    double reach = 0.2 / Math.sqrt(Math.abs(pose.determinant()));
    double r = reach * Math.sqrt(random.nextDouble());
    double t = random.nextDouble() * 2 * Math.PI;
    return p.plus(new Vec(r * Math.cos(t), r * Math.sin(t)));
  }

  private static String matrix(Affine m) {
    return String.format(
        Locale.ROOT,
        "matrix(%.9f %.9f %.9f %.9f %.6f %.6f)",
        m.a(),
        m.b(),
        m.c(),
        m.d(),
        m.e(),
        m.f());
  }
}
