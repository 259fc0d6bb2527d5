package slabwright.sheets.packet;

import java.util.Optional;
import slabwright.drawing.EncodedPicture;
import slabwright.site.job.PinnedPhoto;

/**
 * A photo of a place with what it shows.
 *
 * @param pixels empty where the file is gone or can't be read
 */
public record PrintedPhoto(PinnedPhoto pinned, Optional<Pixels> pixels) {
  /**
   * The picture, upright.
   *
   * @param aspect its width over its height
   */
  public record Pixels(EncodedPicture picture, double aspect) {}
}
