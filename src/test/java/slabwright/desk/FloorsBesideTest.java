package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.OutlinePiece;
import slabwright.site.Site;
import slabwright.site.Spot;
import slabwright.store.PlanFile;
import slabwright.units.Length;
import slabwright.units.UnitSystem;

/** A shed of 8 by 6 m and a store of 4 by 3 m beside it, each with one doorway. */
class FloorsBesideTest {
  @TempDir Path data;

  private DeskUnderTest desk;
  private DeskGestures hands;

  @BeforeEach
  void open() throws TimeoutException, IOException {
    FloorArea shed =
        room("a1", "Shed", 0, 0, 8000, 6000)
            .withDoorways(List.of(door("east", "east door", 1, 2500, 1000)));
    FloorArea store =
        room("a2", "Store", 14_000, 0, 4000, 3000)
            .withDoorways(List.of(door("west", "store door", 3, 1000, 1000)));
    Site site = Site.empty("Tram shed", UnitSystem.METRIC).withAreas(List.of(shed, store));
    Path file = data.resolve("shed.site.json");
    PlanFile.save(site, file);
    desk = DeskUnderTest.open(data, 1280, 800, List.of(file.toString()));
    hands = new DeskGestures(desk);
    hands.click("all-areas");
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private static FloorArea room(String id, String name, double x, double y, double w, double h) {
    return FloorArea.of(
        id,
        name,
        List.of(
            OutlinePiece.wall(Spot.mm(x, y)),
            OutlinePiece.wall(Spot.mm(x + w, y)),
            OutlinePiece.wall(Spot.mm(x + w, y + h)),
            OutlinePiece.wall(Spot.mm(x, y + h))));
  }

  private static Doorway door(String id, String name, int wall, double offset, double width) {
    return new Doorway(id, name, wall, Length.mm(offset), Length.mm(width), false);
  }

  private String looked() {
    return DeskUnderTest.on(() -> desk.room().bench().focus().area().orElseThrow().name());
  }

  private Bounds store() {
    return bounds(hands.site().area("a2").orElseThrow());
  }

  private static Bounds bounds(FloorArea a) {
    return Bounds.of(a.outline().stream().map(p -> p.from().vec()).toList());
  }

  private Doorway.Passage west() {
    return hands.site().area("a2").orElseThrow().doorway("west").orElseThrow().passage();
  }

  private Doorway.Passage east() {
    return hands.site().area("a1").orElseThrow().doorway("east").orElseThrow().passage();
  }

  @Test
  void a_click_on_a_pale_floor_looks_at_it_and_leaves_the_view_as_it_is() throws TimeoutException {
    var before = DeskUnderTest.on(() -> hands.slab().viewport());
    hands.clickSlab(16_000, 1500);
    assertThat(looked()).isEqualTo("Store");
    assertThat(DeskUnderTest.on(() -> hands.slab().viewport())).isEqualTo(before);
    hands.clickSlab(4000, 3000);
    assertThat(looked()).isEqualTo("Shed");
    assertThat(store().minX()).isEqualTo(14_000);
  }

  @Test
  void a_pale_floor_dragged_with_its_doorway_near_another_is_laid_there_and_leads_there()
      throws TimeoutException {
    hands.drag(new Vec(16_000, 1500), new Vec(10_080, 3050));
    assertThat(store().minX()).isEqualTo(8000);
    assertThat(store().minY()).isEqualTo(1500);
    assertThat(west().leadsTo()).contains(new Doorway.LeadsTo("a1", "east"));
    assertThat(DeskUnderTest.on(() -> ((Labeled) desk.node("notice-words")).getText()))
        .startsWith("The two doorways meet");
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(store().minX()).isEqualTo(14_000);
    assertThat(west().leadsTo()).isEmpty();
  }

  @Test
  void floors_that_lead_to_each_other_are_dragged_together() throws TimeoutException {
    hands.drag(new Vec(16_000, 1500), new Vec(10_080, 3050));
    assertThat(store().minX()).isEqualTo(8000);
    hands.drag(new Vec(3000, 3000), new Vec(3400, 5000));
    Bounds shed = bounds(hands.site().area("a1").orElseThrow());
    assertThat(shed.minX()).isCloseTo(400, org.assertj.core.data.Offset.offset(60.0));
    assertThat(store().minX() - shed.minX()).isEqualTo(8000);
    assertThat(store().minY() - shed.minY()).isEqualTo(1500);
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(bounds(hands.site().area("a1").orElseThrow()).minX()).isZero();
    assertThat(west().leadsTo()).contains(new Doorway.LeadsTo("a1", "east"));
  }

  @Test
  void a_doorway_that_says_where_it_leads_lays_the_other_floor_turned_so_that_they_meet()
      throws TimeoutException {
    hands.clickSlab(16_000, 1500);
    DeskUnderTest.on(
        () -> {
          desk.room().commands().run("turn-floor");
          return null;
        });
    desk.settle();
    assertThat(store().height()).isEqualTo(4000);
    hands.click("area-a1").click("all-areas").clickSlab(8000, 3000);
    hands.choose("door-leads-to", "Store, store door");
    assertThat(store().minX()).isCloseTo(8000, org.assertj.core.data.Offset.offset(1e-6));
    assertThat(store().height()).isCloseTo(3000, org.assertj.core.data.Offset.offset(1e-6));
    assertThat(east().leadsTo()).contains(new Doorway.LeadsTo("a2", "west"));
  }

  @Test
  void with_a_doorway_picked_a_click_on_a_pale_doorway_says_where_it_leads()
      throws TimeoutException {
    hands.clickSlab(8000, 3000).clickSlab(14_000, 1500);
    assertThat(east().leadsTo()).contains(new Doorway.LeadsTo("a2", "west"));
    assertThat(store().minX()).isEqualTo(8000);
    hands.click("door-sealed");
    assertThat(east().sealed()).isTrue();
    hands.click("door-way-in");
    assertThat(DeskUnderTest.on(() -> ((Labeled) desk.node("notice-words")).getText()))
        .contains("is sealed, and machines come in through it");
  }

  @Test
  void a_pale_floor_is_not_moved_by_a_hand_that_slips_at_a_later_stage() throws TimeoutException {
    hands.stage(slabwright.desk.model.Stage.MARK);
    hands.drag(new Vec(16_000, 1500), new Vec(12_000, 1500));
    assertThat(store().minX()).isEqualTo(14_000);
    assertThat(looked()).isEqualTo("Store");
  }
}
