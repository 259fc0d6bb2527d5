package slabwright.floor.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.floor.Floors;
import slabwright.floor.MachineReach;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.Machine;
import slabwright.units.Length;

/** A machine of 800 mm keeps 12 mm at each side on its way, so it needs 824. */
class MachinePassageTest {
  private static final Machine MACHINE = Floors.machine(800, 700, 50);
  private static final Line ACROSS = Line.of(new Vec(1_000, 0), new Vec(1_000, 900));

  private static MachinePassage gap(double width) {
    return MachinePassage.of(MACHINE, Optional.empty(), ACROSS, width);
  }

  @Test
  void what_is_left_over_is_told_and_what_is_missing_is_negative() {
    assertThat(gap(900).spare()).isCloseTo(76, within(1e-9));
    assertThat(gap(800).spare()).isCloseTo(-24, within(1e-9));
    assertThat(gap(900).where()).isEqualTo(new Vec(1_000, 450));
  }

  @Test
  void a_place_just_as_wide_as_it_needs_lets_it_through_and_a_little_less_does_not() {
    assertThat(gap(824).fits()).isTrue();
    assertThat(gap(823.9).fits()).isFalse();
    assertThat(spare(-MachineReach.FIT).fits()).isTrue();
    assertThat(spare(-MachineReach.FIT - 1e-9).fits()).isFalse();
  }

  private static MachinePassage spare(double mm) {
    MachinePassage g = gap(824);
    return new MachinePassage(
        g.machine(), g.kind(), g.doorway(), g.where(), g.across(), g.width(), mm);
  }

  @Test
  void a_doorway_is_told_from_a_gap() {
    Doorway door = new Doorway("d", "door", 0, Length.mm(0), Length.mm(900), true);
    assertThat(gap(900).kind()).isEqualTo(MachinePassage.Kind.GAP);
    assertThat(MachinePassage.of(MACHINE, Optional.of(door), ACROSS, 900).kind())
        .isEqualTo(MachinePassage.Kind.DOORWAY);
  }
}
