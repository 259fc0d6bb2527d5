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
import slabwright.floor.TrenchWork;
import slabwright.inlay.ComputedInlay;
import slabwright.units.Message;

/**
 * What is said of the floor area looked at, once its plan rests: what a floor person would point
 * at, and the work on its trenches.
 */
public final class SelectedAreaWarnings implements AutoCloseable {
  /** The plan rests when nothing changed for so long, ms. */
  private static final long REST = 100;

  private record Question(FloorTakeoff takeoff, List<ComputedInlay> inlays) {}

  private record Answer(List<FloorNote> notes, List<TrenchWork> trenches) {
    static Answer of(Question q) {
      return new Answer(FloorWarnings.of(q.takeoff(), q.inlays()), TrenchWork.of(q.takeoff()));
    }
  }

  private final Computed<Question, Answer> said;

  /** Follows the desk, the answers and the focus. */
  public SelectedAreaWarnings(
      Desk desk, Selection focus, SelectedAreaResults answers, Executor home) {
    said =
        new Computed<>(
                Computed.Pace.rested("warnings", REST),
                home,
                Answer::of,
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
    return said.changed();
  }

  /** The last warnings; they may be of the floor a moment ago. */
  public List<FloorNote> notes() {
    return said.value().map(Answer::notes).orElse(List.of());
  }

  /** Every trench and the work on it; they may be of the floor a moment ago. */
  public List<TrenchWork> trenches() {
    return said.value().map(Answer::trenches).orElse(List.of());
  }

  public boolean isWorking() {
    return said.isBusy();
  }

  @Override
  public void close() {
    said.close();
  }
}
