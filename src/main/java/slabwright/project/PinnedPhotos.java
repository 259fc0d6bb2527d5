package slabwright.project;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slabwright.drawing.EncodedPicture;
import slabwright.pdfin.picture.PlacePhoto;
import slabwright.sheets.packet.PrintedPhoto;
import slabwright.site.job.PinnedPhoto;
import slabwright.site.rules.InlaySpecRules;
import slabwright.units.Result;

/** Photos of places as files beside a plan. */
public final class PinnedPhotos {
  private PinnedPhotos() {}

  /**
   * A photo that lies beside the plan.
   *
   * @param file its name there
   */
  public record Kept(String file, Optional<LocalDate> taken) {}

  /**
   * Writes a small upright copy of a photo beside a plan, with nothing in it but pixels; no file
   * there is written over.
   *
   * @throws IOException when it can't be written
   */
  public static Result<Kept> keep(Path photo, Path folder) throws IOException {
    Result<PlacePhoto> read = PlacePhoto.read(photo);
    if (read instanceof Result.Refused<PlacePhoto> refused) {
      return Result.refused(refused.refusals());
    }
    PlacePhoto small = read.orThrow();
    String name = photo.getFileName().toString();
    int dot = name.lastIndexOf('.');
    String wanted = (dot < 0 ? name : name.substring(0, dot)) + ".jpg";
    return Result.ok(
        new Kept(SiblingFiles.write(folder, wanted, small.picture().jpeg()), small.taken()));
  }

  /** The photos of a site, to be printed; of one that can't be read its place stays empty. */
  public static List<PrintedPhoto> of(SiteResult result) {
    return result.site().job().photos().stream().map(p -> read(p, result.folder())).toList();
  }

  private static PrintedPhoto read(PinnedPhoto pinned, Path folder) {
    Path file = folder.resolve(pinned.file());
    if (!InlaySpecRules.staysInside(pinned.file()) || !Files.isReadable(file)) {
      return new PrintedPhoto(pinned, Optional.empty());
    }
    try {
      return new PrintedPhoto(
          pinned,
          PlacePhoto.read(file) instanceof Result.Ok<PlacePhoto> ok
              ? Optional.of(
                  new PrintedPhoto.Pixels(
                      EncodedPicture.ofJpeg(ok.value().picture().jpeg()),
                      ok.value().picture().width() / (double) ok.value().picture().height()))
              : Optional.empty());
    } catch (UncheckedIOException gone) {
      return new PrintedPhoto(pinned, Optional.empty());
    }
  }
}
