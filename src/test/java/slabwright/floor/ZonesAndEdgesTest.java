package slabwright.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.floor.Floors.box;
import static slabwright.floor.Floors.rectangle;
import static slabwright.floor.Floors.with;
import static slabwright.floor.Floors.withDoor;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.site.EdgeClass;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.MarkType;
import slabwright.site.OutlinePiece;
import slabwright.site.PieceKind;
import slabwright.site.Spot;
import slabwright.site.TrenchLevel;
import slabwright.units.Length;

class ZonesAndEdgesTest {
  private static final MarkKind PROUD = new MarkKind.Trench(TrenchLevel.PROUD, false);

  @Test
  void what_stands_subtracts_even_from_marks_laid_later() {
    FloorTakeoff t =
        FloorTakeoff.of(
            with(
                rectangle(10_000, 5_000),
                box("i", new MarkKind.Island(), 2_000, 2_000, 3_000, 3_000),
                box("p", new MarkKind.Patch(), 2_500, 2_000, 4_000, 3_000)));
    assertThat(t.gross().area()).isEqualTo(50e6);
    assertThat(t.net().area()).isEqualTo(49e6);
    assertThat(t.zoneArea(MarkType.PATCH)).isEqualTo(1e6);
    assertThat(t.slabArea()).isEqualTo(48e6);
    assertThat(t.standing()).singleElement().satisfies(s -> assertThat(s.area()).isEqualTo(1e6));
  }

  @Test
  void among_floor_kinds_the_later_lies_on_top() {
    FloorTakeoff t =
        FloorTakeoff.of(
            with(
                rectangle(10_000, 5_000),
                box("t", PROUD, 0, 2_000, 10_000, 2_400),
                box("p", new MarkKind.Patch(), 1_000, 1_000, 2_000, 3_000)));
    assertThat(t.zoneArea(MarkType.TRENCH)).isEqualTo(9_000.0 * 400);
    assertThat(t.zoneArea(MarkType.PATCH)).isEqualTo(2e6);
  }

  @Test
  void edges_are_classed_by_what_the_floor_meets() {
    FloorTakeoff t =
        FloorTakeoff.of(
            withDoor(
                with(
                    rectangle(10_000, 5_000),
                    box("i", new MarkKind.Island(), 2_000, 2_000, 3_000, 3_000),
                    box("b", new MarkKind.Booth(), 8_000, 4_000, 9_000, 5_000)),
                0,
                4_000,
                1_000));
    assertThat(t.edgeLength(EdgeClass.WALL)).isEqualTo(30_000 - 1_000 - 1_000);
    assertThat(t.edgeLength(EdgeClass.DOORWAY)).isEqualTo(1_000);
    assertThat(t.edgeLength(EdgeClass.ISLAND)).isEqualTo(4_000);
    assertThat(t.edgeLength(EdgeClass.BOOTH)).isEqualTo(3_000);
    assertThat(t.edgeLength()).isCloseTo(t.net().boundaryLength(), within(1e-6));
    assertThat(t.cutIn()).isEqualTo(28_000 + 4_000 + 3_000);
  }

  @Test
  void a_doorway_keeps_its_own_edge_apart_from_its_wall() {
    FloorTakeoff t = FloorTakeoff.of(withDoor(rectangle(10_000, 5_000), 0, 4_000, 1_000));
    assertThat(t.edges())
        .filteredOn(e -> e.piece().orElse(-1) == 0)
        .extracting(Edge::kind)
        .containsExactly(EdgeClass.WALL, EdgeClass.DOORWAY);
    assertThat(t.edges().get(0).lines()).hasSize(2);
  }

  @Test
  void open_edges_and_kerbs_are_told_apart_and_open_edges_are_not_cut_in() {
    FloorArea terrace =
        FloorArea.of(
            "t",
            "terrace",
            List.of(
                OutlinePiece.wall(Spot.mm(0, 0)),
                new OutlinePiece(Spot.mm(6_000, 0), PieceKind.OPEN_EDGE, Length.ZERO),
                new OutlinePiece(Spot.mm(6_000, 3_000), PieceKind.KERB, Length.ZERO),
                OutlinePiece.wall(Spot.mm(0, 3_000))));
    FloorTakeoff t = FloorTakeoff.of(terrace);
    assertThat(t.edgeLength(EdgeClass.OPEN_EDGE)).isEqualTo(3_000);
    assertThat(t.edgeLength(EdgeClass.KERB)).isEqualTo(6_000);
    assertThat(t.cutIn()).isEqualTo(15_000);
  }

