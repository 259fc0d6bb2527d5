package slabwright.inlay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slabwright.inlay.cutfile.CutFile;
import slabwright.inlay.cutfile.CutFileParameters;
import slabwright.inlay.panel.PanelParameters;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.SeamPlanner;
import slabwright.inlay.stencil.Stencil;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.FillRule;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

class LargeGraphicTest {
  @Test
  void a_hundred_thousand_corners_keep_every_area() {
    StencilSet set = Graphics.one(cogs(40, 2500));
    Stencil stencil = set.stencils().get(0);
    int corners = stencil.openings().rings().stream().mapToInt(r -> r.points().size()).sum();
    assertThat(corners).isGreaterThan(100_000);
    double blank = set.blank().width() * set.blank().height();
    assertThat(stencil.openings().area() + stencil.mask().area())
        .isCloseTo(blank, within(1e-9 * blank));
    PanelPlan plan = new SeamPlanner(set, PanelParameters.usual()).best();
    List<CutFile> files = new CutFileParameters("cogs", 1).files(set, plan);
    double cut = files.stream().mapToDouble(f -> f.openings().area()).sum();
    double twice =
        plan.laps().stream()
            .mapToDouble(l -> stencil.openings().intersect(Region.rectangle(l.lap())).area())
            .sum();
    assertThat(cut - twice)
        .isCloseTo(stencil.openings().area(), within(1e-3 * stencil.cutLength()));
  }

  /** Wavy wheels that lie over each other, filled even-odd. */
  private static Region cogs(int count, int corners) {
    Random random = new Random(1);
    List<Ring> rings = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      Vec middle = new Vec(3000 * random.nextDouble(), 3000 * random.nextDouble());
      double radius = 100 + 300 * random.nextDouble();
      List<Vec> points = new ArrayList<>();
      for (int j = 0; j < corners; j++) {
        double a = 2 * Math.PI * j / corners;
        double r = radius * (1 + 0.1 * Math.sin(9 * a));
        points.add(middle.plus(new Vec(Math.cos(a), Math.sin(a)).times(r)));
      }
      rings.add(new Ring(points));
    }
    return Region.of(rings, FillRule.EVEN_ODD);
  }
}
