package slabwright.desk.model;

import java.util.Optional;
import java.util.concurrent.Executor;
import slabwright.site.FloorArea;

/** Keeps the picture of the floor area looked at, worked out off the asking thread. */
public final class Pictures implements AutoCloseable {
  private final Focus focus;
  private final Signal changed = new Signal();
  private final Latest<FloorArea, FloorPicture> worker;
  private Optional<FloorArea> asked = Optional.empty();
  private Optional<FloorPicture> picture = Optional.empty();

  /**
   * Listens to the desk and the focus.
   *
   * @param home the thread that asks, as an executor
   */
  public Pictures(Desk desk, Focus focus, Executor home) {
    this.focus = focus;
    this.worker =
        new Latest<>(
            "pictures",
            true,
            home,
            new FloorPictureMaker(),
            this::take,
            e -> desk.refuse(Faults.unexpected("draw the floor", e)));
    desk.changed().hear(this::look);
    focus.changed().hear(this::look);
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
    if (now.isEmpty()) {
      worker.cancel();
      asked = now;
      picture = Optional.empty();
      changed.give();
    } else if (!asked.equals(now)) {
      asked = now;
      worker.ask(now.get());
    }
  }

  private void take(FloorPicture p) {
    picture = Optional.of(p);
    changed.give();
  }

  @Override
  public void close() {
    worker.close();
  }
}
