package slabwright.pdfin.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;

/** Pictures made for tests. */
final class SamplePictures {
  private SamplePictures() {}

  /** Grey, with a red block in the top-left corner. */
  static BufferedImage marked(int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.LIGHT_GRAY);
    g.fillRect(0, 0, width, height);
    g.setColor(Color.RED);
    g.fillRect(0, 0, width / 4, height / 4);
    g.dispose();
    return image;
  }

  static byte[] file(BufferedImage image, String format) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, format, out);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    return out.toByteArray();
  }

  static boolean red(BufferedImage image, int x, int y) {
    Color c = new Color(image.getRGB(x, y));
    return c.getRed() > 200 && c.getGreen() < 90;
  }

  /** A JPEG with a block of this marker spliced in before all others. */
  static byte[] behind(byte[] jpeg, int marker, String content) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(jpeg, 0, 2);
    out.write(0xFF);
    out.write(marker);
    out.write((content.length() + 2) >> 8);
    out.write((content.length() + 2) & 255);
    out.writeBytes(content.getBytes(StandardCharsets.US_ASCII));
    out.write(jpeg, 2, jpeg.length - 2);
    return out.toByteArray();
  }

  /** A JPEG with the note of how the camera was held, and a maker's name, spliced in. */
  static byte[] noted(byte[] jpeg, int orientation, boolean littleEndian) {
    byte[] exif = exif(orientation, littleEndian);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(jpeg, 0, 2);
    out.write(0xFF);
    out.write(0xE1);
    out.write((exif.length + 2) >> 8);
    out.write((exif.length + 2) & 255);
    out.write(exif, 0, exif.length);
    out.write(jpeg, 2, jpeg.length - 2);
    return out.toByteArray();
  }

  private static byte[] exif(int orientation, boolean little) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(new byte[] {'E', 'x', 'i', 'f', 0, 0});
    out.writeBytes(little ? new byte[] {'I', 'I'} : new byte[] {'M', 'M'});
    number(out, 42, 2, little);
    number(out, 8, 4, little);
    number(out, 2, 2, little);
    number(out, 0x010F, 2, little);
    number(out, 2, 2, little);
    number(out, 4, 4, little);
    out.writeBytes(new byte[] {'S', 'P', 'Y', 0});
    number(out, 0x0112, 2, little);
    number(out, 3, 2, little);
    number(out, 1, 4, little);
    number(out, orientation, 2, little);
    number(out, 0, 2, little);
    number(out, 0, 4, little);
    return out.toByteArray();
  }

  private static void number(ByteArrayOutputStream out, int v, int bytes, boolean little) {
    for (int k = 0; k < bytes; k++) {
      out.write(v >> (8 * (little ? k : bytes - 1 - k)));
    }
  }
}
