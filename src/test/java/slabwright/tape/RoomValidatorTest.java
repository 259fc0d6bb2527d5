package slabwright.tape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.site.PieceKind;
import slabwright.units.Length;
import slabwright.units.Message;

/** Which readings are turned away before any sum, at the very limits. */
class RoomValidatorTest {
  private static final String PLACE = "no-such-corner";
  private static final String SIZE = "no-usable-size";
  private static final Optional<Length> NONE = Optional.empty();

  private static String refusal(TapeRoom room) {
    return RoomValidator.refusal(room)
        .map(Message::key)
        .map(k -> k.replace("tape.room-validator.", ""))
        .orElse("");
  }

  private static String of(Reading reading) {
    return refusal(TapeRoom.of(4).with(reading));
  }

  private static Reading wall(int wall, double mm) {
    return new Reading.Wall(wall, Length.mm(mm), NONE);
  }

  private static Reading turn(int corner, double degrees) {
    return new Reading.Turn(corner, degrees, Reading.Trust.READ, Optional.empty());
  }

  private static Reading curve(double rise) {
    return new Reading.Curve(0, Length.mm(4000), Length.mm(rise), true, NONE);
  }

  @Test
  void a_room_has_three_to_two_hundred_walls() {
    assertThat(refusal(TapeRoom.of(2))).isEqualTo("number-of-walls");
    assertThat(refusal(TapeRoom.of(3))).isEmpty();
    assertThat(refusal(TapeRoom.of(200))).isEmpty();
    assertThat(refusal(TapeRoom.of(201))).isEqualTo("number-of-walls");
  }

  @Test
  void a_tape_errs_by_something_and_its_share_may_be_nothing() {
    TapeRoom room = TapeRoom.of(4);
    assertThat(refusal(room.withTapeError(new TapeError(Length.mm(0), 0)))).isEqualTo("tape-error");
    assertThat(refusal(room.withTapeError(new TapeError(Length.mm(1), -1e-9))))
        .isEqualTo("tape-error");
    assertThat(refusal(room.withTapeError(new TapeError(Length.mm(1), 0)))).isEmpty();
  }

  @Test
  void a_size_is_more_than_nothing_and_less_than_ten_kilometres() {
    assertThat(of(wall(0, 0))).isEqualTo(SIZE);
    assertThat(of(wall(0, 0.001))).isEmpty();
    assertThat(of(wall(0, 1e7))).isEqualTo(SIZE);
    assertThat(of(wall(0, 9_999_999))).isEmpty();
    assertThat(of(new Reading.Wall(0, Length.mm(1), Optional.of(Length.mm(0))))).isEqualTo(SIZE);
    assertThat(of(new Reading.Wall(0, Length.mm(1), Optional.of(Length.mm(1))))).isEmpty();
  }

  @Test
  void a_turn_is_at_most_half_a_circle_and_a_rise_less_than_a_kilometre() {
    assertThat(of(turn(1, 180))).isEmpty();
    assertThat(of(turn(1, -180))).isEmpty();
    assertThat(of(turn(1, 180.1))).isEqualTo(SIZE);
    assertThat(of(curve(0))).isEqualTo(SIZE);
    assertThat(of(curve(1))).isEmpty();
    assertThat(of(curve(1e6))).isEqualTo(SIZE);
  }

  @Test
  void every_corner_and_wall_that_a_reading_names_is_one_of_the_room() {
    Length one = Length.mm(1000);
    assertThat(of(wall(4, 1000))).isEqualTo(PLACE);
    assertThat(of(wall(-1, 1000))).isEqualTo(PLACE);
    assertThat(of(wall(3, 1000))).isEmpty();
    assertThat(of(turn(4, 90))).isEqualTo(PLACE);
    assertThat(of(new Reading.Diagonal(0, 4, one, NONE))).isEqualTo(PLACE);
    assertThat(of(new Reading.Diagonal(4, 0, one, NONE))).isEqualTo(PLACE);
    assertThat(of(new Reading.Diagonal(2, 2, one, NONE))).isEqualTo(PLACE);
    assertThat(of(new Reading.CornerToWall(4, 1, one, NONE))).isEqualTo(PLACE);
    assertThat(of(new Reading.CornerToWall(0, 4, one, NONE))).isEqualTo(PLACE);
    assertThat(of(new Reading.CornerToSpot(4, 1, one, one, NONE))).isEqualTo(PLACE);
    assertThat(of(new Reading.CornerToSpot(0, 4, one, one, NONE))).isEqualTo(PLACE);
    assertThat(of(new Reading.WallToWall(4, 1, one, NONE))).isEqualTo(PLACE);
    assertThat(of(new Reading.WallToWall(0, 4, one, NONE))).isEqualTo(PLACE);
  }

  @Test
  void the_last_corner_that_there_is_is_named() {
    assertThat(RoomValidator.refusal(TapeRoom.of(4).with(wall(4, 1000))).orElseThrow().values())
        .containsExactly("D");
  }

  @Test
  void no_check_ends_on_a_curved_wall() {
    Length one = Length.mm(1000);
    TapeRoom bowed =
        TapeRoom.of(4).with(new Reading.Curve(2, Length.mm(4000), Length.mm(90), true, NONE));
    String on = "ends-on-curve";
    assertThat(refusal(bowed.with(new Reading.CornerToWall(0, 2, one, NONE)))).isEqualTo(on);
    assertThat(refusal(bowed.with(new Reading.CornerToSpot(0, 2, one, one, NONE)))).isEqualTo(on);
    assertThat(refusal(bowed.with(new Reading.WallToWall(0, 2, one, NONE)))).isEqualTo(on);
    assertThat(refusal(bowed.with(new Reading.CornerToWall(0, 1, one, NONE)))).isEmpty();
  }

  @Test
  void a_note_is_of_a_wall_that_there_is() {
    assertThat(refusal(TapeRoom.of(4).with(new WallNote.Ends(4, PieceKind.KERB))))
        .isEqualTo("no-such-wall");
    assertThat(refusal(TapeRoom.of(4).with(new WallNote.Ends(3, PieceKind.KERB)))).isEmpty();
  }
}
