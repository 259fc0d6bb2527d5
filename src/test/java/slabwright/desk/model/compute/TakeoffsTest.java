package slabwright.desk.model.compute;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import slabwright.floor.FloorFigures;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.Floors;
import slabwright.project.AreaCache;
import slabwright.site.FloorArea;
import slabwright.site.MarkKind;

/** What follows a drag: exact figures beside the rough glance. */
class TakeoffsTest {
  private final BlockingQueue<Runnable> home = new LinkedBlockingQueue<>();
  private final List<Takeoffs.Followed> followed = new ArrayList<>();
  private final List<FloorTakeoff> taken = new ArrayList<>();
  private final List<RuntimeException> faults = new ArrayList<>();

  private static FloorArea room(double columnAt) {
    FloorArea bare = Floors.withDoor(Floors.rectangle(12_000, 8_000), 0, 2_000, 2_000);
    return bare.withMachines(List.of(Floors.machine(760, 700, 50)))
        .withMarks(
            List.of(
                Floors.box("c", new MarkKind.Column(), columnAt, 4_000, columnAt + 400, 4_400)));
  }

  private void waitUntil(BooleanSupplier there) throws InterruptedException {
    while (!there.getAsBoolean()) {
      Runnable next = home.poll(60, TimeUnit.SECONDS);
      assertThat(next).as("an answer").isNotNull();
      next.run();
    }
  }

  private FloorFigures followed(FloorArea dragged) throws InterruptedException {
    Takeoffs.Listeners listeners =
        new Takeoffs.Listeners(g -> {}, followed::add, taken::add, faults::add);
    try (Takeoffs takeoffs = new Takeoffs(new AreaCache(), home::add, listeners)) {
      takeoffs.ask(room(5_000), false);
      waitUntil(() -> !taken.isEmpty());
      takeoffs.ask(dragged, true);
      waitUntil(() -> !followed.isEmpty());
    }
    assertThat(followed.get(0).area()).isEqualTo(dragged);
    assertThat(faults).isEmpty();
    return followed.get(0).figures().orElseThrow();
  }

  private static void assertExact(FloorFigures figures, FloorArea area) {
    FloorFigures whole = FloorFigures.of(FloorTakeoff.of(area));
    assertThat(figures.machine()).isCloseTo(whole.machine(), within(0.1));
    assertThat(figures.hand()).isCloseTo(whole.hand(), within(0.1));
    assertThat(figures.cutIn()).isCloseTo(whole.cutIn(), within(1e-4));
  }

  @Test
  void exact_figures_follow_a_dragged_mark() throws InterruptedException {
    assertExact(followed(room(6_250.5)), room(6_250.5));
  }

  @Test
  void exact_figures_follow_a_dragged_wall() throws InterruptedException {
    FloorArea wider = room(5_000).withOutline(Floors.rectangle(12_300, 8_000).outline());
    assertExact(followed(wider), wider);
  }

  @Test
  void a_floor_with_another_number_of_corners_has_no_exact_figures_until_it_rests()
      throws InterruptedException {
    Takeoffs.Listeners listeners =
        new Takeoffs.Listeners(g -> {}, followed::add, taken::add, faults::add);
    FloorArea cut =
        room(5_000)
            .withOutline(
                Floors.walled(0, 0, 12_000, 0, 12_000, 7_000, 11_000, 8_000, 0, 8_000).outline());
    try (Takeoffs takeoffs = new Takeoffs(new AreaCache(), home::add, listeners)) {
      takeoffs.ask(room(5_000), false);
      waitUntil(() -> !taken.isEmpty());
      takeoffs.ask(cut, true);
      waitUntil(() -> !followed.isEmpty() && taken.size() > 1);
    }
    assertThat(followed.get(0).figures()).isEmpty();
    assertThat(taken.get(1).area()).isEqualTo(cut);
  }
}
