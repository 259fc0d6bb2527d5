package slabwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

class ArrangementTest {

  @Test
  void the_later_of_two_overlapping_layers_lies_on_top() {
    Map<Integer, Region> zones = top(square(1, 0, 10), square(2, 5, 10));
    assertThat(zones.get(1).area()).isEqualTo(75);
    assertThat(zones.get(2).area()).isEqualTo(100);
  }

  @Test
  void the_order_of_the_list_does_not_matter() {
    assertThat(top(square(2, 5, 10), square(1, 0, 10)))
        .isEqualTo(top(square(1, 0, 10), square(2, 5, 10)));
  }

  @Test
  void a_layer_wholly_covered_has_no_zone() {
    assertThat(top(square(1, 2, 3), square(2, 0, 10))).containsOnlyKeys(2);
  }

  @Test
  void layers_inside_one_another_are_linked_however_deep() {
    List<Layer> nest = new ArrayList<>();
    for (int i = 0; i < 300; i++) {
      nest.add(new Layer(i, List.of(Ring.rectangle(i, i, 7000 - i, 7000 - i)), FillRule.NONZERO));
    }
    Map<Integer, Region> zones = Arrangement.of(nest).partition(a -> topOf(a));
    assertThat(zones).hasSize(300);
    assertThat(zones.get(0).area()).isEqualTo(7000.0 * 7000 - 6998.0 * 6998);
    assertThat(zones.get(299).area()).isEqualTo(6402.0 * 6402);
  }

  @Test
  void faces_know_every_layer_that_fills_them() {
    List<Arrangement.Face> faces =
        Arrangement.of(List.of(square(4, 0, 10), square(9, 5, 10))).faces();
    assertThat(faces)
        .containsExactlyInAnyOrder(
            new Arrangement.Face(75, List.of(4)),
            new Arrangement.Face(75, List.of(9)),
            new Arrangement.Face(25, List.of(4, 9)));
  }

  @Test
  void borders_name_every_segment_that_lies_on_them() {
    Layer left = new Layer(1, List.of(Ring.rectangle(0, 0, 10, 10)), FillRule.NONZERO);
    Layer right = new Layer(2, List.of(Ring.rectangle(10, 2, 20, 8)), FillRule.NONZERO);
    List<Border<Integer>> between =
        Arrangement.of(List.of(left, right)).borders(a -> topOf(a)).stream()
            .filter(b -> b.left().isPresent() && b.right().isPresent())
            .toList();
    assertThat(between).singleElement().satisfies(b -> assertThat(b.length()).isEqualTo(6));
    assertThat(between.get(0).sources())
        .extracting(s -> s.layer() + ":" + s.ring() + ":" + s.segment())
        .containsExactlyInAnyOrder("1:0:1", "2:0:3");
  }

  @Test
  void a_corner_that_only_touches_a_slanted_wall_lies_on_it() {
    Layer wall = new Layer(1, List.of(Ring.of(0, 0, 3000, 1000, 0, 1000)), FillRule.NONZERO);
    Layer post =
        new Layer(2, List.of(Ring.of(1000, 333.333, 1301, 433.667, 1000, 600)), FillRule.NONZERO);
    Arrangement both = Arrangement.of(List.of(wall, post));
    assertThat(both.borders(a -> topOf(a)))
        .filteredOn(b -> b.left().equals(Optional.of(2)) != b.right().equals(Optional.of(2)))
        .filteredOn(b -> b.left().isEmpty() || b.right().isEmpty())
        .allSatisfy(b -> assertThat(b.sources()).hasSize(2));
  }

  @Test
  void edges_that_splitting_drew_into_a_cell_are_split_again() {
    assertThat(rung(-325, 16)).isEqualTo(NodingMethod.PLAIN_AGAIN);
  }

  @Test
  void what_splitting_does_not_settle_in_time_is_snapped() {
    assertThat(rung(-325, 1)).isEqualTo(NodingMethod.SNAP_ROUNDED);
  }

