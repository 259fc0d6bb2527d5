package slabwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;

class HatchTest {
  private static final Region RING =
      Region.rectangle(new Bounds(0, 0, 60, 40))
          .minus(Region.rectangle(new Bounds(20, 10, 40, 30)));
  private static final Bounds ALL = new Bounds(-1000, -1000, 1000, 1000);

  private static List<Line> lines(Hatch hatch, Bounds window) {
    return hatch.parts(window).stream().flatMap(p -> ((Stroke) p).lines().stream()).toList();
  }

  @ParameterizedTest
  @EnumSource(HatchPattern.class)
  void every_pattern_stays_inside_its_region(HatchPattern pattern) {
    Region room = RING.offset(0.01, 0.001);
    for (Line line : lines(Hatch.of(pattern, Palette.INK, RING), ALL)) {
      for (int i = 0; i <= 10; i++) {
        Vec p = line.points().get(0).towards(line.points().get(1), i / 10.0);
        assertThat(room.contains(p)).as("%s at %s", pattern, p).isTrue();
      }
    }
  }

  @Test
  void line_length_times_pitch_is_the_area_hatched() {
    for (HatchPattern pattern :
        List.of(HatchPattern.RISING, HatchPattern.FALLING, HatchPattern.UPRIGHT)) {
      Hatch fine =
          new Hatch(RING.rings(), pattern, Pen.of(0.1, Palette.INK), 0.05, new Vec(0.01, 0.013));
      double length = lines(fine, ALL).stream().mapToDouble(Line::length).sum();
      assertThat(length * 0.05).as("%s", pattern).isCloseTo(RING.area(), within(3.0));
    }
  }

  @Test
  void only_what_is_near_the_window_is_made() {
    Hatch huge =
        Hatch.of(HatchPattern.RISING, Palette.INK, Region.rectangle(new Bounds(0, 0, 1e6, 1e6)));
    List<Line> seen = lines(huge, new Bounds(500, 500, 600, 600));
    assertThat(seen).isNotEmpty().hasSizeLessThan(200);
    assertThat(lines(huge, new Bounds(-600, -600, -500, -500))).isEmpty();
  }

  @Property(tries = 200)
  void a_pattern_moves_with_its_origin(@ForAll @DoubleRange(min = -50, max = 50) double by) {
    Vec origin = new Vec(0.3, 0.7); // no row lies along a side
    Hatch here = new Hatch(RING.rings(), HatchPattern.LEVEL, Pen.of(0.2, Palette.INK), 2, origin);
    Hatch there = here.placed(View.yDown(1, Vec.ZERO, new Vec(by, by)));
    assertThat(lines(there, ALL)).hasSameSizeAs(lines(here, ALL));
    assertThat(lines(there, ALL).get(0).points().get(0).y() - by)
        .isCloseTo(lines(here, ALL).get(0).points().get(0).y(), within(1e-9));
  }
}
