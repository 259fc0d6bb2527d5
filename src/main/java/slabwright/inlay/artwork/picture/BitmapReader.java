package slabwright.inlay.artwork.picture;

import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Collections;
import java.util.Iterator;
import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.stream.ImageInputStream;
import slabwright.inlay.artwork.ArtworkRefusal.Reason;
import slabwright.inlay.artwork.RefusedArtworkException;
import slabwright.pdfin.picture.ExifOrientation;
import slabwright.units.Message;

/** Pixels of a picture file, upright, within limits. Its parser's words never come out. */
final class BitmapReader {
  /** Pixels beyond which a file is taken for a mistake or a trap. */
  private static final long MOST_PIXELS = 60_000_000;

  /** Bytes that the pixels of a file may take while they are read. */
  private static final long MOST_BYTES = 260_000_000;

  private static final int MOST_SIDE = 30_000;
  private static final int CMYK = 4;

  private final byte[] file;

  BitmapReader(byte[] file) {
    this.file = file;
  }

  BufferedImage read() throws IOException {
    ImageIO.setUseCache(false);
    try (ImageInputStream stream = ImageIO.createImageInputStream(new ByteArrayInputStream(file))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
      if (!readers.hasNext()) {
        throw damaged();
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(stream, true, true);
        return ExifOrientation.of(file).turned(read(reader));
      } finally {
        reader.dispose();
      }
    } catch (IOException
        | IllegalArgumentException
        | IndexOutOfBoundsException
        | ArithmeticException
        | NegativeArraySizeException
        | NullPointerException broken) {
      // a damaged file makes the parsers of the JDK throw any of these
      throw damaged();
    }
  }

  private static RefusedArtworkException damaged() {
    return new RefusedArtworkException(
        Reason.NOT_UNDERSTOOD, Message.of("inlay.bitmap-reader.damaged"));
  }

  private BufferedImage read(ImageReader reader) throws IOException {
    long width = reader.getWidth(0);
    long height = reader.getHeight(0);
    if (width * height > MOST_PIXELS || width > MOST_SIDE || height > MOST_SIDE) {
      throw tooLarge(width, height);
    }
    Iterator<ImageTypeSpecifier> types = types(reader);
    if (!types.hasNext()) {
      return cmyk(reader);
    }
    ColorModel colours = types.next().getColorModel();
    int bits = colours.getPixelSize();
    if (width * height * bits / 8 > MOST_BYTES) {
      throw tooLarge(width, height);
    }
    // the parser knows inks too, but not that some files store them inverted and others don't
    return colours.getNumColorComponents() == CMYK ? cmyk(reader) : reader.read(0);
  }

  private static Iterator<ImageTypeSpecifier> types(ImageReader reader) throws IOException {
    try {
      return reader.getImageTypes(0);
    } catch (IIOException fourChannels) {
      return Collections.emptyIterator();
    }
  }

  private static RefusedArtworkException tooLarge(long width, long height) {
    return new RefusedArtworkException(
        Reason.TOO_LARGE,
        Message.of("inlay.bitmap-reader.too-many-pixels", width, height, MOST_PIXELS / 1_000_000));
  }

  /**
   * A JPEG in printing inks, without its colour profile: near enough to tell which colours there
   * are. The Adobe marker says that inks are stored inverted (255 is none), and whether what they
   * leave to be 255 is stored as brightness and difference (Adobe Technical Note 5116, 1992).
   */
  private BufferedImage cmyk(ImageReader reader) throws IOException {
    if (!reader.canReadRaster()) {
      throw damaged();
    }
    Raster raster = reader.readRaster(0, null);
    if (raster.getNumBands() != CMYK) {
      throw damaged();
    }
    int adobe = adobeTransform();
    int w = raster.getWidth();
    int h = raster.getHeight();
    BufferedImage out = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
    int[] row = new int[w * CMYK];
    for (int y = 0; y < h; y++) {
      raster.getPixels(0, y, w, 1, row);
      for (int x = 0; x < w; x++) {
        out.setRGB(x, y, rgb(row, x * CMYK, adobe));
      }
    }
    return out;
  }

  private static int rgb(int[] row, int at, int adobe) {
    double c = row[at];
    double m = row[at + 1];
    double y = row[at + 2];
    double k = row[at + 3];
    if (adobe == 2) {
      double u = m - 128;
      double v = y - 128;
      m = within(255 - (c - 0.344136 * u - 0.714136 * v));
      y = within(255 - (c + 1.772 * u));
      c = within(255 - (c + 1.402 * v));
    }
    if (adobe < 0) {
      c = 255 - c;
      m = 255 - m;
      y = 255 - y;
      k = 255 - k;
    }
    return PixelColour.packed(c * k / 255, m * k / 255, y * k / 255);
  }

  private static double within(double v) {
    return Math.max(0, Math.min(255, v));
  }

  /** What the Adobe marker says of the colours; -1 without one. */
  private int adobeTransform() {
    int i = 2;
    while (i + 18 < file.length && (file[i] & 255) == 0xff && (file[i + 1] & 255) != 0xda) {
      int length = ((file[i + 2] & 255) << 8) | (file[i + 3] & 255);
      boolean adobe = (file[i + 1] & 255) == 0xee && length >= 14 && file[i + 4] == 'A';
      if (adobe) {
        return file[i + 15] & 255;
      }
      i += 2 + length;
    }
    return -1;
  }
}
