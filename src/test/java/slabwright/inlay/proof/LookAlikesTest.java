package slabwright.inlay.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.FillRule;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * Drawings of so many islands that look alike that poses come from those whose neighbours agree.
 * Most are drawn without the blank's edge, which would tell the pose by itself.
 */
class LookAlikesTest {
  private static final int MANY = 160;

  @Test
  void poses_of_eighty_islands_are_those_of_all_pairs() {
    LookAlikes.Job job = LookAlikes.STREWN.job(80, 1);
    assertThat(poses(job))
        .isEqualTo(
            PoseCandidates.of(
                job.sheet(), contours(job.openings()), ScaleRange.FOR_CUTTING, Integer.MAX_VALUE))
        .hasSizeGreaterThan(500);
  }

  /** Every fourth dot of a grid across and up: none has one of its neighbours. */
  @Test
  void where_no_neighbour_is_drawn_all_are_taken_with_all() {
    List<Ring> dots = new ArrayList<>();
    List<Ring> drawn = new ArrayList<>();
    for (int i = 0; i < 256; i++) {
      double x = 60 + 60 * (i % 16);
      double y = 60 + 60 * (i / 16);
      Ring dot = new Ring(List.of(at(x + 20, y), at(x, y + 20), at(x - 20, y), at(x, y - 20)));
      dots.add(dot);
      if (i % 4 == 0 && i / 16 % 4 == 0) {
        drawn.add(dot);
      }
    }
    PlannedPiece sheet =
        new PlannedPiece("", new Bounds(0, 0, 1020, 1020), Region.of(dots, FillRule.NONZERO));
    List<RingMoments> sixteen = contours(Region.of(drawn, FillRule.NONZERO));
    assertThat(PoseCandidates.of(sheet, sixteen, ScaleRange.FOR_CUTTING, 0))
        .isEqualTo(PoseCandidates.of(sheet, sixteen, ScaleRange.FOR_CUTTING, Integer.MAX_VALUE))
        .isNotEmpty();
  }

  private static Vec at(double x, double y) {
    return new Vec(x, y);
  }

  @Test
  void poses_grow_with_the_islands_and_not_with_their_pairs() {
    assertThat(poses(LookAlikes.STREWN.job(2 * MANY, 2)))
        .hasSizeLessThan(3 * poses(LookAlikes.STREWN.job(MANY, 2)).size());
  }

  private static List<Pose> poses(LookAlikes.Job job) {
    return PoseCandidates.of(job.sheet(), contours(job.openings()), ScaleRange.FOR_CUTTING);
  }

  @ParameterizedTest
  @EnumSource
  void the_pose_that_many_islands_are_drawn_in_is_among_those_tried(LookAlikes kind) {
    LookAlikes.Job job = kind.job(MANY, 3);
    Map<LookAlikes.Drawn, Affine> drawn =
        Map.of(
            LookAlikes.Drawn.OUTER_ONE_MOVED_BY_10_MM, Affine.scale(-1, 1),
            LookAlikes.Drawn.A_QUARTER_MISSING, Affine.scale(0.98, 0.98));
    drawn.forEach(
        (how, before) -> {
          Random random = new Random(7);
          Affine laid = before.then(LookAlikes.anywhere(random));
          List<RingMoments> contours = contours(how.of(job, job, random).map(laid));
          assertThat(
                  PoseCandidates.of(job.sheet(), contours, ScaleRange.FOR_CUTTING).stream()
                      .mapToDouble(p -> apart(p.affine(), laid, job.blank()))
                      .min()
                      .orElseThrow())
              .as("%s %s", kind, how)
              .isLessThan(10);
        });
  }

  private static List<RingMoments> contours(Region openings) {
    return DrawingContours.of(LookAlikes.drawing(openings, Optional.empty())).rings();
  }

  private static double apart(Affine a, Affine b, Bounds blank) {
    return Ring.rectangle(0, 0, blank.maxX(), blank.maxY()).points().stream()
        .mapToDouble(corner -> a.apply(corner).distanceTo(b.apply(corner)))
        .max()
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"STREWN, RIGHT", "STREWN, ONE_MOVED_BY_2_MM", "WAVY, TWO_EXCHANGED"})
  void many_islands_are_judged_right_where_they_are_and_only_there(
      LookAlikes kind, LookAlikes.Drawn how) {
    judge(kind, how, MANY, 4);
  }

  @ParameterizedTest
  @EnumSource
  @Tag("long")
  void every_kind_of_island_is_judged_right_where_it_is_and_only_there(LookAlikes kind) {
    for (int count : new int[] {300, 1000, 2000}) {
      for (LookAlikes.Drawn how : LookAlikes.Drawn.values()) {
        judge(kind, how, count, count);
      }
    }
  }

  /** Mostly without the blank's edge, so that the islands alone tell the pose. */
  private static void judge(LookAlikes kind, LookAlikes.Drawn how, int count, long seed) {
    LookAlikes.Job job = kind.job(count, seed);
    Random random = new Random(seed);
    Region drawn = how.of(job, kind.job(count, seed + 1), random);
    Affine laid = LookAlikes.anywhere(random);
    Optional<Ring> edge = how.needsEdge() ? Optional.of(job.edge().map(laid)) : Optional.empty();
    ProofReport report =
        ProofCheck.run(
            ProofPlan.whole(job.openings(), job.blank()),
            LookAlikes.drawing(drawn.map(laid), edge),
            ShadingMeaning.PULLED_OUT);
    List<ProofFault> faults =
        report.faults().stream().filter(f -> !(f instanceof ProofFault.EdgeMissing)).toList();
    if (how.isRight(kind)) {
      assertThat(faults).as("%s %s %d", kind, how, count).isEmpty();
    } else {
      assertThat(faults).as("%s %s %d", kind, how, count).hasAtLeastOneElementOfType(how.told());
    }
  }
}
