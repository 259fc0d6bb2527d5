package slabwright.drawing.label;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

class LabelPlacerTest {
  private static final Bounds FRAME = new Bounds(0, 0, 100, 80);

  private static Label box(double x, double y) {
    return Label.box(new Vec(x, y), 14, 4, 40);
  }

  @Test
  void a_label_alone_lies_on_its_point_without_a_leader() {
    Label.Placed placed = new LabelPlacer(FRAME, 1).place(box(50, 40)).orElseThrow();
    assertThat(placed.middle()).isEqualTo(new Vec(50, 40));
    assertThat(placed.leader()).isEmpty();
  }

  @Test
  void a_label_whose_point_is_taken_moves_off_with_a_leader_back_to_it() {
    LabelPlacer labels = new LabelPlacer(FRAME, 1).avoid(new Bounds(40, 30, 60, 50));
    Label.Placed placed = labels.place(box(50, 40)).orElseThrow();
    assertThat(placed.middle().distanceTo(new Vec(50, 40))).isGreaterThan(10);
    assertThat(placed.leader()).first().isEqualTo(new Vec(50, 40));
    assertThat(labels.place(box(80, 40)).orElseThrow().leader()).isEmpty();
  }

  @Test
  void a_label_near_the_rim_stays_whole_inside_the_frame() {
    Label.Placed placed = new LabelPlacer(FRAME, 1).place(box(1, 79)).orElseThrow();
    assertThat(placed.middle().x()).isGreaterThanOrEqualTo(7);
    assertThat(placed.middle().y()).isLessThanOrEqualTo(78);
  }

  @Test
  void a_label_keeps_off_a_line() {
    LabelPlacer labels = new LabelPlacer(FRAME, 1).avoid(new Vec(0, 40), new Vec(100, 40));
    Label.Placed placed = labels.place(box(50, 40)).orElseThrow();
    assertThat(Math.abs(placed.middle().y() - 40)).isGreaterThanOrEqualTo(3);
  }

  @Test
  void where_there_is_no_room_no_place_is_given() {
    LabelPlacer labels = new LabelPlacer(FRAME, 1).avoid(FRAME);
    assertThat(labels.place(box(50, 40))).isEmpty();
  }

  @Property(tries = 200)
  void whatever_is_asked_no_two_boxes_overlap_and_none_leaves_the_frame(
      @ForAll @Size(30) List<@DoubleRange(min = 0, max = 80) Double> numbers) {
    LabelPlacer labels = new LabelPlacer(FRAME, 0.5);
    List<Bounds> boxes = new ArrayList<>();
    for (int i = 0; i + 1 < numbers.size(); i += 2) {
      Optional<Label.Placed> placed = labels.place(box(numbers.get(i), numbers.get(i + 1)));
      placed.ifPresent(
          p ->
              boxes.add(
                  new Bounds(
                      p.middle().x() - 7,
                      p.middle().y() - 2,
                      p.middle().x() + 7,
                      p.middle().y() + 2)));
    }
    for (Bounds a : boxes) {
      assertThat(a.minX() >= 0 && a.minY() >= 0 && a.maxX() <= 100 && a.maxY() <= 80).isTrue();
      assertThat(boxes).filteredOn(b -> !b.equals(a) && b.grown(0.2).meets(a)).isEmpty();
    }
  }
}
