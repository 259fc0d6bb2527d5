package slabwright.inlay.panel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Bounds;
import slabwright.shape.Region;

class PanelTest {
  private static final Panel PANEL = new Panel("A", new Bounds(0, 0, 100, 100));

  private static Stencil stencil(Region open) {
    return new Stencil(1, "grey", open, open, open, Region.empty(), List.of());
  }

  private static Region box(double x, double y, double wide, double high) {
    return Region.rectangle(new Bounds(x, y, x + wide, y + high));
  }

  @Test
  void an_opening_that_only_touches_a_panels_side_is_not_cut_out_of_it() {
    assertThat(PANEL.opens(stencil(box(100, 10, 20, 20)))).isFalse();
  }

  @Test
  void a_panel_within_the_hole_of_an_opening_has_none_of_it() {
    Region around = box(-50, -50, 200, 200).minus(box(-10, -10, 120, 120));

    assertThat(PANEL.opens(stencil(around))).isFalse();
  }

  @Test
  void a_panel_opens_where_something_would_be_cut_out_of_it() {
    Random random = new Random(15);
    int open = 0;
    for (int i = 0; i < 400; i++) {
      Region all = Region.empty();
      for (int k = 0; k < 3; k++) {
        double x = 10 * (random.nextInt(34) - 16);
        double y = 10 * (random.nextInt(34) - 16);
        Region more = box(x, y, 10 + 10 * random.nextInt(9), 10 + 10 * random.nextInt(9));
        all = random.nextBoolean() ? all.union(more) : more.minus(all);
      }
      Stencil stencil = stencil(all);
      open += PANEL.opens(stencil) ? 1 : 0;

      assertThat(PANEL.opens(stencil)).isEqualTo(!PANEL.openings(stencil).isEmpty());
    }
    assertThat(open).isBetween(40, 360);
  }
}
