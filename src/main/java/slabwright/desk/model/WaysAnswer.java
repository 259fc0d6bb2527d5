package slabwright.desk.model;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.Ways;

/**
 * The machines' ways over the floor looked at, worked out once the plan rests at the Prep stage;
 * what a newer plan replaces is given up.
 */
public final class WaysAnswer implements AutoCloseable {
  /** The plan rests when nothing changed for so long, ms. */
  private static final long REST = 250;

  private final Desk desk;
  private final Focus focus;
  private final Answers answers;
  private final Signal changed = new Signal();
  private final Latest<FloorTakeoff, Ways> worker;
  private Optional<FloorTakeoff> asked = Optional.empty();
  private Optional<Ways> ways = Optional.empty();

  /** Listens to the answers and the focus. */
  public WaysAnswer(Desk desk, Focus focus, Answers answers, Executor home) {
    this.desk = desk;
    this.focus = focus;
    this.answers = answers;
    worker =
        new Latest<>(
            "ways",
            false,
            home,
            WaysAnswer::work,
            this::take,
            e -> desk.refuse(Faults.unexpected("work out the machines' ways", e)));
    desk.changed().hear(this::look);
    answers.changed().hear(this::look);
    focus.changed().hear(this::look);
  }

  public Signal changed() {
    return changed;
  }

  /** The ways of the floor as it is taken off now; empty while they are worked out. */
  public Optional<Ways> ways() {
    return ways.filter(w -> answers.takeoff().filter(w.takeoff()::equals).isPresent());
  }

  public boolean isWorking() {
    return worker.isBusy();
  }

  public void cancel() {
    worker.cancel();
    changed.give();
  }

  private void look() {
    Optional<FloorTakeoff> now = answers.takeoff();
    if (desk.isPreviewing()) {
      asked = Optional.empty();
      worker.cancel();
      return;
    }
    if (focus.stage() != Stage.PREP || now.isEmpty()) {
      return;
    }
    if (!now.equals(asked)) {
      asked = now;
      worker.ask(now.get());
    }
  }

  private void take(Ways w) {
    ways = Optional.of(w);
    changed.give();
  }

  private static Ways work(FloorTakeoff t) {
    try {
      Thread.sleep(REST);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException();
    }
    Thread mine = Thread.currentThread();
    Ways ways = Ways.of(t, mine::isInterrupted);
    ways.pockets();
    ways.curves();
    return ways;
  }

  @Override
  public void close() {
    worker.close();
  }
}
