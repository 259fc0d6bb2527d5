package slabwright.inlay.settingout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.floor.Floors;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.Spot;
import slabwright.site.TrenchLevel;
import slabwright.units.Length;

class MarkUnderInlayTest {
  private static final Region BLANK = Region.rectangle(new Bounds(0, 0, 1_000, 1_000));
  private static final Region OPENING = Region.rectangle(new Bounds(200, 200, 800, 800));

  private static List<MarkUnderInlay> under(Mark... marks) {
    return MarkUnderInlay.of(List.of(marks), BLANK, OPENING, 0.1);
  }

  @Test
  void a_column_stands_in_the_way_of_the_blank_and_a_trench_does_not() {
    List<MarkUnderInlay> found =
        under(
            Floors.box("c", new MarkKind.Column(), 0, 0, 250, 300),
            Floors.box("t", new MarkKind.Trench(TrenchLevel.FLUSH, false), 500, 0, 600, 1_000));
    assertThat(found).extracting(MarkUnderInlay::stands).containsExactly(true, false);
    assertThat(found.get(0).area()).isCloseTo(50 * 100, within(0.01));
    assertThat(found.get(1).area()).isCloseTo(100 * 600, within(0.01));
    assertThat(found).extracting(MarkUnderInlay::length).containsOnly(0.0);
  }

  @Test
  void what_only_touches_the_blank_or_lies_beside_it_is_not_under_it() {
    assertThat(
            under(
                Floors.box("c", new MarkKind.Column(), 1_000, 0, 1_300, 300),
                Floors.box("d", new MarkKind.Column(), 2_000, 0, 2_300, 300),
                line("e", 1_200, -500, 1_200, 2_000)))
        .isEmpty();
  }

  @Test
  void of_a_joint_the_length_under_the_blank_counts() {
    List<MarkUnderInlay> found = under(line("j", 300, -500, 300, 2_000));
    assertThat(found).hasSize(1);
    assertThat(found.get(0).length()).isCloseTo(1_000, within(0.01));
    assertThat(found.get(0).area()).isZero();
    assertThat(found.get(0).stands()).isFalse();
  }

  private static Mark line(String id, double x0, double y0, double x1, double y1) {
    return Mark.of(
        id,
        id,
        new MarkKind.Joint(Length.mm(6), Length.mm(20)),
        new Form.Trace(List.of(Spot.mm(x0, y0), Spot.mm(x1, y1))));
  }
}
