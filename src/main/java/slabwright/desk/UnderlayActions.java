package slabwright.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import slabwright.desk.model.Beside;
import slabwright.desk.model.DeskParts;
import slabwright.desk.model.Errands;
import slabwright.desk.model.PlanKeeper;
import slabwright.desk.tool.FlatTool;
import slabwright.pdfin.picture.FlatFloor;
import slabwright.pdfin.picture.Picture;
import slabwright.pdfin.picture.Placing;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.SiteEdit;
import slabwright.site.Underlay;
import slabwright.store.AtomicFile;
import slabwright.units.Length;
import slabwright.units.Parsed;

/**
 * Lays a picture or a page of a PDF under the drawing: its pixels alone are copied beside the plan,
 * never over another file.
 */
final class UnderlayActions implements FlatTool.Flattening {
  /** A first guess of what a picture shows across, until it is scaled; mm. */
  private static final double FIRST_WIDTH = 15_000;

  /** A picture on disk, and where it lies on the site. */
  private record Laid(Underlay underlay, Bounds bounds) {
    static Laid of(Underlay u, Picture p) {
      Vec far = new Vec(p.width(), p.height());
      return new Laid(u, Bounds.of(List.of(u.placing().apply(Vec.ZERO), u.placing().apply(far))));
    }
  }

  private final DeskParts parts;
  private final Consumer<Bounds> laid;
  private final Consumer<Bounds> flattened;

  /**
   * Lays pictures off the asking thread.
   *
   * @param laid told where the picture lies
   * @param flattened told where it lies flat
   */
  UnderlayActions(DeskParts parts, Consumer<Bounds> laid, Consumer<Bounds> flattened) {
    this.parts = parts;
    this.laid = laid;
    this.flattened = flattened;
  }

  void add(Path picture) {
    PlanKeeper keeper = parts.keeper();
    parts
        .errands()
        .run(
            new Errands.Errand<>(
                "Laying the picture",
                "The picture could not be copied beside the plan",
                steps -> read(picture, keeper.folder(), steps),
                made -> lay(made, laid)));
  }

  /** Lays the picture that is there flat; the old one stays on disk, for undo. */
  @Override
  public void by(List<Vec> corners, Length first, Length second) {
    Optional<Underlay> now = parts.bench().desk().site().underlay();
    if (now.isEmpty()) {
      return;
    }
    parts
        .errands()
        .run(
            new Errands.Errand<>(
                "Laying the photo flat",
                "The flat picture could not be written beside the plan",
                steps ->
                    flat(
                        now.get(),
                        LaidFlat.of(corners, first, second),
                        parts.keeper().folder(),
                        steps),
                made -> lay(made, flattened)));
  }

  private static Parsed<Laid> flat(Underlay old, LaidFlat asked, Path folder, Errands.Steps steps)
      throws IOException {
    Parsed<FlatFloor> flat =
        Picture.read(folder.resolve(old.file()), 1) instanceof Parsed.Ok<Picture> photo
            ? asked.floor(photo.value(), old.placing())
            : Parsed.bad("The picture " + old.file() + " cannot be read; lay it again.");
    if (flat instanceof Parsed.Bad<FlatFloor> bad) {
      return Parsed.bad(bad.why());
    }
    steps.at(0.6);
    FlatFloor floor = flat.orThrow();
    byte[] png = floor.picture().png();
    steps.at(0.9);
    Path to = Beside.fresh(folder, old.file().replaceFirst("\\.png$", "") + "-flat.png");
    AtomicFile.write(to, png);
    Underlay made =
        new Underlay(to.getFileName().toString(), asked.placing(floor.placing()), floor.caution());
    return Parsed.ok(Laid.of(made, floor.picture()));
  }

  private static Parsed<Laid> read(Path from, Path folder, Errands.Steps steps) throws IOException {
    Parsed<Picture> read = Picture.read(from, 1);
    if (read instanceof Parsed.Bad<Picture> bad) {
      return Parsed.bad(bad.why());
    }
    steps.at(0.5);
    Picture picture = read.orThrow();
    byte[] png = picture.png();
    steps.at(0.9);
    String name = from.getFileName().toString();
    int dot = name.lastIndexOf('.');
    Path to = Beside.fresh(folder, (dot < 0 ? name : name.substring(0, dot)) + ".png");
    AtomicFile.write(to, png);
    Vec right = new Vec(picture.width(), 0);
    Affine placing =
        Placing.byLength(Vec.ZERO, right, FIRST_WIDTH, Vec.ZERO).orElse(Affine.IDENTITY);
    return Parsed.ok(Laid.of(new Underlay(to.getFileName().toString(), placing), picture));
  }

  private void lay(Laid made, Consumer<Bounds> then) {
    SiteEdit put = new SiteEdit.SetUnderlay(Optional.of(made.underlay()));
    if (parts.bench().desk().push(put).isDone()) {
      then.accept(made.bounds());
    }
  }
}
