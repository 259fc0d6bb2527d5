package slabwright.pdfin.painted;

import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceN;
import org.apache.pdfbox.pdmodel.graphics.color.PDPattern;
import org.apache.pdfbox.pdmodel.graphics.color.PDSeparation;
import org.apache.pdfbox.pdmodel.graphics.pattern.PDAbstractPattern;
import org.apache.pdfbox.pdmodel.graphics.pattern.PDShadingPattern;
import org.apache.pdfbox.pdmodel.graphics.pattern.PDTilingPattern;
import org.apache.pdfbox.pdmodel.graphics.shading.PDShading;
import org.apache.pdfbox.pdmodel.graphics.shading.PDShadingType2;

/** One colour for whatever a PDF paints with, and the names that the file gives to colours. */
final class PdfPaints {
  private static final int SAMPLES = 33;
  private static final String NO_INK = COSName.NONE.getName();
  private static final String EVERY_INK = "all";

  /** Runs a pattern's own drawing. */
  interface Tiles {
    List<PdfPaintedShape> of(PDTilingPattern pattern, Optional<PDColor> ink) throws IOException;
  }

  private final PdfNotes notes;
  private final Tiles tiles;
  private final Map<String, String> names = new LinkedHashMap<>();

  PdfPaints(PdfNotes notes, Tiles tiles) {
    this.notes = notes;
    this.tiles = tiles;
  }

  Map<String, String> names() {
    return names;
  }

  /**
   * The colour; empty when it leaves no mark.
   *
   * @param box around what is painted, in the page's own frame
   */
  Optional<String> hex(PDColor colour, Rectangle2D box) throws IOException {
    if (colour.getColorSpace() instanceof PDPattern space) {
      return pattern(space, colour, box);
    }
    Optional<String> name = name(colour.getColorSpace());
    if (name.filter(NO_INK::equals).isPresent()) {
      return Optional.empty();
    }
    String hex = hex(colour.toRGB());
    name.filter(n -> !n.equalsIgnoreCase(EVERY_INK)).ifPresent(n -> names.putIfAbsent(hex, n));
    return Optional.of(hex);
  }

  private static Optional<String> name(PDColorSpace space) {
    if (space instanceof PDSeparation one) {
      return Optional.of(one.getColorantName());
    }
    return space instanceof PDDeviceN many
        ? Optional.of(String.join(" + ", many.getColorantNames()))
        : Optional.empty();
  }

  private Optional<String> pattern(PDPattern space, PDColor colour, Rectangle2D box)
      throws IOException {
    PDAbstractPattern pattern = space.getPattern(colour);
    if (pattern instanceof PDShadingPattern shading) {
      return fade(shading.getShading(), box);
    }
    if (!(pattern instanceof PDTilingPattern tiling)) {
      return Optional.empty();
    }
    PDColorSpace under = space.getUnderlyingColorSpace();
    // a pattern that brings its own colours takes none
    Optional<PDColor> ink =
        Optional.ofNullable(under).map(own -> new PDColor(colour.getComponents(), own));
    Optional<String> main = main(tiles.of(tiling, ink));
    main.ifPresent(hex -> notes.add(PdfNote.Kind.PATTERN, hex, box));
    return main;
  }

  /** The colour that covers most of a pattern. */
  private static Optional<String> main(List<PdfPaintedShape> drawn) {
    Map<String, Double> areas = new HashMap<>();
    drawn.forEach(s -> areas.merge(s.hex(), area(s), Double::sum));
    return areas.entrySet().stream()
        .max(Map.Entry.<String, Double>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
        .map(Map.Entry::getKey);
  }

  private static double area(PdfPaintedShape s) {
    if (s.pen().isPresent()) {
      Rectangle2D box = s.path().getBounds2D();
      return Math.hypot(box.getWidth(), box.getHeight()) * s.pen().get().getLineWidth();
    }
    double twice = 0;
    double[] c = new double[6];
    double[] last = new double[2];
    double[] first = new double[2];
    for (PathIterator it = s.path().getPathIterator(new AffineTransform(), 0.5);
        !it.isDone();
        it.next()) {
      int kind = it.currentSegment(c);
      double[] to = kind == PathIterator.SEG_CLOSE ? first : c;
      if (kind != PathIterator.SEG_MOVETO) {
        twice += last[0] * to[1] - to[0] * last[1];
      } else {
        first = new double[] {c[0], c[1]};
      }
      last = new double[] {to[0], to[1]};
    }
    return Math.abs(twice) / 2;
  }

  /** The mean of a fade along its run; empty for a mesh, which has none. */
  Optional<String> fade(PDShading shading, Rectangle2D box) throws IOException {
    // a radial one is an axial one with circles
    if (!(shading instanceof PDShadingType2 along)) {
      notes.add(PdfNote.Kind.MESH, "", box);
      return Optional.empty();
    }
    float from = along.getDomain() == null ? 0 : number(along, 0);
    float to = along.getDomain() == null ? 1 : number(along, 1);
    double[] sum = new double[3];
    for (int i = 0; i < SAMPLES; i++) {
      float t = from + (to - from) * i / (SAMPLES - 1);
      float[] rgb = along.getColorSpace().toRGB(along.evalFunction(t));
      for (int k = 0; k < 3; k++) {
        sum[k] += rgb[k] * 255 / SAMPLES;
      }
    }
    int rgb =
        (int) Math.round(sum[0]) << 16 | (int) Math.round(sum[1]) << 8 | (int) Math.round(sum[2]);
    notes.add(PdfNote.Kind.FADE, hex(rgb), box);
    return Optional.of(hex(rgb));
  }

  private static float number(PDShadingType2 along, int i) {
    return along.getDomain().get(i) instanceof COSNumber n ? n.floatValue() : i;
  }

  private static String hex(int rgb) {
    return "#%06x".formatted(rgb & 0xffffff);
  }
}
