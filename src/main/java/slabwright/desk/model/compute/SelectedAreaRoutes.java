package slabwright.desk.model.compute;

import java.util.Optional;
import java.util.concurrent.Executor;
import slabwright.desk.model.Computed;
import slabwright.desk.model.Desk;
import slabwright.desk.model.Selection;
import slabwright.desk.model.Signal;
import slabwright.desk.model.Stage;
import slabwright.desk.model.UnexpectedFault;
import slabwright.desk.model.Wish;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.reach.ReachAnalysis;
import slabwright.units.Message;

/** The machines' ways over the floor looked at, once the plan rests at the Prep stage. */
public final class SelectedAreaRoutes implements AutoCloseable {
  /** The plan rests when nothing changed for so long, ms. */
  private static final long REST = 250;

  private final SelectedAreaResults answers;
  private final Computed<FloorTakeoff, ReachAnalysis> ways;

  /** Follows the desk, the answers and the focus. */
  public SelectedAreaRoutes(
      Desk desk, Selection focus, SelectedAreaResults answers, Executor home) {
    this.answers = answers;
    ways =
        new Computed<>(
                Computed.Pace.rested("ways", REST),
                home,
                SelectedAreaRoutes::work,
                UnexpectedFault.told(desk, why -> Message.of("desk.model.fault.routes", why)))
            .follow(
                () -> {
                  if (desk.isPreviewing()) {
                    return Wish.pause();
                  }
                  boolean looked = focus.stage() == Stage.PREP;
                  return looked || answers.takeoff().isEmpty()
                      ? Wish.of(answers.takeoff())
                      : Wish.asItIs();
                },
                desk.changed(),
                answers.changed(),
                focus.changed());
  }

  public Signal changed() {
    return ways.changed();
  }

  /** The ways of the floor as it is taken off now; empty while they are worked out. */
  public Optional<ReachAnalysis> ways() {
    return answers.takeoff().flatMap(ways::valueOf);
  }

  public boolean isWorking() {
    return ways.isBusy();
  }

  public void cancel() {
    ways.cancel();
  }

  private static ReachAnalysis work(FloorTakeoff t) {
    ReachAnalysis ways = ReachAnalysis.of(t, Thread.currentThread()::isInterrupted);
    ways.passages();
    ways.pockets();
    ways.curves();
    return ways;
  }

  @Override
  public void close() {
    ways.close();
  }
}