  /** The corner (1, 0.333) lies a third of a grid step off the long side. */
  @Test
  void what_does_not_come_to_rest_in_time_says_so() {
    Layer wall = new Layer(1, List.of(Ring.of(0, 0, 3, 1, 0, 1)), FillRule.NONZERO);
    Layer post = new Layer(2, List.of(Ring.of(1, 0.333, 1.5, 0, 2, 0)), FillRule.NONZERO);
    assertThat(rung(List.of(wall, post), 0)).isEqualTo(NodingMethod.NOT_SETTLED);
    assertThat(rung(List.of(wall, post), 16)).isEqualTo(NodingMethod.PLAIN);
  }

  private static NodingMethod rung(long seed, int mostPasses) {
    RandomRings random = new RandomRings(seed);
    return rung(List.of(new Layer(0, random.some(4), random.rule())), mostPasses);
  }

  private static NodingMethod rung(List<Layer> layers, int mostPasses) {
    return new Arrangement(layers, Noding.joining(mostPasses, () -> false), () -> false).rung();
  }

  @Test
  void nothing_gives_nothing() {
    assertThat(Arrangement.of(List.of()).faces()).isEmpty();
  }

  @Test
  void two_layers_with_one_id_are_refused() {
    assertThatThrownBy(() -> Arrangement.of(List.of(square(1, 0, 1), square(1, 3, 1))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("id 1");
  }

  @Test
  void a_cancelled_arrangement_stops() {
    assertThatThrownBy(() -> new Arrangement(List.of(square(1, 0, 1)), () -> true))
        .isInstanceOf(CancellationException.class);
  }

  private static Map<Integer, Region> top(Layer... layers) {
    return Arrangement.of(List.of(layers)).partition(a -> topOf(a));
  }

  private static Optional<Integer> topOf(ActiveLayers a) {
    return a.isEmpty() ? Optional.empty() : Optional.of(a.top());
  }

  private static Layer square(int id, double at, double side) {
    return new Layer(id, List.of(Ring.rectangle(at, at, at + side, at + side)), FillRule.NONZERO);
  }

  @Test
  void nests_alike_whether_there_are_few_parts_or_many() {
    for (int side : new int[] {1, 3, 9}) {
      List<Ring> rings = new ArrayList<>();
      for (int k = 0; k < side * side; k++) {
        double x = 100 * (k % side);
        double y = 100 * (k / side) + 3 * k;
        for (int in = 0; in < 5; in++) {
          rings.add(Ring.rectangle(x + 9 * in, y + 9 * in, x + 90 - 9 * in, y + 90 - 9 * in));
        }
      }
      double one = 90 * 90 - 72 * 72 + 54 * 54 - 36 * 36 + 18 * 18;
      Region rule = Region.of(rings, FillRule.EVEN_ODD);
      assertThat(rule.area()).isEqualTo(one * side * side);
      assertThat(rule.parts()).hasSize(3 * side * side);
    }
  }

  /**
   * Seventy wheels of eleven spikes in each other, each a smaller copy: what every second one
   * encloses less what the next does, by the areas of the rings alone.
   */
  @Test
  void many_rings_with_bays_lie_each_in_the_one_around_it() {
    List<Ring> wheels = new ArrayList<>();
    double left = 0;
    for (int k = 0; k < 70; k++) {
      List<Vec> points = new ArrayList<>();
      for (int i = 0; i < 22; i++) {
        double spoke = (100 - k) * (i % 2 == 0 ? 10 : 6.5);
        points.add(new Vec(Math.cos(i * Math.PI / 11), Math.sin(i * Math.PI / 11)).times(spoke));
      }
      wheels.add(
          new Ring(points.stream().map(p -> new Vec(Jts.snap(p.x()), Jts.snap(p.y()))).toList()));
      left += (k % 2 == 0 ? 1 : -1) * wheels.get(k).signedArea();
    }
    Region rings = Region.of(wheels, FillRule.EVEN_ODD);
    assertThat(rings.parts()).hasSize(35).allMatch(p -> p.holes().size() == 1);
    assertThat(rings.area()).isCloseTo(left, within(1e-6 * left));
  }
}
