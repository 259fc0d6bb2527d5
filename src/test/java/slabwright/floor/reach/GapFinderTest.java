package slabwright.floor.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Affine;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** Gaps between posts and walls of a hall, each known from the corners that were put there. */
class GapFinderTest {
  private static final double WIDEST = 700;

  private static Region box(double x0, double y0, double x1, double y1) {
    return Region.of(
        new Ring(List.of(new Vec(x0, y0), new Vec(x1, y0), new Vec(x1, y1), new Vec(x0, y1))));
  }

  private static Region diamond(double x, double y, double half) {
    return Region.of(
        new Ring(
            List.of(
                new Vec(x - half, y),
                new Vec(x, y - half),
                new Vec(x + half, y),
                new Vec(x, y + half))));
  }

  private static Region hall(Region... posts) {
    return box(0, 0, 12_000, 9_000).minus(Region.union(List.of(posts)));
  }

  private static List<Line> gaps(Region... posts) {
    return GapFinder.find(hall(posts), WIDEST);
  }

  private static Vec middle(Line gap) {
    return gap.points().get(0).towards(gap.points().get(1), 0.5);
  }

  private static void isGap(Line gap, double width, double x, double y) {
    assertThat(gap.length()).isCloseTo(width, within(0.01));
    assertThat(middle(gap).x()).isCloseTo(x, within(0.01));
    assertThat(middle(gap).y()).isCloseTo(y, within(0.01));
  }

  @Test
  void a_post_set_on_its_corner_leaves_a_gap_under_that_corner() {
    List<Line> gaps = gaps(diamond(4_000, 1_000, 500));
    assertThat(gaps).hasSize(1);
    isGap(gaps.get(0), 500, 4_000, 250);
  }

  @Test
  void two_posts_across_from_each_other_leave_one_from_corner_to_corner() {
    List<Line> gaps = gaps(box(2_000, 2_000, 3_000, 3_000), box(3_300, 3_400, 4_300, 4_400));
    assertThat(gaps).hasSize(1);
    isGap(gaps.get(0), 500, 3_150, 3_200);
  }

  @Test
  void two_walls_that_pass_each_other_leave_one_half_way_along_what_faces() {
    List<Line> gaps = gaps(box(2_000, 2_000, 4_000, 3_000), box(3_000, 3_500, 6_000, 4_500));
    assertThat(gaps).hasSize(1);
    isGap(gaps.get(0), 500, 3_500, 3_250);
  }

  @Test
  void corners_that_stand_exactly_over_each_other_leave_one_too() {
    for (double off : new double[] {-0.9, -0.4, 0, 0.4, 0.9}) {
      List<Line> gaps =
          gaps(box(2_000, 2_000, 4_000, 3_000), box(4_000 + off, 3_600, 6_000, 4_500));
      assertThat(gaps).as("off by %s", off).hasSize(1);
      assertThat(gaps.get(0).length()).isCloseTo(600, within(0.01));
      assertThat(middle(gaps.get(0)).x()).isCloseTo(4_000, within(1.0));
    }
  }

  @Test
  void a_corner_that_points_exactly_at_the_end_of_a_wall_leaves_one_too() {
    List<Line> gaps = gaps(box(2_000, 2_000, 4_000, 3_000), diamond(4_000, 4_100, 500));
    assertThat(gaps).hasSize(1);
    isGap(gaps.get(0), 600, 4_000, 3_300);
  }

  @Test
  void gaps_count_from_200_mm_up_to_the_widest_and_the_narrowest_is_first() {
    List<Line> gaps =
        gaps(
            box(1_500, WIDEST, 2_500, 1_500),
            box(5_000, 200, 6_000, 1_500),
            box(8_500, 400, 9_500, 1_500));
    assertThat(gaps).hasSize(3);
    isGap(gaps.get(0), 200, 5_500, 100);
    isGap(gaps.get(1), 400, 9_000, 200);
    isGap(gaps.get(2), WIDEST, 2_000, WIDEST / 2);
    assertThat(gaps(box(1_500, WIDEST + 1, 2_500, 1_500), box(5_000, 199, 6_000, 1_500))).isEmpty();
  }

  @Test
  void of_gaps_alike_the_left_one_is_first_and_of_those_the_lower_one() {
    List<Line> gaps =
        gaps(
            box(8_000, 400, 9_000, 1_500),
            box(2_000, 7_500, 3_000, 8_600),
            box(2_000, 400, 3_000, 1_500));
    assertThat(gaps).hasSize(3);
    isGap(gaps.get(0), 400, 2_500, 200);
    isGap(gaps.get(1), 400, 2_500, 8_800);
    isGap(gaps.get(2), 400, 8_500, 200);
  }

  @Test
  void what_stands_between_two_walls_makes_two_gaps_of_one() {
    Region left = box(2_000, 2_000, 3_000, 4_000);
    Region right = box(3_650, 2_000, 4_650, 4_000);
    assertThat(gaps(left, right)).hasSize(1);
    List<Line> gaps = gaps(left, right, box(3_250, 2_900, 3_400, 3_100));
    assertThat(gaps).hasSize(2);
    isGap(gaps.get(0), 250, 3_125, 3_000);
    isGap(gaps.get(1), 250, 3_525, 3_000);
  }

  @Test
  void one_way_through_is_told_once_where_it_is_narrowest() {
    Region wall = box(2_000, 600, 5_000, 1_500);
    Region nose = box(2_900, 450, 3_100, 700);
    List<Line> gaps = gaps(wall.union(nose));
    assertThat(gaps).hasSize(2);
    isGap(gaps.get(0), 450, 3_000, 225);
    isGap(gaps.get(1), 600, 4_050, 300);
    assertThat(gaps(box(2_000, 600, 3_900, 1_500).union(nose))).hasSize(1);
  }

  @Test
  void a_recess_shallower_than_half_its_width_is_none() {
    Region room = box(0, 0, 6_000, 4_000);
    assertThat(GapFinder.find(room.union(box(2_000, 4_000, 2_600, 4_400)), WIDEST)).isEmpty();
    List<Line> deep = GapFinder.find(room.union(box(2_000, 4_000, 2_600, 5_400)), WIDEST);
    assertThat(deep).hasSize(1);
    isGap(deep.get(0), 600, 2_300, 4_700);
  }

  @Test
  void where_the_floor_lies_and_how_it_is_turned_changes_no_gap() {
    Region posts =
        Region.union(
            List.of(
                box(2_000, 2_000, 3_000, 3_000),
                box(3_300, 3_400, 4_300, 4_400),
                box(4_900, 3_600, 5_900, 4_300),
                diamond(8_000, 1_000, 500),
                box(600, 6_000, 1_600, 7_000)));
    for (int i = 0; i < 16; i++) {
      double tilt = i < 8 ? 0 : 0.3;
      Affine there = Affine.turn(i * Math.PI / 2 + tilt).then(Affine.move(350 * (i % 4), 90 * i));
      List<Line> gaps = GapFinder.find(hall(posts).map(there), WIDEST);
      assertThat(gaps).as("place %d", i).hasSize(4);
      assertThat(gaps).allMatch(g -> g.length() < WIDEST);
      assertThat(gaps.get(0).length()).isCloseTo(500, within(0.01));
      assertThat(gaps.get(1).length()).isCloseTo(500, within(0.01));
      assertThat(gaps.get(2).length()).isCloseTo(600, within(0.01));
      assertThat(gaps.get(3).length()).isCloseTo(600, within(0.01));
    }
  }
}
