package slabwright.tape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.tape.AdjustmentFixtures.adjusted;

import org.junit.jupiter.api.Test;
import slabwright.shape.Affine;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.OutlinePiece;
import slabwright.site.OutlineShape;
import slabwright.site.PieceKind;
import slabwright.units.Length;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

class TapedOutlineTest {
  private static final String[] HALL = {
    "wall 10 m left",
    "wall 6 m left",
    "curve 10 m rise 1.5 m outward left",
    "wall 6 m left",
    "diagonal A C 11.662 m",
    "diagonal B D 11.662 m",
    "open D-A",
    "doorway A-B at 3 m wide 0.9 m way in"
  };

  private static final Affine AWAY = Affine.turn(Math.PI / 2).then(Affine.move(500, 700));

  private final AdjustedRoom hall = adjusted(HALL);

  private FloorArea area() {
    return TapedOutline.area("hall", "Hall", hall, AWAY, Words.english()::say);
  }

  @Test
  void walls_become_pieces_in_walking_order() {
    assertThat(area().outline()).hasSize(4);
    assertThat(area().outline()).extracting(OutlinePiece::kind).endsWith(PieceKind.OPEN_EDGE);
    assertThat(area().outline().get(2).rise().typed()).isEqualTo("1.5 m");
  }

  @Test
  void the_placing_moves_and_turns() {
    Vec second = area().outline().get(1).from().vec();
    assertThat(second.distanceTo(new Vec(500, 10_700))).isLessThan(1);
  }

  @Test
  void the_area_is_that_of_the_room() {
    double floor = OutlineShape.of(area().outline(), 0.01).region().area();
    assertThat(floor).isEqualTo(hall.area(), within(hall.area() * 1e-5));
  }

  @Test
  void a_room_walked_the_other_way_encloses_the_same() {
    AdjustedRoom right =
        adjusted(
            "wall 10 m right",
            "wall 6 m right",
            "curve 10 m rise 1.5 m outward right",
            "wall 6 m right",
            "diagonal A C 11.662 m",
            "diagonal B D 11.662 m");
    FloorArea area =
        TapedOutline.area("hall", "Hall", right, Affine.IDENTITY, Words.english()::say);
    double floor = OutlineShape.of(area.outline(), 0.01).region().area();
    assertThat(floor).isEqualTo(hall.area(), within(hall.area() * 1e-5));
  }

  @Test
  void doorways_come_along() {
    assertThat(area().doorways()).hasSize(1);
    assertThat(area().doorways().get(0).offset().typed()).isEqualTo("3 m");
    assertThat(area().doorways().get(0).wayIn()).isTrue();
  }

  @Test
  void a_typed_wall_is_one_reading_more_and_the_room_readjusts() {
    TapeRoom more = TapedOutline.withTypedLength(hall, 0, 1, Length.parse("10.01 m").orThrow());
    assertThat(more.readings()).hasSize(hall.room().readings().size() + 1);
    AdjustedRoom again = ((RoomResult.Adjusted) RoomAdjustment.of(more, UnitSystem.METRIC)).room();
    assertThat(again.corners().get(1).at().x()).isBetween(hall.corners().get(1).at().x(), 10_010.0);
  }

  @Test
  void a_typed_wall_takes_the_place_of_one_that_was_left_out() {
    String[] lines = HALL.clone();
    lines[0] = "wall 100 m left";
    AdjustedRoom wrong = adjusted(lines);
    TapeRoom again = TapedOutline.withTypedLength(wrong, 1, 0, Length.parse("10 m").orThrow());
    assertThat(again).isEqualTo(hall.room());
  }

  @Test
  void a_room_readjusted_stays_where_it_is() {
    FloorArea moved =
        TapedOutline.inPlaceOf(area(), adjusted(HALL[0], HALL[1], "wall 10 m left", HALL[3]))
            .change(area())
            .orElseThrow();
    assertThat(moved.outline().get(0).from().vec().distanceTo(new Vec(500, 700))).isLessThan(1e-6);
    assertThat(moved.outline().get(1).from().x().mm()).isEqualTo(500, within(1e-6));
    assertThat(moved.outline()).extracting(OutlinePiece::kind).endsWith(PieceKind.OPEN_EDGE);
  }
}
