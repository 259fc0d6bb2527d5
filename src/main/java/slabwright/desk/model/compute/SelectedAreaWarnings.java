package slabwright.desk.model.compute;

import java.util.List;
import java.util.concurrent.Executor;
import slabwright.desk.model.Computed;
import slabwright.desk.model.Desk;
import slabwright.desk.model.Selection;
import slabwright.desk.model.Signal;
import slabwright.desk.model.UnexpectedFault;
import slabwright.desk.model.Wish;
import slabwright.floor.FloorNote;
import slabwright.floor.FloorTakeoff;
import slabwright.inlay.ComputedInlay;
import slabwright.units.Message;

/** What a floor person would point at on the floor area looked at, once its plan rests. */
public final class SelectedAreaWarnings implements AutoCloseable {
  /** The plan rests when nothing changed for so long, ms. */
  private static final long REST = 100;

  private record Question(FloorTakeoff takeoff, List<ComputedInlay> inlays) {}

  private final Computed<Question, List<FloorNote>> notes;

  /** Follows the desk, the answers and the focus. */
  public SelectedAreaWarnings(
      Desk desk, Selection focus, SelectedAreaResults answers, Executor home) {
    notes =
        new Computed<Question, List<FloorNote>>(
                Computed.Pace.rested("warnings", REST),
                home,
                q -> FloorWarnings.of(q.takeoff(), q.inlays()),
                UnexpectedFault.told(desk, why -> Message.of("desk.model.fault.warnings", why)))
            .follow(
                () ->
                    desk.isPreviewing()
                        ? Wish.pause()
                        : Wish.of(answers.takeoff().map(t -> new Question(t, answers.inlays()))),
                desk.changed(),
                answers.changed(),
                focus.changed());
  }

  public Signal changed() {
    return notes.changed();
  }

  /** The last warnings; they may be of the floor a moment ago. */
  public List<FloorNote> notes() {
    return notes.value().orElse(List.of());
  }

  public boolean isWorking() {
    return notes.isBusy();
  }

  @Override
  public void close() {
    notes.close();
  }
}
