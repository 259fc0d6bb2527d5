package slabwright.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import slabwright.desk.model.Beside;
import slabwright.desk.model.DeskParts;
import slabwright.desk.model.Errands;
import slabwright.desk.model.PlanKeeper;
import slabwright.pdfin.picture.Picture;
import slabwright.pdfin.picture.Placing;
import slabwright.shape.Affine;
import slabwright.shape.Vec;
import slabwright.site.SiteEdit;
import slabwright.site.Underlay;
import slabwright.store.AtomicFile;
import slabwright.units.Parsed;

/**
 * Lays a picture or a page of a PDF under the drawing: its pixels alone are copied beside the plan,
 * never over another file.
 */
final class UnderlayActions {
  /** A first guess of what a picture shows across, until it is scaled; mm. */
  private static final double FIRST_WIDTH = 15_000;

  private final DeskParts parts;
  private final Runnable laid;

  /**
   * Lays pictures off the asking thread.
   *
   * @param laid told when the picture lies there
   */
  UnderlayActions(DeskParts parts, Runnable laid) {
    this.parts = parts;
    this.laid = laid;
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
                this::lay));
  }

  private static Parsed<Underlay> read(Path from, Path folder, Errands.Steps steps)
      throws IOException {
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
    return Parsed.ok(new Underlay(to.getFileName().toString(), placing));
  }

  private void lay(Underlay underlay) {
    if (parts.bench().desk().push(new SiteEdit.SetUnderlay(Optional.of(underlay))).isDone()) {
      laid.run();
    }
  }
}
