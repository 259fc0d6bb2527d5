package slabwright.desk.model.compute;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import slabwright.desk.model.Computed;
import slabwright.floor.FloorFigures;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.FollowedTakeoff;
import slabwright.floor.QuickTakeoff;
import slabwright.project.AreaCache;
import slabwright.site.FloorArea;

/**
 * Take-offs of what is edited and of what is dragged. While something is dragged a rough glance
 * follows it, to be drawn, and the exact figures, as far as they are known from the part that the
 * hand is at; the exact take-off comes when the hand rests, and is given up when it goes on.
 */
final class Takeoffs implements AutoCloseable {
  /** A hand that has not moved for so long rests, ms. */
  private static final long REST = 300;

  private record Question(FloorArea area, long rest, AreaCache areas) {}

  private record Moved(FloorArea area, FollowedTakeoff from) {}

  /** The exact figures of a floor with something moved; none when more must be looked at. */
  record Followed(FloorArea area, Optional<FloorFigures> figures) {}

  /** Where answers go. */
  record Listeners(
      Consumer<QuickTakeoff> glimpsed,
      Consumer<Followed> followed,
      Consumer<FloorTakeoff> taken,
      Consumer<RuntimeException> fault) {}

  private final AreaCache areas;
  private final Listeners listeners;
  private final Computed<Moved, Followed> figures;
  private final Computed<FloorArea, QuickTakeoff> rough;
  private final Computed<Question, FloorTakeoff> exact;
  private Optional<FloorArea> dragged = Optional.empty();
  private Optional<FollowedTakeoff> rested = Optional.empty();

  /**
   * Workers with threads of their own.
   *
   * @param home where answers are handed over: the asking thread
   */
  Takeoffs(AreaCache areas, Executor home, Listeners listeners) {
    this.areas = areas;
    this.listeners = listeners;
    Consumer<RuntimeException> fault = listeners.fault();
    figures =
        new Computed<>(
            Computed.Pace.patient("figures"), home, Takeoffs::follow, listeners.followed(), fault);
    rough =
        new Computed<>(
            Computed.Pace.patient("glance"), home, Takeoffs::glance, this::glanced, fault);
    exact =
        new Computed<>(
            Computed.Pace.hurried("take-off"), home, Takeoffs::takeOff, this::taken, fault);
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
      rested.ifPresent(from -> figures.ask(new Moved(area, from)));
      rough.ask(area);
    } else {
      dragged = Optional.empty();
      figures.cancel();
      rough.cancel();
      exact.ask(new Question(area, 0, areas));
    }
  }

  void cancel() {
    dragged = Optional.empty();
    figures.cancel();
    rough.cancel();
    exact.cancel();
  }

  /** Whether an answer, or a better one, is still to come. */
  boolean isBusy() {
    return rough.isBusy() || exact.isBusy();
  }

  private static Followed follow(Moved moved) {
    return new Followed(
        moved.area(), moved.from().figures(moved.area(), Thread.currentThread()::isInterrupted));
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
    listeners.glimpsed().accept(g);
  }

  /** What is moved from now on is compared with this. */
  private void taken(FloorTakeoff t) {
    rested = Optional.of(new FollowedTakeoff(t));
    listeners.taken().accept(t);
  }

  @Override
  public void close() {
    figures.close();
    rough.close();
    exact.close();
  }
}
