package slabwright.pdfin.picture;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import slabwright.units.Result;

/**
 * A photo of a place, small enough to be kept by the dozen: upright, pixels alone, so that nothing
 * tells where it was taken.
 *
 * @param taken the day, as the camera noted it
 */
public record PlacePhoto(Picture picture, Optional<LocalDate> taken) {
  /** The longest side kept, in pixels: a third of a page prints at 300 to the inch. */
  public static final int LONGEST_SIDE = 1600;

  /**
   * Reads a PNG or JPEG.
   *
   * @throws java.io.UncheckedIOException when the file cannot be opened
   */
  public static Result<PlacePhoto> read(Path file) {
    return Picture.bytes(file).flatMap(PlacePhoto::read);
  }

  /**
   * Reads a PNG or JPEG as a JPEG on white no longer than so many pixels.
   *
   * @throws java.io.UncheckedIOException when the file cannot be opened
   */
  public static Result<Picture> fitted(Path file, int longestSide) {
    return Picture.bytes(file)
        .flatMap(Picture::read)
        .map(p -> new Picture(PhotoReader.fitted(p.image(), longestSide)));
  }

  static Result<PlacePhoto> read(byte[] file) {
    return Picture.read(file)
        .map(
            p ->
                new PlacePhoto(
                    new Picture(PhotoReader.fitted(p.image(), LONGEST_SIDE)),
                    ExifBlock.of(file).flatMap(ExifBlock::taken)));
  }
}
