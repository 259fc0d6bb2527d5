package slabwright.pdfin.picture;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.util.Iterator;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import slabwright.units.Message;
import slabwright.units.Result;

/** Reads a photo's pixels, thinning while it reads so that a huge one needs no huge memory. */
final class PhotoReader {
  /** Pixels beyond which a file is taken for a mistake or a trap. */
  private static final long MOST_PIXELS = 400_000_000;

  private final InputStream in;
  private final ExifOrientation upright;

  PhotoReader(InputStream in, ExifOrientation upright) {
    this.in = in;
    this.upright = upright;
  }

  Result<Photo> read() throws IOException {
    ImageIO.setUseCache(false);
    try (ImageInputStream stream = ImageIO.createImageInputStream(in)) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
      if (!readers.hasNext()) {
        return Result.refused(Message.of("pdfin.photo.not-a-picture"));
      }
      ImageReader reader = readers.next();
      try {
        return read(reader, stream);
      } finally {
        reader.dispose();
      }
    }
  }

  private Result<Photo> read(ImageReader reader, ImageInputStream stream) throws IOException {
    String format = reader.getFormatName().toLowerCase(Locale.ROOT);
    if (!format.equals("png") && !format.equals("jpeg")) {
      return Result.refused(Message.of("pdfin.photo.not-this-format", format));
    }
    reader.setInput(stream, true, true);
    long width = reader.getWidth(0);
    long height = reader.getHeight(0);
    if (width * height > MOST_PIXELS) {
      return Result.refused(Message.of("pdfin.photo.too-many-pixels", width, height));
    }
    ImageReadParam thin = reader.getDefaultReadParam();
    int step = Math.max(1, (int) (Math.max(width, height) / (2L * Picture.LONGEST_SIDE)));
    thin.setSourceSubsampling(step, step, 0, 0);
    BufferedImage kept = fitted(reader.read(0, thin), Picture.LONGEST_SIDE);
    double scale = Math.max(kept.getWidth(), kept.getHeight()) / (double) Math.max(width, height);
    return Result.ok(new Photo(new Picture(upright.turned(kept)), scale));
  }

  /** The picture with no side longer than that, redrawn so that nothing but pixels is left. */
  static BufferedImage fitted(BufferedImage image, int longestSide) {
    double longest = Math.max(image.getWidth(), image.getHeight());
    double k = Math.min(1, longestSide / longest);
    int width = Math.max(1, (int) Math.round(image.getWidth() * k));
    int height = Math.max(1, (int) Math.round(image.getHeight() * k));
    boolean clear = image.getColorModel().hasAlpha();
    BufferedImage out =
        new BufferedImage(
            width, height, clear ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB);
    Graphics2D g = out.createGraphics();
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    g.drawImage(image, 0, 0, width, height, null);
    g.dispose();
    return out;
  }
}
