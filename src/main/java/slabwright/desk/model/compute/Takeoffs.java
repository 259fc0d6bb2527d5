package slabwright.desk.model.compute;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import slabwright.desk.model.Computed;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.QuickTakeoff;
import slabwright.project.AreaCache;
import slabwright.site.FloorArea;

/**
 * Take-offs of what is edited and of what is dragged. While something is dragged only a rough
 * glance follows it; the exact take-off comes when the hand rests, and is given up when it goes on.
 */
final class Takeoffs implements AutoCloseable {
  /** A hand that has not moved for so long rests, ms. */
  private static final long REST = 300;

  private record Question(FloorArea area, long rest, AreaCache areas) {}

  private final AreaCache areas;
  private final Consumer<QuickTakeoff> glimpsed;
  private final Computed<FloorArea, QuickTakeoff> rough;
  private final Computed<Question, FloorTakeoff> exact;
  private Optional<FloorArea> dragged = Optional.empty();

  /**
   * Workers with threads of their own.
   *
   * @param home where answers are handed over: the asking thread
   */
  Takeoffs(
      AreaCache areas,
      Executor home,
      Consumer<QuickTakeoff> glimpsed,
      Consumer<FloorTakeoff> take,
      Consumer<RuntimeException> fault) {
    this.areas = areas;
    this.glimpsed = glimpsed;
    rough =
        new Computed<>(
            Computed.Pace.patient("glance"), home, Takeoffs::glance, this::glanced, fault);
    exact = new Computed<>(Computed.Pace.hurried("take-off"), home, Takeoffs::takeOff, take, fault);
  }

  /**
   * Asks.
   *
   * @param dragging whether a newer question is soon to be expected
   */
  void ask(FloorArea area, boolean dragging) {
    if (dragging) {
      dragged = Optional.of(area);
      exact.cancel();
      rough.ask(area);
    } else {
      dragged = Optional.empty();
      rough.cancel();
      exact.ask(new Question(area, 0, areas));
    }
  }

  void cancel() {
    dragged = Optional.empty();
    rough.cancel();
    exact.cancel();
  }

  /** Whether an answer, or a better one, is still to come. */
  boolean isBusy() {
    return rough.isBusy() || exact.isBusy();
  }

  private static QuickTakeoff glance(FloorArea area) {
    return QuickTakeoff.approximate(area, Thread.currentThread()::isInterrupted);
  }

  private static FloorTakeoff takeOff(Question q) {
    try {
      Thread.sleep(q.rest());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException();
    }
    return q.areas().takeoff(q.area(), Thread.currentThread()::isInterrupted);
  }

  private void glanced(QuickTakeoff g) {
    if (dragged.equals(Optional.of(g.area()))) {
      exact.ask(new Question(g.area(), REST, areas));
    }
    glimpsed.accept(g);
  }

  @Override
  public void close() {
    rough.close();
    exact.close();
  }
}
