package slabwright.desk.model.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.desk.model.PlanItem;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.OutlinePiece;
import slabwright.site.Spot;
import slabwright.units.Length;

class PickOrderTest {
  private static FloorArea room() {
    List<OutlinePiece> walls =
        List.of(
            OutlinePiece.wall(Spot.mm(0, 0)),
            OutlinePiece.wall(Spot.mm(8000, 0)),
            OutlinePiece.wall(Spot.mm(0, 6000)));
    Form round = new Form.Circle(Spot.mm(1000, 1000), Length.mm(200));
    return FloorArea.of("a1", "Shed", walls)
        .withDoorways(List.of(door("d1", 5000), door("d2", 1000)))
        .withMarks(List.of(Mark.of("m1", "post", new MarkKind.Island(), round)));
  }

  private static Doorway door(String id, double offset) {
    return new Doorway(id, id, 0, Length.mm(offset), Length.mm(900), false);
  }

  private static List<PlanItem> walked(boolean back) {
    List<PlanItem> all = new ArrayList<>();
    Optional<PlanItem> at = PickOrder.next(room(), all, back);
    while (at.isPresent() && !all.contains(at.get())) {
      all.add(at.get());
      at = PickOrder.next(room(), List.of(at.get()), back);
    }
    return all;
  }

  @Test
  void keys_go_round_the_outline_then_to_the_marks() {
    assertThat(walked(false))
        .containsExactly(
            new PlanItem.OfCorner(0),
            new PlanItem.OfWall(0),
            new PlanItem.OfDoorway("d2"),
            new PlanItem.OfDoorway("d1"),
            new PlanItem.OfCorner(1),
            new PlanItem.OfWall(1),
            new PlanItem.OfCorner(2),
            new PlanItem.OfWall(2),
            new PlanItem.OfMark("m1"));
  }

  @Test
  void and_back_the_other_way() {
    assertThat(walked(true)).startsWith(new PlanItem.OfMark("m1"), new PlanItem.OfWall(2));
    assertThat(walked(true)).containsExactlyInAnyOrderElementsOf(walked(false));
  }

  @Test
  void of_several_picked_it_is_the_one_after_the_last_or_before_the_first() {
    List<PlanItem> two = List.of(new PlanItem.OfWall(1), new PlanItem.OfCorner(1));
    assertThat(PickOrder.next(room(), two, false)).contains(new PlanItem.OfCorner(2));
    assertThat(PickOrder.next(room(), two, true)).contains(new PlanItem.OfDoorway("d1"));
  }
}
