package slabwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class BoxAreaTest {
  private static final Bounds LEFT = new Bounds(0, 0, 10, 100);
  private static final Bounds LOW = new Bounds(0, 0, 100, 10);

  private static double any(Random random) {
    return Math.rint(200 * random.nextDouble() - 100);
  }

  private static List<Bounds> boxes(Random random, int n) {
    List<Bounds> boxes = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      boxes.add(
          Bounds.of(List.of(new Vec(any(random), any(random)), new Vec(any(random), any(random)))));
    }
    return boxes;
  }

  private static List<Vec> points(Random random, int n) {
    List<Vec> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      points.add(new Vec(any(random) + 0.5, any(random) + 0.25));
    }
    return points;
  }

  @Property(tries = 200)
  void the_area_inside_is_that_of_what_is_cut_out_with_all_boxes(@ForAll long seed) {
    Random random = new Random(seed);
    List<Bounds> boxes = boxes(random, 6);
    Region union = Region.union(boxes.stream().map(Region::rectangle).toList());
    BoxArea area = BoxArea.of(boxes);
    assertThat(area.region()).isEqualTo(union);
    Region region = Region.of(List.of(new Ring(points(random, 9))), FillRule.EVEN_ODD);
    assertThat(area.area(region)).isCloseTo(region.intersect(union).area(), within(0.5));
  }

  @Property(tries = 200)
  void its_boxes_share_no_floor_whatever_order_they_came_in(@ForAll long seed) {
    Random random = new Random(seed);
    List<Bounds> boxes = boxes(random, 7);
    BoxArea area = BoxArea.of(boxes);
    double sum = area.boxes().stream().mapToDouble(b -> b.width() * b.height()).sum();
    assertThat(sum).isCloseTo(area.region().area(), within(1e-6));
    assertThat(
            BoxArea.of(
                boxes.stream().sorted((a, b) -> Double.compare(b.maxY(), a.maxY())).toList()))
        .isEqualTo(area);
  }

  @Property(tries = 200)
  void it_meets_and_holds_what_its_boxes_together_do(@ForAll long seed) {
    Random random = new Random(seed);
    List<Bounds> boxes = boxes(random, 5);
    BoxArea area = BoxArea.of(boxes);
    Bounds other = boxes(random, 1).get(0);
    assertThat(area.meets(other)).isEqualTo(boxes.stream().anyMatch(b -> b.meets(other)));
    if (area.surelyHolds(other)) {
      assertThat(area.area(Region.rectangle(other)))
          .isCloseTo(other.width() * other.height(), within(1e-6));
    }
  }

  @Test
  void a_piece_on_its_boundary_is_told_from_one_on_a_seam() {
    BoxArea corner = BoxArea.of(List.of(LEFT, LOW));
    assertThat(corner.boxes()).hasSize(2);
    assertThat(corner.hasOnSide(new Vec(10, 20), new Vec(10, 40), 1e-4)).isTrue();
    assertThat(corner.hasOnSide(new Vec(40, 10), new Vec(20, 10), 1e-4)).isTrue();
    assertThat(corner.hasOnSide(new Vec(10, 2), new Vec(10, 8), 1e-4)).isFalse();
    assertThat(corner.hasOnSide(new Vec(2, 10), new Vec(8, 10), 1e-4)).isFalse();
    assertThat(corner.hasOnSide(new Vec(5, 20), new Vec(5, 40), 1e-4)).isFalse();
    assertThat(corner.hasOnSide(new Vec(10, 20), new Vec(11, 40), 1e-4)).isFalse();
  }

  @Test
  void boxes_apart_stay_apart_and_none_cover_nothing() {
    BoxArea two = BoxArea.of(List.of(LEFT, new Bounds(50, 50, 60, 60)));
    assertThat(two.boxes()).hasSize(2);
    assertThat(two.bounds()).isEqualTo(new Bounds(0, 0, 60, 100));
    assertThat(two.meets(new BoxArea(List.of(new Bounds(20, 20, 30, 30))))).isFalse();
    assertThat(BoxArea.of(List.of()).meets(LOW)).isFalse();
    assertThat(BoxArea.of(List.of()).bounds().isEmpty()).isTrue();
  }
}
