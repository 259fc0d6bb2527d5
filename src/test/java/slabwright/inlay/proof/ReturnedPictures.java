package slabwright.inlay.proof;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** A drawing that comes back as pixels: from a screen, as a JPEG, scanned into a PDF. */
final class ReturnedPictures {
  private static final int ACROSS = 1800;
  private static final double RIM = 60;

  private ReturnedPictures() {}

  static byte[] png(Region openings, Bounds blank) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(painted(openings, blank), "png", out);
    return out.toByteArray();
  }

  static byte[] jpeg(Region openings, Bounds blank) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(out)) {
      ImageWriteParam how = writer.getDefaultWriteParam();
      how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      how.setCompressionQuality(0.75f);
      writer.setOutput(stream);
      writer.write(null, new IIOImage(painted(openings, blank), null, null), how);
    } finally {
      writer.dispose();
    }
    return out.toByteArray();
  }

  /** On a sheet of A4, landscape. */
  static byte[] scanned(Region openings, Bounds blank) throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(new PDRectangle(842, 595));
      document.addPage(page);
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(jpeg(openings, blank)));
      float high = 700f * image.getHeight() / image.getWidth();
      float fit = Math.min(1, 560 / high);
      try (PDPageContentStream c = new PDPageContentStream(document, page)) {
        c.drawImage(JPEGFactory.createFromImage(document, image), 20, 15, 700 * fit, high * fit);
      }
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return out.toByteArray();
    }
  }

  private static BufferedImage painted(Region openings, Bounds blank) {
    double k = (ACROSS - 2 * RIM) / blank.width();
    int high = (int) Math.ceil(k * blank.height() + 2 * RIM);
    BufferedImage image = new BufferedImage(ACROSS, high, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, ACROSS, high);
    g.translate(RIM - k * blank.minX(), RIM - k * blank.minY());
    g.scale(k, k);
    Path2D.Double path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    for (Ring ring : openings.rings()) {
      Vec first = ring.points().get(0);
      path.moveTo(first.x(), first.y());
      ring.points().forEach(p -> path.lineTo(p.x(), p.y()));
      path.closePath();
    }
    g.setColor(new Color(0x5a6a75));
    g.fill(path);
    g.setColor(Color.BLACK);
    g.setStroke(new BasicStroke((float) (2 / k)));
    g.draw(new Rectangle2D.Double(blank.minX(), blank.minY(), blank.width(), blank.height()));
    g.dispose();
    return image;
  }
}
