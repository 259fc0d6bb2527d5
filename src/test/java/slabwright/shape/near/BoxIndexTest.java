package slabwright.shape.near;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

class BoxIndexTest {
  private final Random random = new Random(3);

  private Bounds box(double side, double size) {
    double x = side * random.nextDouble();
    double y = side * random.nextDouble();
    return new Bounds(x, y, x + size * random.nextDouble(), y + size * random.nextDouble());
  }

  @Test
  void every_thing_whose_box_meets_the_box_is_found_and_those_far_off_are_not_looked_at() {
    List<Bounds> boxes = new ArrayList<>();
    BoxIndex<Bounds> index = new BoxIndex<>();
    int looked = 0;
    for (int i = 0; i < 800; i++) {
      Bounds near = box(1000, 20);
      AtomicInteger met = new AtomicInteger();
      index.any(
          near,
          b -> {
            met.addAndGet(b.meets(near) ? 1 : 0);
            return false;
          });
      assertThat(met.get()).isEqualTo((int) boxes.stream().filter(near::meets).count());
      Bounds more = box(1000, 20);
      boxes.add(more);
      index.add(more, more);
      looked = index.looked();
    }
    assertThat(looked).isLessThan(800 * 799 / 2 / 8);
  }

  /** Four times as many things on four times the ground: four times as many looks, not sixteen. */
  @Test
  void looks_grow_with_the_things_and_not_with_their_pairs() {
    double few = looks(8_000);
    double many = looks(32_000);
    assertThat(many / few).isLessThan(5);
  }

  private int looks(int things) {
    double side = 30 * Math.sqrt(things);
    BoxIndex<Bounds> index = new BoxIndex<>();
    for (int i = 0; i < things; i++) {
      Bounds b = box(side, 20);
      index.any(b, o -> false);
      index.add(b, b);
    }
    return index.looked();
  }

  @Test
  void a_thing_at_a_place_is_found_from_beside_it() {
    BoxIndex<Vec> index = BoxIndex.of(List.of(new Vec(1, 1), new Vec(5, 5)), v -> v);
    Bounds about = new Bounds(4, 4, 5, 5);
    assertThat(index.any(about, v -> v.x() == 5)).isTrue();
    assertThat(index.any(about, v -> v.x() == 1)).isFalse();
  }

  @Test
  void what_lies_nowhere_is_never_found() {
    BoxIndex<String> index = new BoxIndex<>();
    index.add(Bounds.EMPTY, "nowhere");
    assertThat(index.any(new Bounds(-1e9, -1e9, 1e9, 1e9), s -> true)).isFalse();
  }
}
