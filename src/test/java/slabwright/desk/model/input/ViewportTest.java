package slabwright.desk.model.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

class ViewportTest {
  @Property(tries = 200)
  void zooming_keeps_the_place_under_the_pointer(
      @ForAll @DoubleRange(min = 0.2, max = 5) double factor,
      @ForAll @DoubleRange(min = 0, max = 1400) double x,
      @ForAll @DoubleRange(min = 0, max = 900) double y) {
    Viewport v = new Viewport(0.05, 200, 500);
    Vec before = v.toSite(x, y);
    Vec after = v.zoomed(factor, x, y).toSite(x, y);
    assertThat(after.distanceTo(before)).isCloseTo(0, within(1e-6));
  }

  @Property(tries = 200)
  void fitting_shows_all_of_the_bounds(
      @ForAll @DoubleRange(min = 100, max = 90_000) double w,
      @ForAll @DoubleRange(min = 100, max = 90_000) double h) {
    Bounds box = new Bounds(200, 80, 900, 700);
    Viewport v = Viewport.fitting(new Bounds(0, 0, w, h), box);
    Bounds grown = box.grown(1e-6);
    assertThat(grown.contains(v.toScreen(new Vec(0, 0)))).isTrue();
    assertThat(grown.contains(v.toScreen(new Vec(w, h)))).isTrue();
  }
}
