package slabwright.inlay.stencil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import slabwright.inlay.RandomGraphic;
import slabwright.shape.Region;

class StencilPropertyTest {
  private static final double GRID = 0.001;

  @Property(tries = 15)
  void openings_and_mask_make_the_blank_and_share_no_inside(@ForAll long seed) {
    StencilSet set = twoColours(seed, 4);
    Region blank = Region.rectangle(set.blank());
    for (Stencil stencil : set.stencils()) {
      assertThat(stencil.openings().intersect(stencil.mask()).area()).isZero();
      assertThat(blank.minus(stencil.openings().union(stencil.mask())).area()).isZero();
      assertThat(stencil.openings().area() + stencil.mask().area())
          .isCloseTo(blank.area(), within(1e-9 * blank.area()));
    }
  }

  /** The same of many more. */
  @Tag("long")
  @Property(tries = 200)
  void openings_and_mask_make_the_blank_and_share_no_inside_of_200(@ForAll long seed) {
    openings_and_mask_make_the_blank_and_share_no_inside(seed);
  }

  @Property(tries = 10)
  void spread_never_dyes_bare_floor(@ForAll long seed) {
    StencilSet plain = twoColours(seed, 0);
    StencilSet grown = twoColours(seed, 6);
    double rounding = GRID * grown.cutLength();
    assertThat(grown.openings().minus(plain.openings()).area()).isLessThan(rounding);
    assertThat(plain.openings().minus(grown.openings()).area()).isLessThan(rounding);
  }

  /** The same of many more. */
  @Tag("long")
  @Property(tries = 200)
  void spread_never_dyes_bare_floor_of_200(@ForAll long seed) {
    spread_never_dyes_bare_floor(seed);
  }

  private static StencilSet twoColours(long seed, double spread) {
    List<DyeLayer> layers = new ArrayList<>();
    for (Region colour : new RandomGraphic(seed, 1000).colours(2)) {
      layers.add(new DyeLayer("colour " + layers.size(), 50, colour));
    }
    return StencilSet.of(layers, StencilParameters.usual().withSpread(spread));
  }
}
