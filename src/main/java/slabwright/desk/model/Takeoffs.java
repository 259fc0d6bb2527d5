package slabwright.desk.model;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import slabwright.floor.FloorTakeoff;
import slabwright.site.FloorArea;

/**
 * Take-offs while something is dragged. A large floor is first worked out coarsely, so that its
 * figures keep up; the exact take-off follows as soon as no newer plan waits, and is given up when
 * one comes. What is quick anyway is always exact.
 */
final class Takeoffs implements AutoCloseable {
  /** How far arcs may stray in a coarse take-off, mm. */
  static final double COARSE = 4;

  /** An exact take-off this quick is not worth a coarse one; ns. */
  private static final long QUICK = 60_000_000;

  private record Question(FloorArea area, double tolerance) {}

  private record Answer(FloorTakeoff takeoff, long took) {}

  private final Consumer<FloorTakeoff> take;
  private final Latest<Question, Answer> moving;
  private final Latest<Question, Answer> exact;
  private Optional<FloorArea> wanted = Optional.empty();
  private boolean quick;

  /**
   * Workers with threads of their own.
   *
   * @param home where answers are handed over: the asking thread
   */
  Takeoffs(Executor home, Consumer<FloorTakeoff> take, Consumer<RuntimeException> fault) {
    this.take = take;
    moving = new Latest<>("coarse take-off", true, home, Takeoffs::work, this::moved, fault);
    exact = new Latest<>("take-off", false, home, Takeoffs::work, this::rested, fault);
  }

  /**
   * Asks.
   *
   * @param dragging whether a newer question is soon to be expected
   */
  void ask(FloorArea area, boolean dragging) {
    wanted = Optional.of(area);
    if (dragging) {
      exact.cancel();
      moving.ask(new Question(area, quick ? FloorTakeoff.TOLERANCE : COARSE));
    } else {
      moving.cancel();
      exact.ask(new Question(area, FloorTakeoff.TOLERANCE));
    }
  }

  void cancel() {
    moving.cancel();
    exact.cancel();
    wanted = Optional.empty();
    quick = false;
  }

  /** Whether an answer, or a better one, is still to come. */
  boolean isBusy() {
    return moving.isBusy() || exact.isBusy();
  }

  private static Answer work(Question q) {
    long start = System.nanoTime();
    FloorTakeoff t =
        FloorTakeoff.of(q.area(), q.tolerance(), Thread.currentThread()::isInterrupted);
    return new Answer(t, System.nanoTime() - start);
  }

  private void moved(Answer a) {
    FloorArea area = a.takeoff().area();
    if (a.takeoff().tolerance() == FloorTakeoff.TOLERANCE) {
      quick = a.took() <= QUICK;
    } else if (wanted.equals(Optional.of(area)) && !moving.isBusy()) {
      exact.ask(new Question(area, FloorTakeoff.TOLERANCE));
    }
    take.accept(a.takeoff());
  }

  private void rested(Answer a) {
    quick = a.took() <= QUICK;
    take.accept(a.takeoff());
  }

  @Override
  public void close() {
    moving.close();
    exact.close();
  }
}
