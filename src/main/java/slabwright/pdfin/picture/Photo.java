package slabwright.pdfin.picture;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * A photo as it is kept, and how much smaller than its file it is, for places that are known in the
 * file's pixels.
 *
 * @param scale pixels of the picture for each of the upright photo, at most 1
 */
public record Photo(Picture picture, double scale) {
  /**
   * Reads a PNG or JPEG, upright.
   *
   * @throws java.io.UncheckedIOException when the file cannot be opened
   */
  public static Result<Photo> read(Path file) {
    return Picture.bytes(file).flatMap(Photo::read);
  }

  static Result<Photo> read(byte[] file) {
    try (ByteArrayInputStream in = new ByteArrayInputStream(file)) {
      return new PhotoReader(in, ExifOrientation.of(file)).read();
    } catch (IOException broken) {
      return Result.refused(Message.of("pdfin.picture.unreadable"));
    }
  }
}
