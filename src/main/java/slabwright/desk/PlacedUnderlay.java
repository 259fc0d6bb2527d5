package slabwright.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import slabwright.pdfin.picture.PdfPicture;
import slabwright.pdfin.picture.Picture;
import slabwright.pdfin.picture.PicturePlacement;
import slabwright.pdfin.picture.RectifiedPhoto;
import slabwright.project.SiblingFiles;
import slabwright.project.TaskProgress;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.Underlay;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.words.Words;

/**
 * A picture written beside the plan: its pixels alone, never over another file.
 *
 * @param bounds where it lies on the site
 * @param page which page of which PDF it is, if it is one
 */
record PlacedUnderlay(Underlay underlay, Bounds bounds, Optional<PdfPages.Source> page) {
  /** A first guess of what a picture shows across, until it is scaled; mm. */
  private static final double FIRST_WIDTH = 15_000;

  /** A picture as it was read. */
  private record LoadedPicture(Picture picture, Optional<PdfPages.Source> page) {}

  private static PlacedUnderlay of(Underlay u, Picture p, Optional<PdfPages.Source> page) {
    Vec far = new Vec(p.width(), p.height());
    Bounds b = Bounds.of(List.of(u.placing().apply(Vec.ZERO), u.placing().apply(far)));
    return new PlacedUnderlay(u, b, page);
  }

  /** Lays the picture that is there flat. */
  static Result<PlacedUnderlay> flat(
      Underlay old, UnderlayRectification asked, Path folder, TaskProgress steps, Words words)
      throws IOException {
    Result<RectifiedPhoto> flat =
        Picture.read(folder.resolve(old.file()), 1) instanceof Result.Ok<Picture> photo
            ? asked.floor(photo.value(), old.placing())
            : Result.refused(Message.of("desk.app.underlay.picture-unreadable", old.file()));
    if (flat instanceof Result.Refused<RectifiedPhoto> refused) {
      return Result.refused(refused.refusals());
    }
    steps.report(0.6);
    RectifiedPhoto floor = flat.orThrow();
    byte[] png = floor.picture().png();
    steps.report(0.9);
    String wanted = old.file().replaceFirst("\\.png$", "") + "-flat.png";
    Underlay made =
        new Underlay(
            SiblingFiles.write(folder, wanted, png),
            asked.placing(floor.placing()),
            words.say(floor.caution()));
    return Result.ok(PlacedUnderlay.of(made, floor.picture(), Optional.empty()));
  }

  /** A first laying of a picture, or of the first page of a PDF. */
  static Result<PlacedUnderlay> read(Path from, Path folder, TaskProgress steps)
      throws IOException {
    Result<LoadedPicture> read = Picture.isPdf(from) ? page(from, 1) : picture(from);
    if (read instanceof Result.Refused<LoadedPicture> refused) {
      return Result.refused(refused.refusals());
    }
    steps.report(0.5);
    Picture picture = read.orThrow().picture();
    Vec right = new Vec(picture.width(), 0);
    Affine placing =
        PicturePlacement.byLength(Vec.ZERO, right, FIRST_WIDTH, Vec.ZERO).orElse(Affine.IDENTITY);
    String name = from.getFileName().toString();
    int dot = name.lastIndexOf('.');
    String wanted = (dot < 0 ? name : name.substring(0, dot)) + ".png";
    return Result.ok(written(read.orThrow(), placing, folder, wanted, steps));
  }

  private static Result<LoadedPicture> picture(Path from) {
    return Picture.read(from, 1).map(p -> new LoadedPicture(p, Optional.empty()));
  }

  private static Result<LoadedPicture> page(Path pdf, int page) {
    return PdfPicture.read(pdf, page)
        .map(
            p ->
                new LoadedPicture(
                    p.picture(),
                    Optional.of(new PdfPages.Source(pdf, page, p.pages(), p.mmPerPixel()))));
  }

  private static PlacedUnderlay written(
      LoadedPicture read, Affine placing, Path folder, String wanted, TaskProgress steps)
      throws IOException {
    byte[] png = read.picture().png();
    steps.report(0.9);
    Underlay made = new Underlay(SiblingFiles.write(folder, wanted, png), placing);
    return PlacedUnderlay.of(made, read.picture(), read.page());
  }

  /** Another page where one lies, at the same scale of paper. */
  static Result<PlacedUnderlay> turned(
      Underlay old, PdfPages.Source from, int page, Path folder, TaskProgress steps)
      throws IOException {
    if (!Files.isReadable(from.pdf())) {
      return Result.refused(Message.of("desk.app.underlay.pdf-is-gone", from.pdf().toString()));
    }
    Result<LoadedPicture> read = page(from.pdf(), page);
    if (read instanceof Result.Refused<LoadedPicture> refused) {
      return Result.refused(refused.refusals());
    }
    steps.report(0.5);
    PdfPages.Source now = read.orThrow().page().orElseThrow();
    double k = now.mmPerPixel() / from.mmPerPixel();
    Affine placing = Affine.scale(k, k).then(old.placing());
    return Result.ok(written(read.orThrow(), placing, folder, now.pictureName(), steps));
  }
}
