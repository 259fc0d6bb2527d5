package slabwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class WindowTest {
  private static final Region ELL =
      Region.rectangle(new Bounds(0, 0, 100, 40))
          .union(Region.rectangle(new Bounds(0, 0, 40, 100)));
  private static final Window WINDOW = new Window(ELL);

  @Test
  void what_lies_inside_or_along_the_edge_stays_as_it_was() {
    assertThat(WINDOW.cut(ELL.rings(), FillRule.EVEN_ODD)).isEmpty();
    assertThat(WINDOW.cut(List.of(Ring.rectangle(10, 10, 90, 30)), FillRule.NONZERO)).isEmpty();
    assertThat(WINDOW.cut(ELL.rings().get(0))).isEmpty();
    assertThat(WINDOW.cut(Line.of(new Vec(0, 0), new Vec(100, 0)))).isEmpty();
  }

  @Test
  void what_lies_partly_outside_is_cut() {
    Region seen =
        WINDOW.cut(List.of(Ring.rectangle(20, 20, 60, 60)), FillRule.NONZERO).orElseThrow();
    assertThat(seen.area()).isCloseTo(40 * 40 - 20 * 20, within(1e-9));
    List<Line> lines = WINDOW.cut(Line.of(new Vec(20, 60), new Vec(60, 60))).orElseThrow();
    assertThat(lines).hasSize(1);
    assertThat(lines.get(0).length()).isCloseTo(20, within(0.1));
  }

  @Test
  void what_lies_outside_is_nothing() {
    assertThat(WINDOW.cut(List.of(Ring.rectangle(60, 60, 90, 90)), FillRule.NONZERO))
        .hasValueSatisfying(r -> assertThat(r.isEmpty()).isTrue());
    assertThat(WINDOW.cut(Ring.rectangle(60, 60, 90, 90)))
        .hasValueSatisfying(lines -> assertThat(lines).isEmpty());
    assertThat(new Window(Region.empty()).cut(ELL.rings(), FillRule.EVEN_ODD))
        .hasValueSatisfying(r -> assertThat(r.isEmpty()).isTrue());
  }
}
