package slabwright.drawing.label;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

class DimensionStandOffsTest {
  /** A room of 10 by 8 m with a notch at its upper right, counter-clockwise. */
  private static List<Vec> room(double notchWide, double notchHigh) {
    return List.of(
        new Vec(0, 0),
        new Vec(10_000, 0),
        new Vec(10_000, 8000 - notchHigh),
        new Vec(10_000 - notchWide, 8000 - notchHigh),
        new Vec(10_000 - notchWide, 8000),
        new Vec(0, 8000));
  }

  private static List<Line> sides(List<Vec> corners) {
    List<Vec> p = new Ring(corners).points();
    return IntStream.range(0, p.size())
        .mapToObj(k -> Line.of(p.get(k), p.get((k + 1) % p.size())))
        .toList();
  }

  @Test
  void a_room_without_inner_corners_needs_no_room() {
    List<Vec> plain = List.of(new Vec(0, 0), new Vec(5000, 0), new Vec(5000, 300), new Vec(0, 300));
    assertThat(DimensionStandOffs.compute(sides(plain), true, 0.01)).containsOnly(0.0);
  }

  @Test
  void the_longer_side_at_an_inner_corner_stands_off_by_the_shorter_one() {
    assertThat(DimensionStandOffs.compute(sides(room(1500, 4000)), true, 0.01))
        .containsExactly(0.0, 0.0, 0.0, 15.0, 0.0, 0.0);
    assertThat(DimensionStandOffs.compute(sides(room(4000, 1500)), true, 0.01))
        .containsExactly(0.0, 0.0, 15.0, 0.0, 0.0, 0.0);
  }

  @Test
  void two_long_sides_keep_their_places() {
    assertThat(DimensionStandOffs.compute(sides(room(4000, 4000)), true, 0.01)).containsOnly(0.0);
  }

  @Test
  void the_other_way_round_the_room_is_the_same() {
    List<Vec> turned = new ArrayList<>(room(1500, 4000));
    Collections.reverse(turned);
    assertThat(DimensionStandOffs.compute(sides(turned), false, 0.01)).contains(15.0).hasSize(6);
  }
}
