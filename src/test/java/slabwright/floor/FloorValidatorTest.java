package slabwright.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static slabwright.floor.Floors.box;
import static slabwright.floor.Floors.machine;
import static slabwright.floor.Floors.rectangle;
import static slabwright.floor.Floors.with;
import static slabwright.floor.Floors.withDoor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.Spot;
import slabwright.units.Length;
import slabwright.units.Message;

/** What is said of marks on a hall of 8 by 6 m. */
class FloorValidatorTest {
  private static final FloorArea HALL =
      withDoor(rectangle(8_000, 6_000), 0, 1_000, 1_000)
          .withMachines(List.of(machine(740, 700, 50)));
  private static final String PAST = "floor.validator.mark-runs-past-outline";

  private static Mark joint(String name, double... xy) {
    List<Spot> path = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      path.add(Spot.mm(xy[i], xy[i + 1]));
    }
    return Mark.of(
        "j1", name, new MarkKind.Joint(Length.mm(4), Length.mm(30)), new Form.Trace(path));
  }

  private static List<FloorNote> notes(Mark... marks) {
    return FloorTakeoff.of(with(HALL, marks)).notes();
  }

  @Test
  void a_joint_that_runs_out_of_the_floor_is_noted_where_it_lies_outside() {
    assertThat(notes(joint("saw cut", 1_000, 3_000, 9_000, 3_000)))
        .containsExactly(
            new FloorNote(Message.of(PAST, "saw cut"), "j1", Optional.of(new Vec(9_000, 3_000))));
    assertThat(notes(joint("saw cut", 1_000, 3_000, 7_000, 3_000))).isEmpty();
  }

  @Test
  void a_mark_without_a_name_is_called_by_its_number() {
    assertThat(notes(joint(" ", 1_000, 3_000, 9_000, 3_000)))
        .extracting(FloorNote::message)
        .containsExactly(Message.of(PAST, "j1"));
  }

  @Test
  void a_patch_is_noted_where_it_runs_out_and_refused_where_it_lies_outside() {
    List<FloorNote> notes = notes(box("p", new MarkKind.Patch(), 7_000, 1_000, 9_000, 2_000));
    assertThat(notes).extracting(FloorNote::markId).containsExactly("p");
    assertThat(notes.get(0).where().orElseThrow().x()).isBetween(8_000.0, 9_000.0);
    FloorTakeoff outside =
        FloorTakeoff.of(with(HALL, box("p", new MarkKind.Patch(), 9_000, 1_000, 9_500, 2_000)));
    assertThat(outside.notes()).isEmpty();
    assertThat(outside.refusals())
        .extracting(r -> r.message())
        .containsExactly(Message.of("floor.validator.mark-outside-outline", "p"));
  }

  @Test
  void a_change_of_level_is_said_to_be_taken_as_passable() {
    Mark step =
        Mark.of(
            "s",
            "kerb drop",
            new MarkKind.LevelChange(Length.mm(15)),
            new Form.Trace(List.of(Spot.mm(2_000, 1_000), Spot.mm(2_000, 5_000))));
    assertThat(notes(step))
        .containsExactly(
            new FloorNote(
                Message.of("floor.validator.level-change-taken-as-passable", "kerb drop"),
                "s",
                Optional.of(new Vec(2_000, 1_000))));
  }

  @Test
  void without_a_machine_or_a_way_in_for_it_that_is_said() {
    assertThat(FloorTakeoff.of(HALL.withMachines(List.of())).notes())
        .extracting(FloorNote::message)
        .containsExactly(Message.of("floor.validator.no-machine", "hall"));
    List<Doorway> shut = HALL.doorways().stream().map(d -> d.withWayIn(false)).toList();
    assertThat(FloorTakeoff.of(HALL.withDoorways(shut)).notes())
        .extracting(FloorNote::message)
        .containsExactly(Message.of("floor.validator.no-way-in", "hall"));
    assertThat(notes()).isEmpty();
  }
}
