package slabwright.desk.model.scene;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import slabwright.desk.model.Computed;
import slabwright.desk.model.Desk;
import slabwright.desk.model.Selection;
import slabwright.desk.model.Signal;
import slabwright.desk.model.UnexpectedFault;
import slabwright.desk.model.Wish;
import slabwright.site.FloorArea;
import slabwright.units.Message;

/** The picture of the floor area looked at. */
public final class Pictures implements AutoCloseable {
  private final Computed<FloorArea, FloorPicture> picture;
  private final PaleFloors others = new PaleFloors();
  private final Desk desk;
  private final Selection focus;

  /**
   * Follows the desk and the focus; the drawing of another plan, or of another floor, is not shown
   * for one frame.
   *
   * @param home the thread that asks, as an executor
   */
  public Pictures(Desk desk, Selection focus, Executor home) {
    this.desk = desk;
    this.focus = focus;
    picture =
        new Computed<>(
                Computed.Pace.patient("pictures"),
                home,
                new FloorPictureMaker(),
                UnexpectedFault.told(desk, why -> Message.of("desk.model.fault.picture", why)))
            .follow(
                () ->
                    Wish.of(focus.area())
                        .in(List.of(desk.opening(), focus.area().map(FloorArea::id))),
                desk.changed(),
                focus.changed());
  }

  public Signal changed() {
    return picture.changed();
  }

  public Optional<FloorPicture> picture() {
    return picture.value();
  }

  /** The other floor areas, as they lie beside it. */
  public List<PaleFloor> others() {
    return others.of(desk.shown(), focus.area().map(FloorArea::id).orElse(""));
  }

  /** Whether the picture is of the site as shown. */
  public boolean isUpToDate() {
    return !picture.isBusy();
  }

  @Override
  public void close() {
    picture.close();
  }
}
