package slabwright.pdfin.picture;

import java.awt.image.BufferedImage;
import java.util.OptionalInt;

/**
 * How a camera was held, as it notes in a JPEG (Exif tag 0x0112, values 1 to 8): how pixels must be
 * turned and mirrored to stand upright.
 */
public enum ExifOrientation {
  AS_IS(1),
  MIRRORED(2),
  HALF_TURN(3),
  MIRRORED_HALF_TURN(4),
  TRANSPOSED(5),
  QUARTER_RIGHT(6),
  TRANSVERSED(7),
  QUARTER_LEFT(8);

  private static final int ORIENTATION = 0x0112;

  private final int value;

  ExifOrientation(int value) {
    this.value = value;
  }

  /** What the file notes; as is for anything that is not a JPEG with such a note. */
  public static ExifOrientation of(byte[] file) {
    return ExifBlock.of(file)
        .map(b -> b.number(ORIENTATION))
        .filter(OptionalInt::isPresent)
        .map(v -> valued(v.getAsInt()))
        .orElse(AS_IS);
  }

  private static ExifOrientation valued(int value) {
    return value >= 1 && value <= 8 ? values()[value - 1] : AS_IS;
  }

  public BufferedImage turned(BufferedImage image) {
    if (this == AS_IS) {
      return image;
    }
    int w = image.getWidth();
    int h = image.getHeight();
    boolean lying = value >= 5;
    boolean clear = image.getColorModel().hasAlpha();
    BufferedImage out =
        new BufferedImage(
            lying ? h : w,
            lying ? w : h,
            clear ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < out.getHeight(); y++) {
      for (int x = 0; x < out.getWidth(); x++) {
        out.setRGB(x, y, source(image, x, y, w - 1, h - 1));
      }
    }
    return out;
  }

  /** The pixel of the stored image that comes to stand at x, y. */
  private int source(BufferedImage image, int x, int y, int right, int bottom) {
    return switch (this) {
      case AS_IS -> image.getRGB(x, y);
      case MIRRORED -> image.getRGB(right - x, y);
      case HALF_TURN -> image.getRGB(right - x, bottom - y);
      case MIRRORED_HALF_TURN -> image.getRGB(x, bottom - y);
      case TRANSPOSED -> image.getRGB(y, x);
      case QUARTER_RIGHT -> image.getRGB(y, bottom - x);
      case TRANSVERSED -> image.getRGB(right - y, bottom - x);
      case QUARTER_LEFT -> image.getRGB(right - y, x);
    };
  }
}
