package slabwright.inlay.artwork.picture;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ColourRegion;
import slabwright.inlay.artwork.batik.SvgArtworkReader;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * An icon of our own in a square of side 1, whose outlines are known, drawn as a picture of any
 * size.
 */
record DrawnIcon(String name, List<Part> parts) {
  /** One colour of it; parts don't overlap. */
  record Part(Shape shape, int rgb) {}

  static final List<String> NAMES =
      List.of(
          "heron",
          "disc",
          "thin-ring",
          "star",
          "burst",
          "turned-square",
          "comb",
          "letters",
          "caps",
          "leaf",
          "two-halves",
          "grey-between");

  static DrawnIcon named(String name) throws IOException {
    return switch (name) {
      case "heron" -> heron();
      case "disc" -> single(name, ring(0.5, 0.5, 0.4, 0));
      case "thin-ring" -> single(name, ring(0.5, 0.5, 0.42, 0.405));
      case "star" -> single(name, star(5, 0.45, 0.18));
      case "burst" -> single(name, star(12, 0.45, 0.3));
      case "turned-square" ->
          single(name, turned(new Rectangle2D.Double(0.25, 0.25, 0.5, 0.5), 17));
      case "comb" -> single(name, comb());
      case "letters" -> single(name, letters("Rag5", "DejaVu Serif"));
      case "caps" -> single(name, letters("TRAM", "DejaVu Sans"));
      case "leaf" -> single(name, leaf());
      case "two-halves" -> twoHalves();
      case "grey-between" -> greyBetween();
      default -> throw new IllegalArgumentException(name);
    };
  }

  private static DrawnIcon single(String name, Shape shape) {
    return new DrawnIcon(name, List.of(new Part(shape, 0x1d1d1b)));
  }

  static Shape ring(double x, double y, double outer, double inner) {
    Area a = new Area(new Ellipse2D.Double(x - outer, y - outer, 2 * outer, 2 * outer));
    a.subtract(new Area(new Ellipse2D.Double(x - inner, y - inner, 2 * inner, 2 * inner)));
    return a;
  }

  private static Shape star(int points, double outer, double inner) {
    Path2D.Double p = new Path2D.Double();
    for (int i = 0; i < 2 * points; i++) {
      double r = i % 2 == 0 ? outer : inner;
      double a = Math.PI * i / points + 0.1;
      double x = 0.5 + r * Math.sin(a);
      double y = 0.5 - r * Math.cos(a);
      if (i == 0) {
        p.moveTo(x, y);
      } else {
        p.lineTo(x, y);
      }
    }
    p.closePath();
    return p;
  }

  private static Shape turned(Shape s, double degrees) {
    return AffineTransform.getRotateInstance(Math.toRadians(degrees), 0.5, 0.5)
        .createTransformedShape(s);
  }

  private static Shape comb() {
    Area a = new Area(new Rectangle2D.Double(0.1, 0.1, 0.8, 0.15));
    for (int i = 0; i < 8; i++) {
      a.add(new Area(new Rectangle2D.Double(0.1 + 0.1 * i, 0.2, 0.02 + 0.007 * i, 0.65)));
    }
    return turned(a, 4);
  }

  private static Shape letters(String text, String family) {
    BufferedImage any = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = any.createGraphics();
    Shape s =
        new Font(family, Font.PLAIN, 100)
            .createGlyphVector(g.getFontRenderContext(), text)
            .getOutline();
    Rectangle2D b = s.getBounds2D();
    double k = 0.88 / Math.max(b.getWidth(), b.getHeight());
    AffineTransform at = AffineTransform.getTranslateInstance(0.061, 0.3);
    at.scale(k, k);
    at.translate(-b.getX(), -b.getY());
    return new Area(at.createTransformedShape(s));
  }

  private static Shape leaf() {
    Path2D.Double p = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    p.moveTo(0.1, 0.85);
    p.curveTo(0.1, 0.3, 0.5, 0.1, 0.92, 0.08);
    p.curveTo(0.9, 0.5, 0.7, 0.9, 0.1, 0.85);
    p.closePath();
    p.moveTo(0.2, 0.78);
    p.curveTo(0.35, 0.6, 0.5, 0.4, 0.8, 0.2);
    p.curveTo(0.55, 0.45, 0.4, 0.62, 0.2, 0.78);
    p.closePath();
    return p;
  }

