package slabwright.inlay.artwork.batik;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.batik.anim.dom.SAXSVGDocumentFactory;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.UserAgentAdapter;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.ShapeNode;
import org.w3c.dom.Document;

/**
 * A check that shares little with the reading under test: the SVG library reads the untouched file,
 * its own tree paints itself into an image, and what its pixels are covered by is summed.
 */
final class RasterCoverage {
  final BufferedImage image;
  private final double pixelsPerUnit;

  private RasterCoverage(BufferedImage image, double pixelsPerUnit) {
    this.image = image;
    this.pixelsPerUnit = pixelsPerUnit;
  }

  /**
   * Paints a page of {@code width} by {@code height} CSS pixels so that it is {@code across} wide.
   */
  static RasterCoverage of(byte[] svg, double width, double height, int across) {
    GraphicsNode root = tree(svg);
    double scale = across / width;
    BufferedImage image =
        new BufferedImage(across, (int) Math.ceil(height * scale), BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.transform(AffineTransform.getScaleInstance(scale, scale));
    root.paint(g);
    g.dispose();
    return new RasterCoverage(image, scale);
  }

  private static GraphicsNode tree(byte[] svg) {
    try {
      Document document =
          new SAXSVGDocumentFactory(null)
              .createDocument("graphic:raster", new ByteArrayInputStream(svg));
      BridgeContext context = new BridgeContext(new UserAgentAdapter());
      GraphicsNode root = new GVTBuilder().build(context, document);
      trueArcs(root);
      return root;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The library bends half circles (see {@link SvgArc}); arcs have their own tests. */
  private static void trueArcs(GraphicsNode node) {
    if (node instanceof ShapeNode shape) {
      shape.setShape(FineOutline.of(shape.getShape()));
    } else if (node instanceof CompositeGraphicsNode group) {
      for (Object child : group.getChildren()) {
        trueArcs((GraphicsNode) child);
      }
    }
  }

  /** Painted area in square CSS pixels: each pixel counts by how much of it is covered. */
  double area() {
    long sum = 0;
    for (int pixel : ((DataBufferInt) image.getRaster().getDataBuffer()).getData()) {
      sum += pixel >>> 24;
    }
    return sum / 255.0 / pixelsPerUnit / pixelsPerUnit;
  }

  /**
   * How far such a sum may lie from the true area. The renderer samples eight by eight points a
   * pixel, so each pixel on the boundary is off by about a sixteenth of a pixel at random; four
   * standard deviations of their sum. (On circles of known area its curves add 0.04 % at 128 pixels
   * a diameter.)
   */
  double bound(double boundaryLength) {
    double crossings = boundaryLength * pixelsPerUnit * 4 / Math.PI;
    return 4 * Math.sqrt(crossings) / 16 / pixelsPerUnit / pixelsPerUnit;
  }

  /** What a second painting adds along a boundary: a sixth of a pixel's width on average. */
  double bandOf(double boundaryLength) {
    return boundaryLength / 6 / pixelsPerUnit;
  }
}
