package slabwright.project;

import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Base64;
import slabwright.pdfin.picture.PlacePhoto;
import slabwright.site.job.FirmMark;
import slabwright.units.Message;
import slabwright.units.Result;

/** Reads a firm's mark from a picture, once; from then on it is in the plan. */
public final class FirmMarks {
  private FirmMarks() {}

  /** A PNG or JPEG as a mark: on white, no larger than it prints. */
  public static Result<FirmMark> read(Path picture) {
    try {
      return PlacePhoto.fitted(picture, FirmMark.LONGEST_SIDE)
          .map(
              p ->
                  new FirmMark(
                      Base64.getEncoder().encodeToString(p.jpeg()), p.width(), p.height()));
    } catch (UncheckedIOException gone) {
      return Result.refused(
          Message.of("project.firm-marks.not-there", String.valueOf(picture.getFileName())));
    }
  }
}
