package slabwright.tape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;
import slabwright.units.Length;

/** How far a walk may miss its start, worked out by hand. */
class ClosingReportTest {
  /** Walls of 4, 3, 4.01 and 3.02 m, each known to 10 mm, at right angles known to 0.1°. */
  private static TapeRoom walked() {
    TapeRoom room =
        TapeRoom.of(4).withTapeError(new TapeError(Length.mm(10), 0)).withTurnError(0.1);
    double[] walls = {4000, 3000, 4010, 3020};
    for (int k = 0; k < 4; k++) {
      room = room.with(new Reading.Wall(k, Length.mm(walls[k]), Optional.empty()));
      room = room.with(new Reading.Turn(k, 90, Reading.Trust.READ, Optional.empty()));
    }
    return room;
  }

  @Test
  void the_gap_is_where_the_walk_ends() {
    ClosingReport report = ClosingReport.of(walked());
    assertThat(report.gap().minus(new Vec(-10, -20)).length()).isLessThan(1e-6);
    assertThat(report.perimeter()).isEqualTo(14030, within(1e-6));
    assertThat(report.oneIn()).isEqualTo(627);
  }

  /** Two walls along each axis: √(9.2103 · 2 · 10²), whichever way the gap points. */
  @Test
  void the_tape_alone_leaves_what_its_walls_leave() {
    assertThat(ClosingReport.of(walked()).byTape()).isEqualTo(42.919, within(1e-3));
  }

  /**
   * Covariance 2 · 10² on the diagonal, and of each turn after the first corner its arm to the end,
   * turned square, times 0.1°: (20, −4010), (3020, −4010) and (3020, 0). Then √(9.2103 / uᵀC⁻¹u) in
   * the direction (−1, −2) of the gap.
   */
  @Test
  void a_turn_swings_all_that_is_walked_after_it() {
    assertThat(ClosingReport.of(walked()).likely()).isEqualTo(48.4186, within(1e-3));
  }

  @Test
  void a_wall_taped_twice_is_walked_once() {
    TapeRoom again = walked().with(new Reading.Wall(1, Length.mm(3100), Optional.empty()));
    assertThat(ClosingReport.of(again).likely()).isEqualTo(48.4186, within(1e-3));
    assertThat(ClosingReport.of(again).gap().minus(new Vec(-10, -20)).length()).isLessThan(1e-6);
  }

  @Test
  void a_limit_of_one_s_own_is_a_share_of_the_walk() {
    TapeRoom room = walked();
    ClosingReport report = ClosingReport.of(room);
    assertThat(report.closes(room)).isTrue();
    assertThat(report.allowed(room.withClosingLimit(0.001))).isEqualTo(14.03, within(1e-6));
    assertThat(report.closes(room.withClosingLimit(0.001))).isFalse();
    assertThat(report.closes(room.withClosingLimit(0.0016))).isTrue();
  }

  /** One wall alone: nothing is known across it, so all errors together are taken. */
  @Test
  void errors_along_one_line_are_added_as_they_are() {
    TapeRoom room = TapeRoom.of(3).withTapeError(new TapeError(Length.mm(10), 0));
    room = room.with(new Reading.Wall(0, Length.mm(4000), Optional.empty()));
    assertThat(ClosingReport.of(room).byTape()).isEqualTo(30.349, within(1e-3));
  }
}
