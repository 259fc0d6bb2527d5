package slabwright.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.noding.MCIndexNoder;

class NodingTest {
  private static final int PASSES = 8;

  /** Every pass over everything, as it is defined. */
  private static List<Coordinate> plainly(List<GridChain> chains) {
    List<NodedRun> runs = new ArrayList<>();
    for (GridChain chain : chains) {
      runs.add(new NodedRun(chain.steps(), chain));
    }
    for (int pass = 0; pass < PASSES; pass++) {
      SegmentSplitter splitter = new SegmentSplitter(true, pass == 0 ? 0 : 2, () -> false);
      new MCIndexNoder(splitter, splitter.nearness()).computeNodes(runs);
      if (splitter.foundNothing()) {
        return corners(runs);
      }
      runs.forEach(NodedRun::split);
    }
    return List.of();
  }

  /** What the runs pass through in their order, each place where they join once. */
  private static List<Coordinate> corners(List<NodedRun> runs) {
    List<Coordinate> all = new ArrayList<>();
    for (NodedRun run : runs) {
      for (Coordinate c : run.getCoordinates()) {
        if (all.isEmpty() || !all.get(all.size() - 1).equals2D(c)) {
          all.add(c);
        }
      }
    }
    return all;
  }

  private static List<GridChain> chains(List<Ring> rings) {
    return GridChain.of(List.of(new Layer(0, rings, FillRule.NONZERO)));
  }

  @Property(tries = 200)
  void looking_only_at_what_is_fresh_splits_as_looking_at_everything(@ForAll long seed) {
    List<GridChain> chains = chains(new RandomRings(seed).some(5));
    assertThat(corners(Noding.joining(() -> false).run(chains))).isEqualTo(plainly(chains));
  }

  /** The sides of a sheaf of needles that meet at angles so flat that rounding bends them. */
  @Property(tries = 60)
  void so_it_is_for_needles_that_all_but_coincide(@ForAll long seed) {
    RandomRings random = new RandomRings(seed);
    List<Ring> needles = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      double x = 0.05 * random.fraction();
      needles.add(
          new Ring(
              List.of(
                  new Vec(x, 0),
                  new Vec(30 + 0.05 * random.fraction(), 90),
                  new Vec(30 + 0.05 * random.fraction(), 90 + random.fraction()),
                  new Vec(x + 0.01, 0.01))));
    }
    List<GridChain> chains = chains(needles);
    List<Coordinate> plainly = plainly(chains);
    List<Coordinate> noded = corners(Noding.joining(() -> false).run(chains));
    if (plainly.isEmpty()) {
      assertThat(noded).isNotEmpty();
    } else {
      assertThat(noded).isEqualTo(plainly);
    }
  }

  /** The same of many more. */
  @Tag("long")
  @Property(tries = 200)
  void so_it_is_for_needles_that_all_but_coincide_of_200(@ForAll long seed) {
    so_it_is_for_needles_that_all_but_coincide(seed);
  }

  /** Each crossing that is rounded makes the next, a step on along the same two edges. */
  @Example
  void edges_that_close_like_a_zip_settle_without_snap_rounding() {
    Ring one = ring(0, 0, 0.39, 0.393, 5.195, 0.195);
    Ring two = ring(-0.002, -0.002, 0.386, 0.389, -4.805, 0.218);
    Ring three = ring(0.001, -0.002, 0.387, 0.391, -3.805, 0.203);
    Noding noding = Noding.joining(() -> false);
    noding.run(chains(List.of(one, two, three)));
    assertThat(noding.rung()).isEqualTo(NodingMethod.PLAIN_AGAIN);
  }

  private static Ring ring(double ax, double ay, double bx, double by, double cx, double cy) {
    return new Ring(List.of(new Vec(ax, ay), new Vec(bx, by), new Vec(cx, cy)));
  }
}
