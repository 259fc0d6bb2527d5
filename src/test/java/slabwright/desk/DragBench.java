package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.animation.AnimationTimer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;
import slabwright.desk.model.Desk;
import slabwright.floor.QuickTakeoff;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Spot;
import slabwright.site.edit.OutlineEdit;

/**
 * Drags a corner of the depot floor, and of the tram hall as a baseline, under the software
 * renderer and prints how long frames and the tally took. Runs only when asked: {@code
 * -Dslabwright.bench=true}.
 */
@EnabledIfSystemProperty(named = "slabwright.bench", matches = "true")
class DragBench {
  private static final int STEPS = 120;

  private static final int DRAGS = 3;

  private static final long STEP_MS = 33;

  @TempDir Path data;

  /**
   * What a drag came to.
   *
   * @param frames from one frame to the next, ns
   * @param tally from a move until the rough glance is of it or of a later one, ns
   * @param exact from a move until the exact figures are of it or of a later one, ns; a move that
   *     they never came to before the hand rested is left out
   * @param rest from the last move until the exact take-off, ns
   */
  private record Times(
      int marks, List<Long> frames, List<Long> tally, List<Long> exact, long rest) {}

  @Test
  void a_corner_of_the_depot_is_dragged() throws Exception {
    List<Times> hall = drags("tram-hall.site.json");
    List<Times> depot = drags("depot-floor.site.json");
    for (int i = 0; i < DRAGS; i++) {
      print("tram-hall (baseline), drag " + (i + 1), hall.get(i));
      print("depot-floor, drag " + (i + 1), depot.get(i));
      ratio("frame p95", p(depot.get(i).frames, 0.95), p(hall.get(i).frames, 0.95));
      ratio("tally p95", p(depot.get(i).tally, 0.95), p(hall.get(i).tally, 0.95));
      ratio("exact p95", p(depot.get(i).exact, 0.95), p(hall.get(i).exact, 0.95));
      assertThat(depot.get(i).exact).isNotEmpty();
      assertThat(depot.get(i).frames).isNotEmpty();
      assertThat(depot.get(i).tally).isNotEmpty();
    }
  }

  /** The first is of a program just started; by the last it has been translated and runs warm. */
  private List<Times> drags(String plan) throws Exception {
    Path folder = Files.createDirectory(data.resolve(plan.replace(".site.json", "")));
    for (String name : List.of(plan, "bike-wheel.svg", "heron-ring.svg")) {
      Files.copy(Path.of("sample-plans", name), folder.resolve(name));
    }
    try (DeskUnderTest desk = DeskUnderTest.open(folder, 1440, 900, List.of())) {
      DeskUnderTest.on(
          () -> {
            desk.room().plans().openPlan(folder.resolve(plan));
            return null;
          });
      waitForTakeoff(desk);
      List<Times> all = new ArrayList<>();
      for (int i = 0; i < DRAGS; i++) {
        all.add(run(desk));
        DeskUnderTest.on(
            () -> {
              desk.room().bench().desk().endPreview();
              return null;
            });
        waitForTakeoff(desk);
      }
      return all;
    }
  }

  private static Times run(DeskUnderTest desk) throws TimeoutException, InterruptedException {
    Desk model = desk.room().bench().desk();
    FloorArea area = desk.room().bench().focus().area().orElseThrow();
    Vec at = area.outline().get(0).from().vec();
    Frames frames = new Frames();
    Moves moves = new Moves(desk);
    DeskUnderTest.on(
        () -> {
          desk.room().parts().answers().changed().subscribe(moves::answered);
          frames.start();
          return null;
        });
    for (int i = 0; i < STEPS; i++) {
      Spot to = Spot.mm(at.x() - 10.0 * i, at.y() - 6.0 * i);
      DeskUnderTest.on(
          () -> {
            model.preview(new OutlineEdit.MoveCorner(area.id(), 0, to));
            moves.moved();
            return null;
          });
      Thread.sleep(STEP_MS);
    }
    long end = System.nanoTime();
    DeskUnderTest.on(
        () -> {
          frames.stop();
          return null;
        });
    waitForTakeoff(desk);
    return new Times(
        area.marks().size(),
        frames.times,
        moves.delays,
        List.copyOf(moves.exact),
        System.nanoTime() - end);
  }

  /** The time from one frame to the next. */
  private static final class Frames extends AnimationTimer {
    private final List<Long> times = new ArrayList<>();
    private long last;

    @Override
    public void handle(long now) {
      if (last != 0) {
        times.add(now - last);
      }
      last = now;
    }
  }

  /** Which moves the tally has answered, each by the first take-off of it or of a later one. */
  private static final class Moves {
    private final DeskUnderTest desk;
    private final Map<FloorArea, Integer> numbers = new HashMap<>();
    private final List<Long> asked = new ArrayList<>();
    private final List<Long> delays = new ArrayList<>();
    private final List<Long> exact = new ArrayList<>();

    Moves(DeskUnderTest desk) {
      this.desk = desk;
    }

    void moved() {
      numbers.put(desk.room().bench().focus().area().orElseThrow(), asked.size());
      asked.add(System.nanoTime());
    }

    void answered() {
      long now = System.nanoTime();
      answered(desk.room().parts().answers().glance().map(QuickTakeoff::area), delays, now);
      answered(desk.room().parts().answers().followedArea(), exact, now);
    }

    private void answered(Optional<FloorArea> of, List<Long> into, long now) {
      Integer number = of.map(numbers::get).orElse(null);
      while (number != null && into.size() <= number) {
        into.add(now - asked.get(into.size()));
      }
    }
  }

  private static void waitForTakeoff(DeskUnderTest desk) throws TimeoutException {
    WaitForAsyncUtils.waitFor(
        120,
        TimeUnit.SECONDS,
        () ->
            DeskUnderTest.on(
                () ->
                    desk.room().parts().answers().takeoff().isPresent()
                        && desk.room().parts().answers().isTakenOff()));
  }

  private static double p(List<Long> nanos, double share) {
    List<Long> sorted = new ArrayList<>(nanos);
    Collections.sort(sorted);
    return sorted.get((int) Math.min(sorted.size() - 1, sorted.size() * share)) / 1e6;
  }

  private static void print(String what, Times t) {
    System.out.println(String.format(Locale.ROOT, "%s, %d marks", what, t.marks));
    print("frame", t.frames);
    print("tally", t.tally);
    print("exact figures (" + t.exact.size() + ")", t.exact);
    System.out.println(String.format(Locale.ROOT, "  exact after rest %.0f ms", t.rest / 1e6));
  }

  private static void print(String what, List<Long> nanos) {
    System.out.println(
        String.format(
            Locale.ROOT,
            "  %s ms: p50 %.0f, p95 %.0f, max %.0f",
            what,
            p(nanos, 0.5),
            p(nanos, 0.95),
            p(nanos, 1)));
  }

  private static void ratio(String what, double depot, double hall) {
    System.out.println(
        String.format(Locale.ROOT, "%s, depot to tram hall: %.1f", what, depot / hall));
  }
}
