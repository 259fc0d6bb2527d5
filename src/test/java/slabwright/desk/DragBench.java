package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.animation.AnimationTimer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;
import slabwright.desk.model.Answers;
import slabwright.desk.model.Desk;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.OutlineEdit;
import slabwright.site.Spot;

/**
 * Drags a corner of the depot floor under the software renderer and prints how long frames and the
 * tally took. Runs only when asked: {@code -Dslabwright.bench=true}.
 */
@EnabledIfSystemProperty(named = "slabwright.bench", matches = "true")
class DragBench {
  private static final int STEPS = 120;

  @TempDir Path data;

  @Test
  void a_corner_of_the_depot_is_dragged() throws Exception {
    for (String name : List.of("depot-floor.site.json", "bike-wheel.svg", "heron-ring.svg")) {
      Files.copy(Path.of("sample-plans", name), data.resolve(name));
    }
    Path plan = data.resolve("depot-floor.site.json");
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1440, 900, List.of())) {
      DeskUnderTest.on(
          () -> {
            desk.room().plans().openPlan(plan);
            return null;
          });
      waitForTakeoff(desk);
      run(desk);
    }
  }

  private static void run(DeskUnderTest desk) throws TimeoutException, InterruptedException {
    Desk model = desk.room().bench().desk();
    FloorArea area = model.site().areas().get(0);
    Vec at = area.outline().get(0).from().vec();
    List<Long> frames = Collections.synchronizedList(new ArrayList<>());
    List<Long> tally = Collections.synchronizedList(new ArrayList<>());
    long[] asked = {0};
    AnimationTimer timer =
        new AnimationTimer() {
          private long last;

          @Override
          public void handle(long now) {
            if (last != 0) {
              frames.add(now - last);
            }
            last = now;
          }
        };
    DeskUnderTest.on(
        () -> {
          answers(desk).changed().hear(() -> tally.add(System.nanoTime() - asked[0]));
          timer.start();
          return null;
        });
    for (int i = 0; i < STEPS; i++) {
      Spot to = Spot.mm(at.x() - 10.0 * i, at.y() - 6.0 * i);
      DeskUnderTest.on(
          () -> {
            asked[0] = System.nanoTime();
            model.preview(new OutlineEdit.MoveCorner(area.id(), 0, to));
            return null;
          });
      Thread.sleep(33);
    }
    waitForTakeoff(desk);
    DeskUnderTest.on(
        () -> {
          timer.stop();
          return null;
        });
    print("marks", area.marks().size());
    print("frame p95 ms", p95(frames));
    print("tally p95 ms", p95(tally));
    assertThat(frames).isNotEmpty();
    assertThat(tally).isNotEmpty();
  }

  private static void waitForTakeoff(DeskUnderTest desk) throws TimeoutException {
    WaitForAsyncUtils.waitFor(
        120,
        TimeUnit.SECONDS,
        () ->
            DeskUnderTest.on(
                () -> answers(desk).takeoff().isPresent() && answers(desk).isTakenOff()));
  }

  private static Answers answers(DeskUnderTest desk) {
    return desk.room().parts().answers();
  }

  private static double p95(List<Long> nanos) {
    List<Long> sorted = new ArrayList<>(nanos);
    Collections.sort(sorted);
    return sorted.get((int) (sorted.size() * 0.95)) / 1e6;
  }

  private static void print(String what, double value) {
    System.out.println(String.format(Locale.ROOT, "%-14s %.1f", what, value));
  }
}
