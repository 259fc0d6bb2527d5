package slabwright.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.floor.Floors.box;
import static slabwright.floor.Floors.rectangle;
import static slabwright.floor.Floors.with;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.Spot;
import slabwright.site.TrenchLevel;
import slabwright.units.Length;
import slabwright.units.Message;

class TrenchWorkTest {
  private static TrenchWork work(MarkKind.Trench kind, Form form) {
    return TrenchWork.of(
            FloorTakeoff.of(with(rectangle(8_000, 5_000), Mark.of("t", "drain", kind, form))))
        .get(0);
  }

  private static MarkKind.Trench trench(TrenchLevel lie, boolean levelled, double... off) {
    return new MarkKind.Trench(
        lie, levelled, off.length == 0 ? Optional.empty() : Optional.of(Length.mm(off[0])));
  }

  private static Form.Rectangle upright() {
    return new Form.Rectangle(
        Spot.mm(3_000, 2_500), Length.mm(400), Length.mm(2_000), Length.mm(0), 0);
  }

  private static TrenchWork work(MarkKind.Trench kind) {
    return work(kind, upright());
  }

  @Test
  void the_longer_side_of_a_box_is_its_length_however_it_was_entered() {
    TrenchWork box = work(trench(TrenchLevel.LOW, false));
    assertThat(box.length()).hasValue(2_000);
    assertThat(box.width()).hasValue(400);
    TrenchWork round =
        work(
            trench(TrenchLevel.LOW, false),
            new Form.RoundEnded(Spot.mm(3_000, 2_500), Length.mm(1_500), Length.mm(300), 30));
    assertThat(round.length()).hasValue(1_500);
    assertThat(round.width()).hasValue(300);
  }

  @Test
  void a_free_shape_has_an_area_but_neither_length_nor_width() {
    TrenchWork free =
        TrenchWork.of(
                FloorTakeoff.of(
                    with(
                        rectangle(8_000, 5_000),
                        box("t", trench(TrenchLevel.LOW, false), 1_000, 1_000, 3_000, 1_400))))
            .get(0);
    assertThat(free.length()).isEmpty();
    assertThat(free.width()).isEmpty();
    assertThat(free.area()).isCloseTo(2_000 * 400, within(1e-6));
  }

  @Test
  void what_is_missing_or_stands_over_is_area_times_what_it_is_off() {
    assertThat(work(trench(TrenchLevel.LOW, false, 12)).volume().orElseThrow())
        .isCloseTo(2_000 * 400 * 12, within(1e-3));
    assertThat(work(trench(TrenchLevel.LOW, false)).volume()).isEmpty();
  }

  private static String key(Message message) {
    return message.key().replace("floor.trench-work.", "");
  }

  @Test
  void only_what_lay_off_is_said_to_be_levelled() {
    assertThat(key(work(trench(TrenchLevel.LOW, true)).state())).isEqualTo("levelled");
    assertThat(key(work(trench(TrenchLevel.PROUD, true)).state())).isEqualTo("levelled");
    assertThat(key(work(trench(TrenchLevel.LOW, false)).state())).isEqualTo("low");
    assertThat(key(work(trench(TrenchLevel.PROUD, false)).state())).isEqualTo("proud");
    assertThat(key(work(trench(TrenchLevel.FLUSH, true)).state())).isEqualTo("flush");
    assertThat(key(work(trench(TrenchLevel.FLUSH, false)).state())).isEqualTo("flush");
  }

  @Test
  void what_is_due_depends_on_how_it_lies_and_on_whether_it_was_measured() {
    assertThat(key(work(trench(TrenchLevel.FLUSH, false)).due())).isEqualTo("machine-crosses");
    assertThat(key(work(trench(TrenchLevel.LOW, true)).due())).isEqualTo("machine-crosses");
    assertThat(key(work(trench(TrenchLevel.PROUD, false)).due())).isEqualTo("measure-height-grind");
    assertThat(key(work(trench(TrenchLevel.PROUD, false, 4)).due())).isEqualTo("grind-flush-first");
    assertThat(key(work(trench(TrenchLevel.LOW, false)).due())).isEqualTo("measure-depth-fill");
    assertThat(key(work(trench(TrenchLevel.LOW, false, 4)).due())).isEqualTo("fill-level-first");
  }
}
