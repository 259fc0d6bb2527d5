package slabwright.desk.model.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import slabwright.desk.model.Desk;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.Selection;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Inlay;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.OutlinePiece;
import slabwright.site.Site;
import slabwright.site.Spot;
import slabwright.site.StencilSpec;
import slabwright.units.Length;
import slabwright.units.UnitSystem;

class ClipboardTest {
  private final Desk desk = new Desk();
  private final Selection focus = new Selection(desk);
  private final Clipboard clipboard = new Clipboard();

  private static FloorArea room(String id, double x) {
    return FloorArea.of(
        id,
        id,
        List.of(
            OutlinePiece.wall(Spot.mm(x, 0)),
            OutlinePiece.wall(Spot.mm(x + 8000, 0)),
            OutlinePiece.wall(Spot.mm(x + 8000, 6000)),
            OutlinePiece.wall(Spot.mm(x, 6000))));
  }

  @BeforeEach
  void open() {
    Form round = new Form.Circle(Spot.mm(2000, 2000), Length.mm(300));
    Mark post = new Mark("post", "post", new MarkKind.Column(), round, OptionalInt.of(1));
    Doorway door = new Doorway("d1", "door", 0, Length.mm(6500), Length.mm(1000), true);
    Inlay inlay =
        new Inlay(
            "i1",
            "arrow",
            "arrow.svg",
            "",
            Spot.mm(4000, 3000),
            Length.mm(1200),
            30,
            StencilSpec.forRoll(Length.mm(1220)));
    FloorArea here =
        room("a", 0)
            .withMarks(List.of(post))
            .withDoorways(List.of(door))
            .withInlays(List.of(inlay));
    desk.open(
        Site.empty("S", UnitSystem.METRIC).withAreas(List.of(here, room("b", 20_000))),
        Optional.empty());
    focus.select(
        new PlanItem.OfMark("post"), new PlanItem.OfDoorway("d1"), new PlanItem.OfInlay("i1"));
  }

  private FloorArea area(String id) {
    return desk.site().area(id).orElseThrow();
  }

  private void paste(String area) {
    assertThat(desk.push(clipboard.paste(area(area), focus).orElseThrow().edit()).isOk()).isTrue();
  }

  @Test
  void a_mark_a_doorway_and_an_inlay_are_pasted_as_one_step_under_ids_of_their_own() {
    Site before = desk.site();
    assertThat(clipboard.copy(area("a"), focus)).isTrue();
    paste("a");
    assertThat(area("a").marks()).hasSize(2);
    assertThat(area("a").marks().get(1).follows()).hasValue(1);
    assertThat(area("a").doorways()).hasSize(2);
    assertThat(area("a").inlays().get(1).middle()).isEqualTo(Spot.mm(4305, 2695));
    assertThat(area("a").inlays().get(1).turn()).isEqualTo(30);
    desk.undo();
    assertThat(desk.site()).isEqualTo(before);
  }

  @Test
  void a_doorway_without_room_beside_it_goes_where_the_wall_has_room() {
    clipboard.copy(area("a"), focus);
    paste("a");
    assertThat(area("a").doorways().get(1).offset().mm()).isZero();
    assertThat(area("a").doorways().get(1).piece()).isZero();
  }

  @Test
  void on_another_floor_things_lie_from_its_first_corner_as_they_lay_from_theirs() {
    clipboard.copy(area("a"), focus);
    paste("b");
    assertThat(area("b").marks().get(0).form().spots().get(0).vec())
        .isEqualTo(new Vec(22_000, 2000));
    assertThat(area("b").marks().get(0).follows()).isEmpty();
    assertThat(area("b").doorways().get(0).offset().mm()).isEqualTo(6500);
    assertThat(area("b").inlays().get(0).middle()).isEqualTo(Spot.mm(24_000, 3000));
  }

  @Test
  void nothing_picked_is_nothing_copied() {
    focus.select();
    assertThat(clipboard.copy(area("a"), focus)).isFalse();
    assertThat(clipboard.paste(area("a"), focus)).isEmpty();
  }
}
