package slabwright.tape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static slabwright.tape.AdjustmentFixtures.adjusted;
import static slabwright.tape.AdjustmentFixtures.and;
import static slabwright.tape.AdjustmentFixtures.kinds;
import static slabwright.tape.AdjustmentFixtures.result;
import static slabwright.tape.AdjustmentFixtures.sentences;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import slabwright.tape.AdjustedRoom.Method;
import slabwright.units.Length;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

class RoomAdjustmentTest {
  private static final String[] PLAIN = {
    "wall 24' 6\" right", "wall 12' 3\" right", "wall 24' 5 1/2\" right", "wall 12' 3 1/4\" right"
  };

  private static final String[] MISREAD = {
    "wall 42' right",
    "wall 12' 3\" right",
    "wall 24' 1/2\" right",
    "wall 12' 3 1/4\" right",
    "diagonal A C 26' 11 3/8\"",
    "diagonal B D 26' 11 3/8\""
  };

  @Test
  void walls_and_turns_alone_are_closed_by_the_compass_rule() {
    AdjustedRoom room = adjusted(PLAIN);
    assertThat(room.method()).isEqualTo(Method.COMPASS_RULE);
    assertThat(room.closing().gap().length()).isEqualTo(Math.hypot(12.7, 6.35), within(1e-6));
    assertThat(room.closing().oneIn()).isEqualTo(1577);
    assertThat(room.areaSd()).isEmpty();
  }

  @Test
  void a_diagonal_brings_least_squares() {
    AdjustedRoom room = adjusted(and(PLAIN, "diagonal A C 27' 4 1/2\""));
    assertThat(room.method()).isEqualTo(Method.LEAST_SQUARES);
    assertThat(room.corners()).allMatch(c -> c.ellipse().isPresent());
  }

  @Test
  void a_room_walked_to_the_right_lies_below_its_first_wall() {
    assertThat(adjusted(PLAIN).counterClockwise()).isFalse();
    assertThat(adjusted(PLAIN).corners().get(2).at().y()).isNegative();
  }

  private static final String[] ONE_IN_200 = {
    "wall 10 m left", "wall 10 m left", "wall 10.2 m left", "wall 10 m left"
  };

  @Test
  void a_walk_that_closes_to_1_in_200_is_called_bad_where_1_in_500_is_stated() {
    String[] stated = and(new String[] {"closing limit 1/500"}, ONE_IN_200);
    assertThat(adjusted(stated).closing().oneIn()).isEqualTo(201);
    assertThat(kinds(stated)).contains(TapeAdvice.Kind.WIDE_GAP);
    assertThat(kinds(PLAIN)).doesNotContain(TapeAdvice.Kind.WIDE_GAP);
  }

  /** Turns of half a degree swing 10 m by 87 mm; turns that are true leave the tape alone. */
  @Test
  void without_a_stated_limit_the_stated_errors_say_whether_a_walk_closes() {
    assertThat(kinds(ONE_IN_200)).doesNotContain(TapeAdvice.Kind.WIDE_GAP);
    assertThat(kinds(and(new String[] {"turn error 0.1°"}, ONE_IN_200)))
        .contains(TapeAdvice.Kind.WIDE_GAP);
    assertThat(sentences(and(new String[] {"turn error 0.1°"}, ONE_IN_200)))
        .anyMatch(s -> s.contains("in 99 of 100 walks"));
  }

  /**
   * A square of walls 5 mm uncertain each: two of them lie along any side, so 50 mm² a direction.
   */
  @Test
  void the_longest_likely_gap_is_that_of_chi_square_with_two_degrees_of_freedom() {
    String[] square = {
      "tape error 5 mm",
      "wall 10 m left true",
      "wall 10 m left true",
      "wall 10.02 m left true",
      "wall 10 m left true"
    };
    assertThat(adjusted(square).closing().likely())
        .isCloseTo(Math.sqrt(-2 * Math.log(0.01) * 50), within(0.3));
  }

  @Test
  void scatter_beyond_the_stated_errors_is_said_to_be_so() {
    String[] rough = {
      "tape error 1 mm + 0.001%",
      "turn error 0.01°",
      "wall 10.004 m left",
      "wall 7.996 m left",
      "wall 9.997 m left",
      "wall 8.005 m left",
      "diagonal A C 12.809 m",
      "diagonal B D 12.803 m"
    };
    AdjustedRoom room = adjusted(rough);
    assertThat(room.sigma()).isGreaterThan(2);
    assertThat(kinds(rough)).containsAnyOf(TapeAdvice.Kind.SCATTER, TapeAdvice.Kind.CANNOT_TELL);
  }

