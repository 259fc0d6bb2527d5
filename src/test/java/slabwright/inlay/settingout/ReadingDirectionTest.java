package slabwright.inlay.settingout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.inlay.Graphics.box;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.Spot;
import slabwright.site.TrenchLevel;
import slabwright.units.Length;
import slabwright.words.Words;

class ReadingDirectionTest {
  private static final Vec DOOR = new Vec(5000, 0);
  private static final Vec MIDDLE = new Vec(5000, 3000);

  @Test
  void its_top_away_from_the_door_reads_upright() {
    ReadingDirection check = ReadingDirection.of("the main doors", DOOR, MIDDLE, 0);
    assertThat(check.angle()).isCloseTo(0, within(1e-9));
    assertThat(Words.english().say(check.said())).isEqualTo("Reads upright from the main doors.");
  }

  @Test
  void its_top_towards_the_door_is_upside_down() {
    assertThat(Words.english().say(ReadingDirection.of("the main doors", DOOR, MIDDLE, 180).said()))
        .isEqualTo("Reads upside down from the main doors.");
  }

  @Test
  void a_quarter_turn_is_sideways_either_way() {
    assertThat(ReadingDirection.of("the yard", DOOR, MIDDLE, 90).angle())
        .isCloseTo(90, within(1e-9));
    assertThat(Words.english().say(ReadingDirection.of("the yard", DOOR, MIDDLE, 270).said()))
        .isEqualTo("Reads sideways from the yard, turned by 90°.");
  }

  @Test
  void trenches_and_joints_under_the_inlay_are_found_and_what_lies_beside_it_is_not() {
    Mark trench =
        Mark.of(
            "t",
            "water trench",
            new MarkKind.Trench(TrenchLevel.FLUSH, true),
            new Form.Strip(List.of(Spot.mm(-500, 500), Spot.mm(1500, 500)), Length.mm(100)));
    Mark joint =
        Mark.of(
            "j",
            "saw joint",
            new MarkKind.Joint(Length.mm(4), Length.mm(20)),
            new Form.Trace(List.of(Spot.mm(200, -300), Spot.mm(200, 2000))));
    Mark beside =
        Mark.of(
            "p",
            "patch",
            new MarkKind.Patch(),
            new Form.Circle(Spot.mm(3000, 3000), Length.mm(200)));
    List<MarkUnderInlay> under =
        MarkUnderInlay.of(
            List.of(trench, joint, beside), box(0, 0, 1000, 1000), box(100, 100, 900, 900), 0.5);
    assertThat(under).hasSize(2);
    assertThat(under.get(0).area()).isCloseTo(80_000, within(1e-6));
    assertThat(under.get(1).length()).isCloseTo(1000, within(1e-6));
  }
}
