package slabwright.desk.model.scene;

import java.util.Optional;
import java.util.concurrent.Executor;
import slabwright.desk.model.Desk;
import slabwright.desk.model.Latest;
import slabwright.desk.model.Selection;
import slabwright.desk.model.Signal;
import slabwright.desk.model.UnexpectedFault;
import slabwright.site.FloorArea;
import slabwright.units.Message;

/** Keeps the picture of the floor area looked at, worked out off the asking thread. */
public final class Pictures implements AutoCloseable {
  private final Desk desk;
  private final Selection focus;
  private final Signal changed = new Signal();
  private final Latest<FloorArea, FloorPicture> worker;
  private Optional<FloorArea> asked = Optional.empty();
  private Optional<FloorPicture> picture = Optional.empty();
  private int opening;

  /**
   * Listens to the desk and the focus.
   *
   * @param home the thread that asks, as an executor
   */
  public Pictures(Desk desk, Selection focus, Executor home) {
    this.desk = desk;
    this.focus = focus;
    this.worker =
        new Latest<>(
            "pictures",
            true,
            home,
            new FloorPictureMaker(),
            this::take,
            e -> desk.refuse(Message.of("desk.model.fault.picture", UnexpectedFault.text(e))));
    desk.changed().subscribe(this::look);
    focus.changed().subscribe(this::look);
  }

  public Signal changed() {
    return changed;
  }

  public Optional<FloorPicture> picture() {
    return picture;
  }

  /** Whether the picture is of the site as shown. */
  public boolean isUpToDate() {
    return !worker.isBusy();
  }

  private void look() {
    Optional<FloorArea> now = focus.area();
    if (opening != desk.opening()
        || !picture.map(p -> p.area().id()).equals(now.map(FloorArea::id))) {
      // The drawing of another plan, or of another floor, is not shown for one frame.
      boolean other = opening != desk.opening() || picture.isPresent();
      opening = desk.opening();
      picture = Optional.empty();
      if (other) {
        worker.cancel();
        asked = Optional.empty();
      }
    }
    if (now.isEmpty()) {
      worker.cancel();
      asked = now;
      picture = Optional.empty();
      changed.fire();
    } else if (!asked.equals(now)) {
      asked = now;
      worker.ask(now.get());
    }
  }

  private void take(FloorPicture p) {
    picture = Optional.of(p);
    changed.fire();
  }

  @Override
  public void close() {
    worker.close();
  }
}
