package slabwright.desk.model.compute;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
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
import slabwright.site.MarkKind;
import slabwright.site.Site;
import slabwright.site.edit.MarkEdit;
import slabwright.units.Message;
import slabwright.units.UnitSystem;

/** Two counters that stand in one another, worked out beside the thread that asks. */
class SelectedAreaWarningsTest {
  private final BlockingQueue<Runnable> home = new LinkedBlockingQueue<>();
  private final Desk desk = new Desk();
  private final Selection focus = new Selection(desk);
  private SelectedAreaResults answers;
  private SelectedAreaWarnings warnings;

  private static FloorArea room() {
    return Floors.rectangle(12_000, 8_000)
        .withMarks(
            List.of(
                Floors.box("a", new MarkKind.Island(), 5_000, 4_000, 7_000, 5_000),
                Floors.box("b", new MarkKind.Island(), 6_500, 4_000, 8_500, 5_000)));
  }

  @BeforeEach
  void desk_on_a_room() {
    answers = new SelectedAreaResults(desk, focus, Optional::empty, new AreaCache(), home::add);
    warnings = new SelectedAreaWarnings(desk, focus, answers, home::add);
    desk.open(Site.empty("Shed", UnitSystem.METRIC).withAreas(List.of(room())), Optional.empty());
  }

  @AfterEach
  void close() {
    warnings.close();
    answers.close();
  }

  private void handOverUntil(BooleanSupplier there) throws InterruptedException {
    while (!there.getAsBoolean()) {
      Runnable next = home.poll(60, TimeUnit.SECONDS);
      assertThat(next).as("something worked out").isNotNull();
      next.run();
    }
  }

  private List<String> keys() {
    return warnings.notes().stream().map(n -> n.message()).map(Message::key).toList();
  }

  @Test
  void warnings_come_from_beside_and_are_marked_as_of_a_moment_ago_until_then()
      throws InterruptedException {
    handOverUntil(() -> answers.takeoff().isPresent());
    assertThat(keys()).isEmpty();
    assertThat(warnings.isWorking()).isTrue();
    handOverUntil(() -> !warnings.isWorking());
    assertThat(keys()).contains("desk.model.floor-warnings.stand-in-one-another");

    assertThat(desk.push(new MarkEdit.Remove(room().id(), Set.of("b"))).isOk()).isTrue();
    handOverUntil(() -> warnings.isWorking());
    assertThat(keys()).contains("desk.model.floor-warnings.stand-in-one-another");
    handOverUntil(() -> answers.isTakenOff() && !warnings.isWorking());
    assertThat(keys()).doesNotContain("desk.model.floor-warnings.stand-in-one-another");
  }

  @Test
  void another_plan_shows_none_of_the_last_ones() throws InterruptedException {
    handOverUntil(() -> !warnings.notes().isEmpty());
    desk.open(Site.empty("Other", UnitSystem.METRIC), Optional.empty());
    assertThat(warnings.notes()).isEmpty();
    assertThat(warnings.isWorking()).isFalse();
  }
}
