package slabwright.inlay.artwork.batik;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.batik.gvt.GraphicsNode;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkBuilder;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ArtworkPage;
import slabwright.inlay.artwork.ArtworkRefusal;
import slabwright.inlay.artwork.ArtworkResult;
import slabwright.inlay.artwork.PaintedShape;
import slabwright.inlay.artwork.RefusedArtworkException;
import slabwright.inlay.artwork.WarningCollector;
import slabwright.inlay.artwork.css.EmbeddedFont;
import slabwright.inlay.artwork.css.EmbeddedPictures;
import slabwright.inlay.artwork.css.Svg11Rewriter;
import slabwright.inlay.artwork.css.SvgElement;
import slabwright.inlay.artwork.css.SvgPageReader;
import slabwright.inlay.artwork.css.SvgReader;
import slabwright.inlay.artwork.css.UseExpansionValidator;
import slabwright.units.Message;

/** Reads SVG as it is seen, painted and laid to a width. */
public final class SvgArtworkReader {
  static final int MOST_BYTES = 32 << 20;

  /** The SVG library keeps caches that are not safe for threads. */
  static final Object ONE_AT_A_TIME = new Object();

  private SvgArtworkReader() {}

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
          ArtworkRefusal.Reason.TOO_LARGE, Message.of("inlay.svg-artwork-reader.too-large"));
    }
  }

  private static void check(byte[] bytes, ArtworkOptions options) {
    checkSize(bytes);
    options.checkWidth();
  }

  private static Artwork read(byte[] bytes, String name, ArtworkOptions options) {
    WarningCollector notes = new WarningCollector();
    SvgElement root = SvgReader.read(bytes);
    UseExpansionValidator.checkRules(root);
    List<EmbeddedFont> fonts = Svg11Rewriter.rewrite(root, notes);
    UseExpansionValidator.check(root);
    ArtworkPage page = SvgPageReader.settle(root);
    double doubt = EmbeddedPictures.trace(root, notes);
    FontResolver book = new FontResolver(fonts, options.installedFonts());
    GraphicsNode scene = SceneBuilder.build(root, page, book, notes);
    List<PaintedShape> shapes = SceneVisitor.shapes(scene, new AffineTransform(), notes);
    Artwork artwork = new ArtworkBuilder(shapes, page, options, notes).build(name);
    return doubt > 0
        ? artwork.tracedInPart(doubt * artwork.mmPerPx() * page.declaredPerDrawn())
        : artwork;
  }
}