  /** Two colours that touch along curves and meet at points with the paper. */
  private static DrawnIcon twoHalves() {
    List<Part> parts = new ArrayList<>();
    Area disc = new Area(ring(0.5, 0.5, 0.42, 0.1));
    Area left = new Area(disc);
    left.intersect(new Area(turned(new Rectangle2D.Double(-1, -1, 1.5, 3), 20)));
    Area right = new Area(disc);
    right.subtract(left);
    parts.add(new Part(left, 0xb4452c));
    parts.add(new Part(right, 0x23527c));
    return new DrawnIcon("two-halves", parts);
  }

  /** Grey between black and white: the colour that smoothed edges look like. */
  private static DrawnIcon greyBetween() {
    List<Part> parts = new ArrayList<>();
    Area black = new Area(new Rectangle2D.Double(0.1, 0.2, 0.27, 0.6));
    black.add(new Area(ring(0.78, 0.5, 0.14, 0.06)));
    parts.add(new Part(black, 0x111111));
    parts.add(new Part(new Rectangle2D.Double(0.37, 0.2, 0.26, 0.6), 0x858585));
    return new DrawnIcon("grey-between", parts);
  }

  private static DrawnIcon heron() throws IOException {
    Artwork art =
        (Artwork)
            SvgArtworkReader.read(
                Path.of("sample-plans/heron-ring.svg"), ArtworkOptions.ofWidth(10_000));
    List<Part> parts = new ArrayList<>();
    double k = 0.96 / Math.max(art.painted().width(), art.painted().height());
    for (ColourRegion c : art.colours()) {
      Path2D.Double p = new Path2D.Double(Path2D.WIND_EVEN_ODD);
      for (Ring r : c.region().rings()) {
        boolean first = true;
        for (Vec v : r.points()) {
          if (first) {
            p.moveTo(0.02 + v.x() * k, 0.02 + v.y() * k);
          } else {
            p.lineTo(0.02 + v.x() * k, 0.02 + v.y() * k);
          }
          first = false;
        }
        p.closePath();
      }
      parts.add(new Part(p, Integer.parseInt(c.hex().substring(1), 16)));
    }
    return new DrawnIcon("heron", parts);
  }

  /** As a picture on white, each pixel the mean of what it covers. */
  BufferedImage drawn(int side) {
    int fineness = side <= 800 ? 4 : 2;
    int big = side * fineness;
    BufferedImage fine = new BufferedImage(big, big, BufferedImage.TYPE_INT_RGB);
    double[] sum = new double[side * side * 3];
    Arrays.fill(sum, 255);
    for (Part part : parts) {
      Graphics2D g = fine.createGraphics();
      g.setColor(Color.BLACK);
      g.fillRect(0, 0, big, big);
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      g.scale(big, big);
      g.setColor(Color.WHITE);
      g.fill(part.shape());
      g.dispose();
      for (int y = 0; y < side; y++) {
        for (int x = 0; x < side; x++) {
          double cover = 0;
          for (int v = 0; v < fineness; v++) {
            for (int u = 0; u < fineness; u++) {
              cover +=
                  (fine.getRGB(x * fineness + u, y * fineness + v) & 255)
                      / (255.0 * fineness * fineness);
            }
          }
          int at = 3 * (y * side + x);
          // parts don't overlap: each takes its share of the paper away
          sum[at] += cover * ((part.rgb() >> 16 & 255) - 255);
          sum[at + 1] += cover * ((part.rgb() >> 8 & 255) - 255);
          sum[at + 2] += cover * ((part.rgb() & 255) - 255);
        }
      }
    }
    BufferedImage out = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < side * side; i++) {
      int rgb = PixelColour.packed(sum[3 * i], sum[3 * i + 1], sum[3 * i + 2]);
      out.setRGB(i % side, i / side, rgb);
    }
    return out;
  }

  static byte[] png(BufferedImage image) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "png", out);
    return out.toByteArray();
  }

  static byte[] jpeg(BufferedImage image, double quality) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ImageWriteParam p = writer.getDefaultWriteParam();
    p.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    p.setCompressionQuality((float) quality);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (var stream = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(stream);
      writer.write(null, new IIOImage(image, null, null), p);
    } finally {
      writer.dispose();
    }
    return out.toByteArray();
  }

  static Pixels pixels(byte[] file) throws IOException {
    BufferedImage i = ImageIO.read(new ByteArrayInputStream(file));
    int[] rgb = i.getRGB(0, 0, i.getWidth(), i.getHeight(), null, 0, i.getWidth());
    for (int k = 0; k < rgb.length; k++) {
      rgb[k] &= 0xffffff;
    }
    return new Pixels(i.getWidth(), i.getHeight(), rgb, -1, 1);
  }
}
