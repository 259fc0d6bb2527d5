package slabwright.drawing.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.ImageIO;
import slabwright.drawing.Colour;
import slabwright.drawing.Drawing;
import slabwright.drawing.Fill;
import slabwright.drawing.FontFace;
import slabwright.drawing.Painter;
import slabwright.drawing.Pen;
import slabwright.drawing.PrimitiveInk;
import slabwright.drawing.Raster;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

/**
 * Paints a drawing through {@code Graphics2D}. Words are filled from the bundled font's outlines,
 * so no font needs to be installed and every machine gives the same picture.
 */
final class PicturePainter implements Painter {
  private final Graphics2D g;
  private final GlyphPaths glyphs = new GlyphPaths();

  private PicturePainter(Graphics2D g) {
    this.g = g;
  }

  /** The drawing on white at the given dots to the inch, cut to its bounds. */
  public static BufferedImage picture(Drawing drawing, double dotsPerInch) {
    Bounds b = drawing.bounds();
    double k = dotsPerInch / 25.4;
    BufferedImage image =
        new BufferedImage(
            (int) Math.max(1, Math.round(b.width() * k)),
            (int) Math.max(1, Math.round(b.height() * k)),
            BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, image.getWidth(), image.getHeight());
    g.scale(k, k);
    g.translate(-b.minX(), -b.minY());
    paint(drawing.plain(), g);
    g.dispose();
    return image;
  }

  /** Paints the inks; the graphics' unit must be one millimetre of paper, y down. */
  public static void paint(List<PrimitiveInk> inks, Graphics2D g) {
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    PicturePainter p = new PicturePainter(g);
    inks.forEach(ink -> ink.paintOn(p));
  }

  @Override
  public void fill(Fill f) {
    Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    f.rings().forEach(r -> chain(path, r.points(), true));
    g.setColor(colour(f.colour()));
    g.fill(path);
  }

  @Override
  public void stroke(Stroke s) {
    Pen pen = s.pen();
    Path2D path = new Path2D.Double();
    s.rings().forEach(r -> chain(path, r.points(), true));
    s.lines().forEach(l -> chain(path, l.points(), false));
    g.setColor(colour(pen.colour()));
    g.setStroke(basic(pen));
    g.draw(path);
  }

  private static BasicStroke basic(Pen pen) {
    float[] dash = new float[pen.dash().size()];
    for (int i = 0; i < dash.length; i++) {
      dash[i] = pen.dash().get(i).floatValue();
    }
    return new BasicStroke(
        (float) pen.width(),
        pen.round() ? BasicStroke.CAP_ROUND : BasicStroke.CAP_BUTT,
        pen.round() ? BasicStroke.JOIN_ROUND : BasicStroke.JOIN_MITER,
        10,
        dash.length == 0 ? null : dash,
        0);
  }

  private static void chain(Path2D path, List<Vec> points, boolean closed) {
    for (int i = 0; i < points.size(); i++) {
      Vec p = points.get(i);
      if (i == 0) {
        path.moveTo(p.x(), p.y());
      } else {
        path.lineTo(p.x(), p.y());
      }
    }
    if (closed && !points.isEmpty()) {
      path.closePath();
    }
  }

  @Override
  public void text(Text t) {
    String words = TextMeasure.showable(t.words());
    double back = TextMeasure.width(words, t.style()) * t.anchor().shareBefore();
    AffineTransform at = AffineTransform.getTranslateInstance(t.at().x(), t.at().y());
    at.rotate(-Math.toRadians(t.turn()));
    at.translate(-back, 0);
    at.scale(t.style().size() / 1000, -t.style().size() / 1000);
    g.setColor(colour(t.style().colour()));
    g.fill(at.createTransformedShape(glyphs.of(FontFace.of(t.style()), words)));
  }

  @Override
  public void raster(Raster r) {
    try {
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(r.picture().jpeg()));
      Bounds b = r.at();
      AffineTransform at = AffineTransform.getTranslateInstance(b.minX(), b.minY());
      at.scale(b.width() / image.getWidth(), b.height() / image.getHeight());
      g.setRenderingHint(
          RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
      g.drawImage(image, at, null);
    } catch (IOException e) {
      throw new UncheckedIOException("a picture of our own making can't be read", e);
    }
  }

  private static Color colour(Colour c) {
    return new Color(c.red(), c.green(), c.blue());
  }
}
