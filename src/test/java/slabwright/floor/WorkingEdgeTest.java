package slabwright.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.floor.Floors.box;
import static slabwright.floor.Floors.rectangle;
import static slabwright.floor.Floors.with;
import static slabwright.floor.Floors.withDoor;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.TrenchLevel;

class WorkingEdgeTest {
  private static final MarkKind PROUD = new MarkKind.Trench(TrenchLevel.PROUD, false);

  private static Optional<WorkingEdge> along(FloorArea area, String mark) {
    return WorkingEdge.of(FloorTakeoff.of(area)).stream()
        .filter(e -> e.along().filter(m -> m.id().equals(mark)).isPresent())
        .findFirst();
  }

  /** A trench of 2,000 by 400, its right end under a patch that was laid before or after it. */
  private static FloorArea patched(boolean patchLater) {
    Mark trench = box("t", PROUD, 2_000, 2_000, 4_000, 2_400);
    Mark patch = box("p", new MarkKind.Patch(), patchLater ? 4_000 : 3_500, 1_500, 5_000, 3_000);
    FloorArea room = rectangle(8_000, 5_000);
    return patchLater ? with(room, trench, patch) : with(room, patch, trench);
  }

  @Test
  void a_trench_is_worked_along_on_all_its_sides_with_the_driven_floor_on_the_left() {
    for (boolean later : List.of(true, false)) {
      WorkingEdge edge = along(patched(later), "t").orElseThrow();
      assertThat(edge.length()).as("patch later: %s", later).isCloseTo(4_800, within(0.01));
      assertThat(edge.edge()).isEmpty();
      for (Line line : edge.lines()) {
        for (int i = 0; i + 1 < line.points().size(); i++) {
          Vec a = line.points().get(i);
          Vec b = line.points().get(i + 1);
          Vec left = a.towards(b, 0.5).plus(b.minus(a).unit().left().times(10));
          boolean inTrench =
              left.x() > 2_000 && left.x() < 4_000 && left.y() > 2_000 && left.y() < 2_400;
          assertThat(inTrench).as("%s to %s", a, b).isFalse();
        }
      }
    }
  }

  @Test
  void between_two_marks_that_are_driven_over_nothing_is_worked_along() {
    FloorArea area =
        with(
            rectangle(8_000, 5_000),
            box("p", new MarkKind.Patch(), 1_000, 1_000, 2_000, 2_000),
            box("q", new MarkKind.Residue("glue"), 2_000, 1_000, 3_000, 2_000),
            box("f", new MarkKind.Trench(TrenchLevel.FLUSH, false), 5_000, 0, 5_400, 5_000));
    assertThat(WorkingEdge.of(FloorTakeoff.of(area))).allMatch(e -> e.along().isEmpty());
  }

  @Test
  void a_way_in_is_crossed_and_another_doorway_is_worked_along() {
    FloorArea two = withDoor(withDoor(rectangle(8_000, 5_000), 0, 1_000, 900), 2, 1_000, 800);
    FloorArea area =
        two.withDoorways(List.of(two.doorways().get(0), two.doorways().get(1).withWayIn(false)));
    double all =
        WorkingEdge.of(FloorTakeoff.of(area)).stream().mapToDouble(WorkingEdge::length).sum();
    assertThat(all).isCloseTo(26_000 - 900, within(0.01));
  }

  @Test
  void how_far_it_is_to_an_edge_and_where_it_lies_is_told_of_all_its_lines() {
    WorkingEdge edge =
        new WorkingEdge(
            Optional.empty(),
            Optional.empty(),
            List.of(
                Line.of(new Vec(0, 0), new Vec(1_000, 0)),
                Line.of(new Vec(3_000, 500), new Vec(3_000, 2_000))));
    assertThat(edge.distanceTo(new Vec(500, 300))).isCloseTo(300, within(1e-9));
    assertThat(edge.distanceTo(new Vec(2_600, 900))).isCloseTo(400, within(1e-9));
    assertThat(edge.distanceTo(new Vec(-300, 400))).isCloseTo(500, within(1e-9));
    assertThat(edge.bounds()).isEqualTo(new Bounds(0, 0, 3_000, 2_000));
    assertThat(edge.length()).isCloseTo(2_500, within(1e-9));
  }
}
