package slabwright.desk.model.compute;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import slabwright.desk.model.Desk;
import slabwright.desk.model.Selection;
import slabwright.floor.Floors;
import slabwright.project.AreaCache;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.site.Spot;
import slabwright.site.edit.OutlineEdit;
import slabwright.units.UnitSystem;

/** A corner of a room of 12 m by 8 m is dragged; answers come when they are handed over. */
class SelectedAreaResultsTest {
  private final BlockingQueue<Runnable> home = new LinkedBlockingQueue<>();
  private final Desk desk = new Desk();
  private final Selection focus = new Selection(desk);
  private SelectedAreaResults answers;

  private static FloorArea room() {
    return Floors.withDoor(Floors.rectangle(12_000, 8_000), 0, 2_000, 2_000)
        .withMachines(List.of(Floors.machine(760, 700, 50)));
  }

  @BeforeEach
  void desk_on_a_room() {
    answers = new SelectedAreaResults(desk, focus, Optional::empty, new AreaCache(), home::add);
    desk.open(Site.empty("Shed", UnitSystem.METRIC).withAreas(List.of(room())), Optional.empty());
  }

  @AfterEach
  void close() {
    answers.close();
  }

  private void handOverUntil(BooleanSupplier there) throws InterruptedException {
    while (!there.getAsBoolean()) {
      Runnable next = home.poll(60, TimeUnit.SECONDS);
      assertThat(next).as("something worked out").isNotNull();
      next.run();
    }
  }

  private void drag(double x) {
    desk.preview(new OutlineEdit.MoveCorner(room().id(), 2, Spot.mm(x, 8_000)));
  }

  @Test
  void exact_figures_of_a_drag_stay_as_of_a_moment_ago_while_the_hand_moves_on()
      throws InterruptedException {
    handOverUntil(() -> answers.takeoff().isPresent() && answers.isTakenOff());
    assertThat(answers.followed()).isEmpty();
    drag(12_100);
    handOverUntil(answers::isFollowedTrue);
    assertThat(answers.followed().orElseThrow().net()).isCloseTo(96.4e6, within(1e-3));
    drag(12_200);
    assertThat(answers.isFollowedTrue()).isFalse();
    assertThat(answers.followed().orElseThrow().net()).isCloseTo(96.4e6, within(1e-3));
    handOverUntil(answers::isFollowedTrue);
    assertThat(answers.followed().orElseThrow().net()).isCloseTo(96.8e6, within(1e-3));
  }

  @Test
  void nothing_of_a_drag_is_left_when_it_is_given_up() throws InterruptedException {
    handOverUntil(() -> answers.takeoff().isPresent() && answers.isTakenOff());
    drag(12_100);
    handOverUntil(answers::isFollowedTrue);
    desk.endPreview();
    handOverUntil(() -> answers.isTakenOff() && answers.isGlanceTrue());
    assertThat(answers.followed()).isEmpty();
    assertThat(answers.takeoff().orElseThrow().net().area()).isCloseTo(96e6, within(1e-3));
  }
}
