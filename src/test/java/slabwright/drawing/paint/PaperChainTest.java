package slabwright.drawing.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;

/** Distances are those of the Java library. */
class PaperChainTest {
  @Property(tries = 300)
  void what_is_left_out_lies_on_the_line_that_is_drawn(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) throws IOException {
    List<Vec> walk = walk(seed);
    List<Vec> led = led(walk);
    double worst = 0;
    for (int i = 0, k = 0; i < walk.size(); i++) {
      if (k + 1 < led.size() && walk.get(i).equals(led.get(k + 1))) {
        k++;
      }
      int end = Math.min(k + 1, led.size() - 1);
      worst =
          Math.max(worst, Math.min(off(walk.get(i), led, k, end), off(walk.get(i), led, k - 1, k)));
    }
    assertThat(worst).isLessThan(PaperChain.OFF + 1e-9);
    assertThat(led).startsWith(walk.get(0)).endsWith(walk.get(walk.size() - 1));
  }

  @Test
  void a_circle_of_many_points_is_drawn_by_few() throws IOException {
    List<Vec> circle = new ArrayList<>();
    for (int i = 0; i <= 2000; i++) {
      double a = i * Math.PI / 1000;
      circle.add(new Vec(5 * Math.cos(a), 5 * Math.sin(a)));
    }
    assertThat(led(circle)).hasSizeBetween(60, 170);
  }

  @Test
  void a_line_that_turns_back_on_itself_keeps_its_end() throws IOException {
    Vec far = new Vec(10, 0);
    assertThat(led(List.of(new Vec(0, 0), new Vec(4, 0), far, new Vec(3, 0))))
        .containsExactly(new Vec(0, 0), far, new Vec(3, 0));
  }

  @Test
  void a_dot_stays_a_dot() throws IOException {
    Vec at = new Vec(3, 4);
    assertThat(led(List.of(at, at))).containsExactly(at, at);
    assertThat(led(List.of(at))).containsExactly(at);
    assertThat(led(List.of())).isEmpty();
  }

  private static List<Vec> led(List<Vec> points) throws IOException {
    List<Vec> out = new ArrayList<>();
    PaperChain.lead(points, (p, begins) -> out.add(p));
    return out;
  }

  private static double off(Vec p, List<Vec> led, int a, int b) {
    if (a < 0) {
      return Double.POSITIVE_INFINITY;
    }
    Vec from = led.get(a);
    Vec to = led.get(b);
    return Line2D.ptSegDist(from.x(), from.y(), to.x(), to.y(), p.x(), p.y());
  }

  /** Steps of a few thousandths to some hundredths of a millimetre that bend, turn and stop. */
  private static List<Vec> walk(long seed) {
    Random random = new Random(seed);
    List<Vec> walk = new ArrayList<>();
    Vec at = new Vec(random.nextInt(200), random.nextInt(200));
    double heading = random.nextDouble() * 7;
    double step = Math.pow(10, -3 + 2 * random.nextDouble());
    double bend = random.nextDouble() * 0.2;
    for (int i = 0; i < 400; i++) {
      walk.add(at);
      heading += random.nextInt(60) == 0 ? 3 * random.nextGaussian() : bend * random.nextGaussian();
      double far = random.nextInt(40) == 0 ? 0 : step * random.nextDouble();
      at = new Vec(at.x() + far * Math.cos(heading), at.y() + far * Math.sin(heading));
    }
    return walk;
  }
}
