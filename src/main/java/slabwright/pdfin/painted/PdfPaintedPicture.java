package slabwright.pdfin.painted;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/**
 * Pixels that a page shows.
 *
 * @param image not to be painted on
 */
public record PdfPaintedPicture(BufferedImage image) {
  /** The pixels as a PNG file. */
  public byte[] png() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "png", out);
    } catch (IOException cannotHappenInMemory) {
      throw new UncheckedIOException(cannotHappenInMemory);
    }
    return out.toByteArray();
  }
}
