package slabwright.pdfin.picture;

import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

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
  private static final long EXIF = 0x457869660000L;

  private final int value;

  ExifOrientation(int value) {
    this.value = value;
  }

  /**
   * What the file notes; as is for anything that is not a JPEG with such a note. Segments stand in
   * any order, several may carry the Exif marker (XMP does), and fill bytes may part them (ITU-T
   * T.81, B.1.1.2).
   */
  public static ExifOrientation of(byte[] file) {
    ByteBuffer in = ByteBuffer.wrap(file);
    if (file.length < 4 || in.getShort() != (short) 0xFFD8) {
      return AS_IS;
    }
    while (in.remaining() >= 4) {
      int marker = Short.toUnsignedInt(in.getShort());
      if (marker == 0xFFFF) {
        in.position(in.position() - 1);
        continue;
      }
      int length = Short.toUnsignedInt(in.getShort()) - 2;
      if (marker < 0xFFC0 || marker == 0xFFDA || length < 0 || length > in.remaining()) {
        return AS_IS;
      }
      if (marker == 0xFFE1 && length > 14 && in.getLong(in.position()) >>> 16 == EXIF) {
        return noted(in.slice(in.position(), length));
      }
      in.position(in.position() + length);
    }
    return AS_IS;
  }

  private static ExifOrientation noted(ByteBuffer exif) {
    ByteBuffer tiff = exif.slice(6, exif.limit() - 6);
    tiff.order(tiff.getShort(0) == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    int at = tiff.getInt(4);
    if (at < 8 || at > tiff.limit() - 2) {
      return AS_IS;
    }
    int entries = Short.toUnsignedInt(tiff.getShort(at));
    for (int k = 0; k < entries && at + 2 + 12 * (k + 1) <= tiff.limit(); k++) {
      int entry = at + 2 + 12 * k;
      if (Short.toUnsignedInt(tiff.getShort(entry)) == ORIENTATION) {
        return valued(Short.toUnsignedInt(tiff.getShort(entry + 8)));
      }
    }
    return AS_IS;
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
