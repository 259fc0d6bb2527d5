package slabwright.site.job;

import java.util.Base64;
import java.util.Optional;

/**
 * A firm's mark as it stands on every paper. It is kept in the plan itself, small, so that the
 * papers are the same wherever the plan goes.
 *
 * @param jpeg the picture's file (ISO/IEC 10918-1) in base64 (RFC 4648)
 * @param width pixels
 * @param height pixels
 */
public record FirmMark(String jpeg, int width, int height) {
  /** The longest side in pixels: 40 mm at 300 to the inch. */
  public static final int LONGEST_SIDE = 480;

  private static final int MOST_CHARACTERS = 400_000;

  /**
   * A mark from what a file says; empty when it is no JPEG in base64, is too large to be one, or
   * has sides that no mark has.
   */
  public static Optional<FirmMark> of(String jpeg, int width, int height) {
    boolean sides = Math.min(width, height) >= 1 && Math.max(width, height) <= LONGEST_SIDE;
    return sides && jpeg.length() <= MOST_CHARACTERS && isJpeg(jpeg)
        ? Optional.of(new FirmMark(jpeg, width, height))
        : Optional.empty();
  }

  private static boolean isJpeg(String base64) {
    try {
      byte[] file = Base64.getDecoder().decode(base64);
      return file.length > 3
          && file[0] == (byte) 0xFF
          && file[1] == (byte) 0xD8
          && file[file.length - 2] == (byte) 0xFF
          && file[file.length - 1] == (byte) 0xD9;
    } catch (IllegalArgumentException noBase64) {
      return false;
    }
  }

  /** The picture's file. */
  public byte[] file() {
    return Base64.getDecoder().decode(jpeg);
  }

  /** Its width over its height. */
  public double aspect() {
    return width / (double) height;
  }
}
