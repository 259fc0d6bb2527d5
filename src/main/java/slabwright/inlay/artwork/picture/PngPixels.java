package slabwright.inlay.artwork.picture;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;

/** Pixels that came from elsewhere than a file, as a file. */
public final class PngPixels {
  private PngPixels() {}

  /**
   * A PNG.
   *
   * @param argb {@code 0xaarrggbb}, row by row from the top left
   * @throws IOException when it can't be written
   */
  public static byte[] write(int width, int height, int[] argb) throws IOException {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    image.setRGB(0, 0, width, height, argb, 0, width);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "png", out);
    return out.toByteArray();
  }
}