  /** Six quarter turns of half a degree swing this walk by more than the foot that is wrong. */
  @Test
  void a_foot_too_much_on_a_wall_is_said_though_the_turns_are_loose_enough_to_hide_it() {
    String[] lines = {
      "wall 40' left",
      "wall 26' left",
      "wall 20' left",
      "wall 10' right",
      "wall 20' left",
      "wall 15' left"
    };
    assertThat(kinds(lines)).contains(TapeAdvice.Kind.MAYBE_SLIP);
    assertThat(sentences(lines))
        .filteredOn(s -> s.contains("one slip"))
        .singleElement()
        .asString()
        .contains("wall B-C", "wall D-E", "wall F-A")
        .doesNotContain("wall A-B");
    lines[1] = "wall 25' left";
    assertThat(kinds(lines)).doesNotContain(TapeAdvice.Kind.MAYBE_SLIP);
  }

  @Test
  void a_gap_that_no_slip_explains_is_not_called_one() {
    assertThat(kinds(ONE_IN_200)).doesNotContain(TapeAdvice.Kind.MAYBE_SLIP);
  }

  @Test
  void the_limit_can_be_stated() {
    String[] lines = {
      "closing limit 1/150",
      "wall 10 m left",
      "wall 10 m left",
      "wall 10.2 m left",
      "wall 10 m left"
    };
    assertThat(kinds(lines)).doesNotContain(TapeAdvice.Kind.WIDE_GAP);
  }

  @Test
  void a_plain_walk_names_the_digits_that_would_close_it() {
    assertThat(sentences("wall 42' right", PLAIN[1], "wall 24' right", "wall 12' 3\" right"))
        .anyMatch(s -> s.contains("It would close with 24' instead of 42' for wall A-B"));
  }

  @Test
  void a_plain_walk_names_the_turn_that_went_the_wrong_way() {
    assertThat(
            sentences(
                "wall 10 m left",
                "wall 6 m left",
                "wall 4 m left",
                "wall 4 m left",
                "wall 6 m left",
                "wall 10 m left"))
        .anyMatch(s -> s.contains("left and right exchanged for the turn at D"));
  }

  @Test
  void digits_exchanged_are_found_in_spite_of_the_bad_start() {
    AdjustedRoom room = adjusted(MISREAD);
    assertThat(room.advice().get(0).kind()).isEqualTo(TapeAdvice.Kind.LEFT_OUT);
    assertThat(Words.english().say(room.advice().get(0).sentence()))
        .startsWith("Measure wall A-B again: 42' does not fit")
        .contains("42' reads like 24'");
    assertThat(room.corners().get(1).at().x()).isEqualTo(24 * 304.8, within(25.0));
  }

  @Test
  void a_turn_to_the_wrong_side_is_found() {
    assertThat(
            sentences(
                "wall 10 m left",
                "wall 6 m left",
                "wall 4 m left",
                "wall 4 m left",
                "wall 6 m left",
                "wall 10 m left",
                "diagonal B E 10.77 m",
                "diagonal A D 8.485 m",
                "diagonal B D 7.211 m",
                "diagonal A C 11.66 m"))
        .first()
        .asString()
        .contains("turn at D")
        .contains("left and right exchanged");
  }

  @Test
  void two_gross_errors_in_one_room_are_both_found() {
    assertThat(
            sentences(
                "wall 10 m left",
                "wall 9 m left",
                "wall 4.005 m right",
                "wall 4.002 m left",
                "wall 9 m left",
                "wall 9.998 m left",
                "diagonal B D 7.21 m",
                "diagonal B E 10.77 m",
                "diagonal C F 10.78 m",
                "diagonal A D 8.48 m",
                "check D to A-B is 6.0 m",
                "check C to E-F at 1 m is 6.4 m",
                "check A-B to C-D is 6 m"))
        .anyMatch(
            s -> s.startsWith("Measure wall B-C again: 9 m does not fit, the others say 5.99"))
        .anyMatch(
            s -> s.startsWith("Measure wall E-F again: 9 m does not fit, most likely it is 6.0"));
  }

  @Test
  void with_one_reading_to_spare_no_culprit_is_named() {
    AdjustedRoom room =
        adjusted(
            "wall 20.01 m left about",
            "wall 15.02 m left about",
            "wall 19.98 m left about",
            "wall 14.99 m left about",
            "diagonal A C 25.03 m",
            "diagonal B D 25.08 m");
    TapeAdvice advice = room.advice().get(0);
    assertThat(advice.kind()).isEqualTo(TapeAdvice.Kind.CANNOT_TELL);
    assertThat(advice.readings()).hasSize(6);
  }

