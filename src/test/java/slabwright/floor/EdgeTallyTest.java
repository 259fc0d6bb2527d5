package slabwright.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.floor.Floors.box;
import static slabwright.floor.Floors.rectangle;
import static slabwright.floor.Floors.with;
import static slabwright.floor.Floors.withDoor;

import java.util.List;
import org.junit.jupiter.api.Test;
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
import slabwright.words.Words;

class EdgeTallyTest {
  private static final Words WORDS = Words.english();
  private static final FloorArea ROOM = rectangle(6_000, 4_000);

  @Test
  void a_thin_wall_out_of_the_side_has_one_free_end_and_one_that_stands_alone_two() {
    FloorArea stub = with(ROOM, box("w", new MarkKind.Island(), 2_950, 2_000, 3_050, 4_000));
    FloorArea alone = with(ROOM, box("w", new MarkKind.Island(), 2_000, 1_950, 4_000, 2_050));
    FloorArea post = with(ROOM, box("p", new MarkKind.Column(), 2_000, 2_000, 2_200, 2_200));
    assertThat(tally(stub).ends()).hasSize(1);
    assertThat(tally(stub).ends().get(0).y()).isCloseTo(2_000, within(0.01));
    assertThat(tally(alone).ends()).hasSize(2);
    assertThat(tally(post).ends()).isEmpty();
  }

  @Test
  void corners_are_counted_inside_and_outside() {
    FloorArea post = with(ROOM, box("p", new MarkKind.Column(), 2_000, 2_000, 2_200, 2_200));
    assertThat(tally(post).corners().inside()).hasSize(4);
    assertThat(tally(post).corners().outside()).hasSize(4);
  }

  @Test
  void transitions_are_summed_by_the_kinds_that_meet() {
    FloorArea two =
        with(
            ROOM,
            box("t", new MarkKind.Trench(TrenchLevel.FLUSH, false), 0, 1_000, 6_000, 1_400),
            box("p", new MarkKind.Patch(), 1_000, 1_200, 2_000, 2_400));
    List<EdgeTally.Meeting> meetings = tally(two).transitions();
    assertThat(meetings)
        .extracting(
            m -> WORDS.say(m.below()) + "|" + WORDS.say(m.above()) + "|" + Math.round(m.length()))
        .containsExactlyInAnyOrder(
            "old slab|trench|11000", "old slab|patch|3000", "trench|patch|1400");
  }

  @Test
  void joints_count_on_the_floor_alone() {
    Mark joint =
        Mark.of(
            "j",
            "joint",
            new MarkKind.Joint(Length.mm(5), Length.mm(30)),
            new Form.Trace(List.of(Spot.mm(-500, 1_000), Spot.mm(6_500, 1_000))));
    FloorArea area = with(ROOM, joint, box("i", new MarkKind.Island(), 1_000, 500, 2_000, 1_500));
    EdgeTally.LineMarks lines = tally(area).lines().get(0);
    assertThat(lines.kind()).isEqualTo(MarkType.JOINT);
    assertThat(lines.length()).isCloseTo(5_000, within(0.1));
  }

  @Test
  void each_product_is_cut_in_along_its_own_edges() {
    List<OutlinePiece> pieces =
        List.of(
            OutlinePiece.wall(Spot.mm(0, 0)),
            OutlinePiece.wall(Spot.mm(6_000, 0)),
            new OutlinePiece(Spot.mm(6_000, 4_000), PieceKind.OPEN_EDGE, Length.ZERO),
            OutlinePiece.wall(Spot.mm(0, 4_000)));
    FloorTakeoff t =
        FloorTakeoff.of(withDoor(FloorArea.of("a", "terrace", pieces), 0, 1_000, 1_000));
    assertThat(CutIn.USUAL.length(t)).isCloseTo(13_000, within(0.01));
    assertThat(CutIn.STAIN.length(t)).isCloseTo(14_000, within(0.01));
    assertThat(CutIn.SEALER.length(t)).isCloseTo(20_000, within(0.01));
  }

  @Test
  void a_trench_says_how_long_and_wide_it_is_and_what_is_due() {
    Mark strip =
        Mark.of(
            "t",
            "drain",
            new MarkKind.Trench(TrenchLevel.PROUD, false),
            new Form.Strip(
                List.of(Spot.mm(-300, 1_000), Spot.mm(3_000, 1_000), Spot.mm(3_000, 3_000)),
                Length.mm(400)));
    TrenchWork work = TrenchWork.of(FloorTakeoff.of(with(ROOM, strip))).get(0);
    assertThat(work.length().orElseThrow()).isCloseTo(5_000, within(0.1));
    assertThat(work.width().orElseThrow()).isEqualTo(400);
    assertThat(work.area()).isCloseTo(400 * 5_000, within(1.0));
    assertThat(work.handFound()).isCloseTo(work.area(), within(1.0));
    assertThat(WORDS.say(work.due()))
        .isEqualTo("first measure its height, then grind flush by hand");
  }

  private static EdgeTally tally(FloorArea area) {
    return FloorTakeoff.of(area).tally();
  }
}
