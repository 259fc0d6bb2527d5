package slabwright.pdfin.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javax.imageio.ImageIO;
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * A picture as it is kept with a plan: upright, no larger than need be, and pixels alone. Pixels
 * run x right and y down from the top-left corner of the first one.
 *
 * @param image the pixels; not to be painted on
 */
public record Picture(BufferedImage image) {
  /** The longest side kept, in pixels: a hall of 40 m then shows 1 cm a pixel. */
  public static final int LONGEST_SIDE = 4000;

  /** The longest file looked at, in bytes. */
  public static final long LONGEST_FILE = 200_000_000;

  /**
   * Reads a PNG or JPEG. Where and when a photo was taken and with what is not kept; it is turned
   * upright first, as the camera noted.
   */
  public static Result<Picture> read(byte[] file) {
    return Photo.read(file).map(Photo::picture);
  }

  /**
   * Reads a picture or one page of a PDF, by the file's name.
   *
   * @param page of a PDF, from 1; not looked at otherwise
   * @throws UncheckedIOException when the file cannot be opened
   */
  public static Result<Picture> read(Path file, int page) {
    return isPdf(file)
        ? PdfPicture.read(file, page).map(PdfPicture::picture)
        : bytes(file).flatMap(Picture::read);
  }

  /** Whether the file has pages, by its name. */
  public static boolean isPdf(Path file) {
    return file.toString().toLowerCase(Locale.ROOT).endsWith(".pdf");
  }

  /** All of a file that is not too large. */
  static Result<byte[]> bytes(Path file) {
    try {
      return Files.size(file) > LONGEST_FILE
          ? Result.refused(
              Message.of("pdfin.picture.file-too-large", file.getFileName().toString()))
          : Result.ok(Files.readAllBytes(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public int width() {
    return image.getWidth();
  }

  public int height() {
    return image.getHeight();
  }

  /** The picture as a JPEG file on white, with nothing in it but pixels; for photos. */
  public byte[] jpeg() {
    BufferedImage opaque = new BufferedImage(width(), height(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = opaque.createGraphics();
    g.drawImage(image, 0, 0, Color.WHITE, null);
    g.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      ImageIO.write(opaque, "jpeg", out);
    } catch (IOException cannotHappenInMemory) {
      throw new UncheckedIOException(cannotHappenInMemory);
    }
    return out.toByteArray();
  }

  /** The picture as a PNG file, with nothing in it but pixels. */
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