  @Test
  void walls_without_a_diagonal_leave_the_shape_free() {
    RoomResult.NeedsMore more =
        (RoomResult.NeedsMore)
            result(
                "wall 20 m left about",
                "wall 15 m left about",
                "wall 20 m left about",
                "wall 15 m left about");
    assertThat(more.diagonals()).hasSize(1);
    assertThat(more.diagonals().get(0).length().mm()).isEqualTo(25_000, within(1.0));
    assertThat(Words.english().say(more.sentence()))
        .contains("measure the diagonal")
        .contains("about 25.000 m");
  }

  @Test
  void the_advised_diagonals_do_fix_the_shape() {
    TapeRoom room = TapeRoom.of(8);
    for (int wall = 0; wall < 8; wall++) {
      room = room.with(new Reading.Wall(wall, Length.mm(3000 + 100 * wall), Optional.empty()));
    }
    RoomResult.NeedsMore more = (RoomResult.NeedsMore) RoomAdjustment.of(room, UnitSystem.METRIC);
    assertThat(more.diagonals()).hasSize(5);
    for (Reading.Diagonal d : more.diagonals()) {
      room = room.with(d);
    }
    assertThat(RoomAdjustment.of(room, UnitSystem.METRIC)).isInstanceOf(RoomResult.Adjusted.class);
  }

  @Test
  void a_wall_that_could_not_be_reached_is_found_from_the_others() {
    AdjustedRoom room =
        adjusted(
            "wall 10 m left",
            "wall 6 m left",
            "wall ? left",
            "wall 6 m left",
            "diagonal B D 11.662 m");
    assertThat(room.corners().get(3).at().x()).isEqualTo(0, within(5.0));
  }

  @Test
  void a_reading_that_nothing_checks_is_said_to_be_so() {
    assertThat(kinds(and(PLAIN, "diagonal A C 27' 4 1/2\""))).contains(TapeAdvice.Kind.NOT_CHECKED);
  }

  @Test
  void two_walls_that_cross_are_pointed_at() {
    assertThat(
            kinds(
                "wall 10 m left 135°",
                "wall 14.142 m right 135°",
                "wall 10 m right 135°",
                "wall 14.142 m left 135°"))
        .contains(TapeAdvice.Kind.WALLS_CROSS);
  }

  @Test
  void a_check_on_a_curved_wall_is_refused() {
    RoomResult refused =
        result(
            "curve 10 m rise 1 m outward left",
            "wall 6 m left",
            "wall 10 m left",
            "wall 6 m left",
            "check C to A-B is 6 m");
    assertThat(Words.english().say(((RoomResult.Refused) refused).sentence()))
        .isEqualTo(
            "The check C to A-B ends on a curved wall: measure to the ends of its chord"
                + " instead.");
  }

  @Test
  void nonsense_is_refused_not_thrown() {
    Reading nowhere = new Reading.Wall(7, Length.mm(1000), Optional.empty());
    Reading nothing = new Reading.Wall(0, Length.ZERO, Optional.empty());
    for (Reading bad : List.of(nowhere, nothing)) {
      assertThat(RoomAdjustment.of(TapeRoom.of(3).with(bad), UnitSystem.METRIC))
          .isInstanceOf(RoomResult.Refused.class);
    }
    assertThat(RoomAdjustment.of(TapeRoom.of(2), UnitSystem.METRIC))
        .isInstanceOf(RoomResult.Refused.class);
    assertThat(RoomAdjustment.of(TapeRoom.of(3), UnitSystem.METRIC))
        .isInstanceOf(RoomResult.NeedsMore.class);
  }

  @Test
  void two_hundred_corners_are_adjusted() {
    TapeRoom room = BigRoom.of(200);
    RoomResult.Adjusted adjusted = (RoomResult.Adjusted) RoomAdjustment.of(room, UnitSystem.METRIC);
    assertThat(adjusted.room().corners()).hasSize(200);
    assertThat(adjusted.room().sigma()).isLessThan(1.2);
  }

  @Test
  void an_adjustment_can_be_cancelled() {
    TapeRoom room = BigRoom.of(60);
    assertThatThrownBy(() -> RoomAdjustment.of(room, UnitSystem.METRIC, () -> true))
        .isInstanceOf(CancellationException.class);
  }

  @Test
  void no_list_of_a_room_can_be_changed() {
    List<Reading> readings = adjusted(PLAIN).room().readings();
    assertThatThrownBy(() -> Collections.reverse(readings))
        .isInstanceOf(UnsupportedOperationException.class);
  }
}
