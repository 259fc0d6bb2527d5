package slabwright.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Executor;
import slabwright.desk.model.Beside;
import slabwright.desk.model.Desk;
import slabwright.desk.model.Latest;
import slabwright.desk.model.PlanKeeper;
import slabwright.pdfin.picture.Picture;
import slabwright.pdfin.picture.Placing;
import slabwright.shape.Affine;
import slabwright.shape.Vec;
import slabwright.site.Refusal;
import slabwright.site.SiteEdit;
import slabwright.site.Underlay;
import slabwright.store.AtomicFile;
import slabwright.units.Parsed;

/**
 * Lays a picture or a page of a PDF under the drawing: its pixels alone are copied beside the plan,
 * never over another file.
 */
final class UnderlayActions implements AutoCloseable {
  /** A first guess of what a picture shows across, until it is scaled; mm. */
  private static final double FIRST_WIDTH = 15_000;

  private record Made(Path from, Parsed<Picture> picture) {}

  private final Desk desk;
  private final PlanKeeper keeper;
  private final Runnable laid;
  private final Latest<Path, Made> reader;

  /**
   * Reads pictures off the asking thread.
   *
   * @param laid told when the picture lies there
   */
  UnderlayActions(Desk desk, PlanKeeper keeper, Executor home, Runnable laid) {
    this.desk = desk;
    this.keeper = keeper;
    this.laid = laid;
    reader =
        new Latest<>(
            "picture",
            false,
            home,
            p -> new Made(p, Picture.read(p, 1)),
            this::take,
            e -> desk.refuse(Refusal.of("The picture cannot be opened: " + e.getMessage())));
  }

  void add(Path picture) {
    reader.ask(picture);
  }

  boolean isWorking() {
    return reader.isBusy();
  }

  private void take(Made made) {
    if (made.picture() instanceof Parsed.Bad<Picture> bad) {
      desk.refuse(Refusal.of(bad.why()));
      return;
    }
    Picture picture = made.picture().orThrow();
    try {
      String name = made.from().getFileName().toString();
      int dot = name.lastIndexOf('.');
      Path to = Beside.fresh(keeper.folder(), (dot < 0 ? name : name.substring(0, dot)) + ".png");
      AtomicFile.write(to, picture.png());
      Vec right = new Vec(picture.width(), 0);
      Affine placing =
          Placing.byLength(Vec.ZERO, right, FIRST_WIDTH, Vec.ZERO).orElse(Affine.IDENTITY);
      Underlay u = new Underlay(to.getFileName().toString(), placing);
      if (desk.push(new SiteEdit.SetUnderlay(Optional.of(u))).isDone()) {
        laid.run();
      }
    } catch (IOException | UncheckedIOException e) {
      desk.refuse(Refusal.of("The picture could not be copied beside the plan: " + e.getMessage()));
    }
  }

  @Override
  public void close() {
    reader.close();
  }
}
