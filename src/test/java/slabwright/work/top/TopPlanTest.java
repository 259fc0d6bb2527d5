package slabwright.work.top;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import slabwright.floor.FloorTakeoff;
import slabwright.shape.Vec;
import slabwright.site.Exposure;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.OutlinePiece;
import slabwright.site.Spot;
import slabwright.units.Length;
import slabwright.units.QuantityFormat;
import slabwright.work.Said;
import slabwright.work.book.BookSamples;
import slabwright.work.book.Figure;
import slabwright.work.book.ShopBook;

class TopPlanTest {
  private static final Offset<Double> GRID = within(0.01);
  private static final ShopBook BOOK = BookSamples.book();

  private static TopTakeoff foot(Form form, double thickness, int steps) {
    return feet(mark("top", form, thickness, steps)).get(0);
  }

  private static Mark mark(String id, Form form, double thickness, int steps) {
    return Mark.of(id, "Bar top", new MarkKind.TopOrStep(Length.mm(thickness), steps), form);
  }

  private static List<TopTakeoff> feet(Mark... marks) {
    List<OutlinePiece> room =
        List.of(
            OutlinePiece.wall(Spot.mm(0, 0)),
            OutlinePiece.wall(Spot.mm(6000, 0)),
            OutlinePiece.wall(Spot.mm(6000, 5000)),
            OutlinePiece.wall(Spot.mm(0, 5000)));
    return TopTakeoff.of(
        FloorTakeoff.of(FloorArea.of("a", "Room", room).withMarks(List.of(marks))));
  }

  private static Form box(double x, double y, double length, double width, double turn) {
    return new Form.Rectangle(
        Spot.of(new Vec(x, y)), Length.mm(length), Length.mm(width), Length.ZERO, turn);
  }

  @Test
  void a_top_in_the_open_has_four_free_sides() {
    TopTakeoff top = foot(box(3000, 2500, 2000, 600, 0), 40, 1);
    assertThat(top.face()).isEqualTo(1.2e6, within(1.0));
    assertThat(top.freeSides()).isEqualTo(5200, GRID);
    assertThat(top.edgeArea()).isEqualTo(5200 * 40, within(1.0));
  }

  @Test
  void the_side_against_a_wall_is_not_ground() {
    assertThat(foot(box(3000, 300, 2000, 600, 0), 40, 1).freeSides()).isEqualTo(3200, GRID);
  }

  @Test
  void a_top_in_a_corner_has_two_free_sides() {
    assertThat(foot(box(1000, 300, 2000, 600, 0), 40, 1).freeSides()).isEqualTo(2600, GRID);
  }

  @Test
  void what_reaches_into_the_wall_is_cut_off_at_it() {
    TopTakeoff top = foot(box(3000, 200, 2000, 600, 0), 40, 1);
    assertThat(top.face()).isEqualTo(2000 * 500, within(1.0));
    assertThat(top.freeSides()).isEqualTo(3000, GRID);
  }

  /**
   * Five treads of 280 mm, 1.2 m wide, up against a wall: four nosings inside, three free sides.
   */
  @Test
  void steps_have_a_front_edge_each() {
    TopTakeoff steps = foot(box(3000, 4300, 1200, 1400, 0), 50, 5);
    assertThat(steps.tread()).isEqualTo(280, GRID);
    assertThat(steps.nosing()).isEqualTo(1200, GRID);
    assertThat(steps.edgeLength()).isEqualTo(1200 + 2 * 1400 + 4 * 1200, GRID);
  }

  @Test
  void the_way_up_does_not_depend_on_how_the_steps_were_drawn() {
    TopTakeoff steps = foot(box(3000, 2500, 1400, 1200, 90), 50, 5);
    assertThat(steps.tread()).isEqualTo(280, GRID);
    Form corners =
        new Form.Polygon(
            List.of(
                Spot.mm(1000, 1000),
                Spot.mm(2200, 1000),
                Spot.mm(2200, 2400),
                Spot.mm(1000, 2400)));
    assertThat(foot(corners, 50, 5).nosing()).isEqualTo(1200, GRID);
  }

  @Test
  void every_top_of_an_area_is_found() {
    assertThat(
            feet(
                mark("a", box(1000, 2500, 500, 500, 0), 40, 1),
                mark("b", box(3000, 2500, 500, 500, 0), 40, 1)))
        .extracting(TopTakeoff::id)
        .containsExactly("a", "b");
  }

  /**
   * By hand, example book: cream takes metal 120 at 24 and resin 200 at 28 ft² an hour, dust 180
   * and 60 g/m².
   */
  @Test
  void hours_and_dust_are_those_of_the_shop_book_s_hand_rates() {
    double ft2 = QuantityFormat.SQUARE_FOOT_MM2;
    TopTakeoff top = new TopTakeoff("t", "Bar top", 16 * ft2, 8 * 304.8, 1, 0, 0, 304.8);
    TopPlan job = TopPlan.of(top, Optional.of(Exposure.CREAM), BOOK);
    assertThat(job.passes()).extracting(TopPass::grit).containsExactly("metal 120", "resin 200");
    assertThat(job.passes().get(0).face()).isEqualTo(Figure.known(Duration.ofMinutes(40)));
    assertThat(job.passes().get(0).edge()).isEqualTo(Figure.known(Duration.ofMinutes(20)));
    assertThat(job.time().maybe().orElseThrow().toSeconds())
        .isCloseTo(Math.round(3600 + 24 * 3600 / 28.0), within(1L));
    assertThat(job.dust().maybe().orElseThrow()).isEqualTo(24 * ft2 * 240e-9, within(1e-9));
  }

  @Test
  void a_coarser_wish_takes_more_passes() {
    TopTakeoff top = foot(box(3000, 2500, 2000, 600, 0), 40, 1);
    assertThat(TopPlan.of(top, Optional.of(Exposure.COARSE), BOOK).passes())
        .hasSizeGreaterThan(TopPlan.of(top, Optional.of(Exposure.CREAM), BOOK).passes().size());
  }

  @Test
  void without_a_wish_nothing_is_guessed() {
    TopTakeoff top = foot(box(3000, 2500, 2000, 600, 0), 40, 1);
    TopPlan job = TopPlan.of(top, Optional.empty(), BOOK);
    assertThat(Said.of(job.time().text(Duration::toString)))
        .contains("choose the aggregate exposure");
  }

  @Test
  void a_tread_is_taken_to_be_11_inches_deep() {
    assertThat(TopTakeoff.USUAL_TREAD).isEqualTo(11 * 25.4);
  }
}