  @Test
  void trench_edges_are_transitions_and_no_edges() {
    FloorTakeoff t =
        FloorTakeoff.of(with(rectangle(10_000, 5_000), box("t", PROUD, 4_000, 0, 4_400, 5_000)));
    assertThat(t.transitions())
        .singleElement()
        .satisfies(x -> assertThat(x.length()).isEqualTo(10_000));
    assertThat(t.transitions().get(0).lines()).hasSize(2);
    assertThat(t.edgeLength()).isEqualTo(30_000);
  }

  @Test
  void a_mark_that_runs_past_the_outline_is_clipped_with_a_note() {
    FloorTakeoff t =
        FloorTakeoff.of(with(rectangle(10_000, 5_000), box("t", PROUD, 4_000, -300, 4_400, 5_300)));
    assertThat(t.zoneArea(MarkType.TRENCH)).isEqualTo(400 * 5_000);
    assertThat(t.notes()).anyMatch(n -> n.markId().equals("t") && n.where().isPresent());
    assertThat(t.refusals()).isEmpty();
  }

  @Test
  void a_mark_wholly_outside_is_refused_with_its_place() {
    FloorTakeoff t =
        FloorTakeoff.of(
            with(rectangle(10_000, 5_000), box("p", new MarkKind.Patch(), 11_000, 0, 12_000, 900)));
    assertThat(t.refusals())
        .singleElement()
        .satisfies(r -> assertThat(r.place()).isEqualTo("marks[0].form"));
    assertThat(t.net().area()).isEqualTo(50e6);
  }

  @Test
  void a_round_column_on_a_curved_wall_leaves_edges_that_sum() {
    FloorArea round =
        FloorArea.of(
            "r",
            "apse",
            List.of(
                OutlinePiece.wall(Spot.mm(0, 0)),
                new OutlinePiece(Spot.mm(6_000, 0), PieceKind.WALL, Length.mm(3_000)),
                OutlinePiece.wall(Spot.mm(6_000, 6_000)),
                OutlinePiece.wall(Spot.mm(0, 6_000))));
    FloorTakeoff t =
        FloorTakeoff.of(
            with(
                round,
                Mark.of(
                    "c",
                    "c",
                    new MarkKind.Column(),
                    new Form.Circle(Spot.mm(9_000, 3_000), Length.mm(300)))));
    assertThat(t.gross().area()).isCloseTo(36e6 + Math.PI * 9e6 / 2, within(5_000.0));
    assertThat(t.edgeLength()).isCloseTo(t.net().boundaryLength(), within(1e-6));
    assertThat(t.edgeLength(EdgeClass.COLUMN)).isBetween(800.0, 1_000.0);
  }

  @Test
  void signs_and_lines_own_no_floor() {
    FloorTakeoff t =
        FloorTakeoff.of(
            with(
                rectangle(10_000, 5_000),
                box("d", new MarkKind.Detector(), 1_000, 1_000, 2_000, 2_000),
                Mark.of(
                    "j",
                    "j",
                    new MarkKind.Joint(Length.mm(4), Length.mm(40)),
                    new Form.Trace(List.of(Spot.mm(0, 2_500), Spot.mm(10_000, 2_500))))));
    assertThat(t.zones()).singleElement().satisfies(z -> assertThat(z.mark()).isEmpty());
  }

  /** A patch and a trench run along the walls; what they are bordered by are still the walls. */
  @Test
  void edges_are_listed_by_class_and_then_by_piece_whatever_lies_along_them() {
    FloorTakeoff t =
        FloorTakeoff.of(
            with(
                withDoor(withDoor(rectangle(10_000, 5_000), 2, 1_000, 900), 0, 2_000, 1_000),
                box("p", new MarkKind.Patch(), 0, 0, 1_500, 5_000),
                box("t", PROUD, 4_000, 4_000, 10_000, 5_000)));
    assertThat(t.edges())
        .extracting(Edge::kind)
        .containsExactly(
            EdgeClass.WALL,
            EdgeClass.WALL,
            EdgeClass.WALL,
            EdgeClass.WALL,
            EdgeClass.DOORWAY,
            EdgeClass.DOORWAY);
    assertThat(t.edges())
        .extracting(e -> e.piece().orElseThrow())
        .containsExactly(0, 1, 2, 3, 0, 2);
    assertThat(t.edges())
        .extracting(Edge::length)
        .containsExactly(9_000.0, 5_000.0, 9_100.0, 5_000.0, 1_000.0, 900.0);
  }
}
