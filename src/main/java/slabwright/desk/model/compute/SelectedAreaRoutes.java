package slabwright.desk.model.compute;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import slabwright.desk.model.Desk;
import slabwright.desk.model.Latest;
import slabwright.desk.model.Selection;
import slabwright.desk.model.Signal;
import slabwright.desk.model.Stage;
import slabwright.desk.model.UnexpectedFault;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.reach.ReachAnalysis;
import slabwright.units.Message;

/**
 * The machines' ways over the floor looked at, worked out once the plan rests at the Prep stage;
 * what a newer plan replaces is given up.
 */
public final class SelectedAreaRoutes implements AutoCloseable {
  /** The plan rests when nothing changed for so long, ms. */
  private static final long REST = 250;

  private final Desk desk;
  private final Selection focus;
  private final SelectedAreaResults answers;
  private final Signal changed = new Signal();
  private final Latest<FloorTakeoff, ReachAnalysis> worker;
  private Optional<FloorTakeoff> asked = Optional.empty();
  private Optional<ReachAnalysis> ways = Optional.empty();

  /** Listens to the answers and the focus. */
  public SelectedAreaRoutes(
      Desk desk, Selection focus, SelectedAreaResults answers, Executor home) {
    this.desk = desk;
    this.focus = focus;
    this.answers = answers;
    worker =
        new Latest<>(
            "ways",
            false,
            home,
            SelectedAreaRoutes::work,
            this::take,
            e -> desk.refuse(Message.of("desk.model.fault.routes", UnexpectedFault.text(e))));
    desk.changed().subscribe(this::look);
    answers.changed().subscribe(this::look);
    focus.changed().subscribe(this::look);
  }

  public Signal changed() {
    return changed;
  }

  /** The ways of the floor as it is taken off now; empty while they are worked out. */
  public Optional<ReachAnalysis> ways() {
    return ways.filter(w -> answers.takeoff().filter(w.takeoff()::equals).isPresent());
  }

  public boolean isWorking() {
    return worker.isBusy();
  }

  public void cancel() {
    worker.cancel();
    changed.fire();
  }

  private void look() {
    Optional<FloorTakeoff> now = answers.takeoff();
    if (desk.isPreviewing()) {
      asked = Optional.empty();
      worker.cancel();
      return;
    }
    if (now.isEmpty()) {
      ways = Optional.empty();
      asked = Optional.empty();
      worker.cancel();
    }
    if (focus.stage() != Stage.PREP || now.isEmpty()) {
      return;
    }
    if (!now.equals(asked)) {
      asked = now;
      worker.ask(now.get());
    }
  }

  private void take(ReachAnalysis w) {
    ways = Optional.of(w);
    changed.fire();
  }

  private static ReachAnalysis work(FloorTakeoff t) {
    try {
      Thread.sleep(REST);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException();
    }
    Thread mine = Thread.currentThread();
    ReachAnalysis ways = ReachAnalysis.of(t, mine::isInterrupted);
    ways.passages();
    ways.pockets();
    ways.curves();
    return ways;
  }

  @Override
  public void close() {
    worker.close();
  }
}
