package slabwright.inlay.artwork.batik;

import java.awt.Color;
import java.awt.Paint;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.batik.ext.awt.MultipleGradientPaint;
import slabwright.inlay.artwork.ArtworkQuestion;
import slabwright.inlay.artwork.ArtworkWarning.Kind;
import slabwright.inlay.artwork.PaintedShape;
import slabwright.inlay.artwork.PathFlattener;
import slabwright.inlay.artwork.Rgba;
import slabwright.inlay.artwork.WarningCollector;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.units.Message;

/** One colour for whatever a shape is filled with. */
final class PaintColour {
  private PaintColour() {}

  /** Empty when the paint shows nothing. */
  static Optional<Rgba> of(Paint paint, Vec place, WarningCollector notes) {
    if (paint instanceof PatternBridge.Pattern p) {
      notes.add(Kind.PATTERN, Message.of("inlay.paint-colour.pattern"), place);
      Optional<Rgba> main =
          mainColour(SceneVisitor.shapes(p.content(), new AffineTransform(), notes));
      main.ifPresent(
          c ->
              notes.ask(
                  ArtworkQuestion.Kind.PATTERN,
                  Message.of("inlay.artwork-question.pattern", c.hex()),
                  c.hex(),
                  place));
      return main;
    }
    if (paint instanceof Color c) {
      return Optional.of(rgba(c));
    }
    if (paint instanceof MultipleGradientPaint g) {
      notes.add(Kind.GRADIENT, Message.of("inlay.paint-colour.gradient"), place);
      Rgba mean = average(g);
      notes.ask(
          ArtworkQuestion.Kind.FADE,
          Message.of("inlay.artwork-question.fade", mean.hex()),
          mean.hex(),
          place);
      return Optional.of(mean);
    }
    notes.add(Kind.PART_LEFT_OUT, Message.of("inlay.paint-colour.unknown-fill"), place);
    return Optional.empty();
  }

  private static Rgba rgba(Color c) {
    return new Rgba(c.getRed(), c.getGreen(), c.getBlue(), c.getAlpha() / 255.0);
  }

  /** The mean over the gradient's run, each stretch between two stops counting by its length. */
  private static Rgba average(MultipleGradientPaint g) {
    float[] at = g.getFractions();
    Color[] colours = g.getColors();
    double[] sum = new double[4];
    for (int i = 0; i + 1 < at.length; i++) {
      add(sum, rgba(colours[i]), (at[i + 1] - at[i]) / 2);
      add(sum, rgba(colours[i + 1]), (at[i + 1] - at[i]) / 2);
    }
    add(sum, rgba(colours[0]), at[0]);
    add(sum, rgba(colours[at.length - 1]), 1 - at[at.length - 1]);
    return new Rgba(
        (int) Math.round(sum[0]), (int) Math.round(sum[1]), (int) Math.round(sum[2]), sum[3]);
  }

  private static void add(double[] sum, Rgba c, double weight) {
    sum[0] += weight * c.r();
    sum[1] += weight * c.g();
    sum[2] += weight * c.b();
    sum[3] += weight * c.alpha();
  }

  private static Optional<Rgba> mainColour(List<PaintedShape> shapes) {
    Map<String, Double> areas = new HashMap<>();
    for (PaintedShape s : shapes) {
      areas.merge(s.hex(), Math.abs(area(s.outline())), Double::sum);
    }
    return areas.entrySet().stream()
        .max(Map.Entry.<String, Double>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
        .map(e -> Rgba.ofHex(e.getKey()));
  }

  private static double area(Path2D outline) {
    return PathFlattener.rings(outline, new AffineTransform(), 0.5).stream()
        .mapToDouble(Ring::signedArea)
        .sum();
  }
}
