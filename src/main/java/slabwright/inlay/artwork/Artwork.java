package slabwright.inlay.artwork;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.batik.gvt.GraphicsNode;
import slabwright.inlay.artwork.ArtworkRefusal.Reason;
import slabwright.inlay.artwork.batik.FontResolver;
import slabwright.inlay.artwork.batik.SceneBuilder;
import slabwright.inlay.artwork.batik.SceneVisitor;
import slabwright.inlay.artwork.css.EmbeddedFont;
import slabwright.inlay.artwork.css.Svg11Rewriter;
import slabwright.inlay.artwork.css.SvgElement;
import slabwright.inlay.artwork.css.SvgReader;
import slabwright.inlay.artwork.css.UseExpansionValidator;
import slabwright.shape.Bounds;

/**
 * A graphic as it will lie on the floor: one region for each colour that is seen.
 *
 * <p>Frame: millimetres from the top-left corner of the painted bounds, x right, y down. Every
 * curve is flattened within the stated tolerance at this size. What is painted is what counts, not
 * the page: fills, strokes, text, markers and copies, cut by clips and masks, in paint order. Known
 * limits: gradients and patterns become one colour, partial opacity counts as painted, and filter
 * effects are left out; each is said in a warning.
 *
 * @param name the file's name, as used in sentences
 * @param mmPerPx mm on the floor for one CSS pixel of the graphic
 * @param painted bounds of all colours; its corner is (0, 0) within the tolerance
 * @param colours disjoint regions in the order the colours are first painted
 * @param background a colour that fills the whole page behind all others; not among the colours
 */
public record Artwork(
    String name,
    double mmPerPx,
    Bounds painted,
    List<ColourRegion> colours,
    Optional<ColourRegion> background,
    List<ArtworkWarning> warnings)
    implements ArtworkResult {
  public static final String NOTHING =
      "nothing in it is painted; give its shapes a fill or a stroke and save again.";
  static final int MOST_BYTES = 32 << 20;
  private static final double NARROWEST_MM = 10;
  private static final double WIDEST_MM = 100_000;

  /** The SVG library keeps caches that are not safe for threads. */
  static final Object ONE_AT_A_TIME = new Object();

  public Artwork {
    colours = List.copyOf(colours);
    warnings = List.copyOf(warnings);
  }

  /**
   * Reads an SVG file.
   *
   * @throws IOException when the file can't be read at all
   */
  public static ArtworkResult read(Path svg, ArtworkOptions options) throws IOException {
    try (InputStream in = Files.newInputStream(svg)) {
      return read(in, String.valueOf(svg.getFileName()), options);
    }
  }

  /**
   * Reads SVG text.
   *
   * @param name what to call it in sentences
   * @throws IOException when the stream breaks
   */
  public static ArtworkResult read(InputStream svg, String name, ArtworkOptions options)
      throws IOException {
    byte[] bytes = svg.readNBytes(MOST_BYTES + 1);
    try {
      check(bytes, options);
      synchronized (ONE_AT_A_TIME) {
        return read(bytes, name, options);
      }
    } catch (RefusedArtworkException e) {
      return e.refusal(name);
    }
  }

  static void checkSize(byte[] bytes) {
    if (bytes.length > MOST_BYTES) {
      throw new RefusedArtworkException(
          Reason.TOO_LARGE, "larger than 32 MB; simplify the drawing before saving.");
    }
  }

  private static void check(byte[] bytes, ArtworkOptions options) {
    checkSize(bytes);
    double w = options.widthMm();
    if (!(w >= NARROWEST_MM && w <= WIDEST_MM)) {
      throw new RefusedArtworkException(
          Reason.ABSURD_SIZE, "a width of %s mm; choose one from 10 mm to 100 m.".formatted(w));
    }
  }

  private static Artwork read(byte[] bytes, String name, ArtworkOptions options) {
    WarningCollector notes = new WarningCollector();
    SvgElement root = SvgReader.read(bytes);
    List<EmbeddedFont> fonts = Svg11Rewriter.rewrite(root, notes);
    UseExpansionValidator.check(root);
    ArtworkPage page = ArtworkPage.settle(root);
    FontResolver book = new FontResolver(fonts, options.installedFonts());
    GraphicsNode scene = SceneBuilder.build(root, page, book, notes);
    List<PaintedShape> shapes = SceneVisitor.shapes(scene, new AffineTransform(), notes);
    return new ArtworkBuilder(shapes, page, options, notes).build(name);
  }
}
