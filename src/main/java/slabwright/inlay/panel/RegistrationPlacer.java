package slabwright.inlay.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/**
 * Finds places for registration ticks: near the corners of every panel, on film of every colour,
 * wholly inside the panel and across no other panel's edge.
 */
final class RegistrationPlacer {
  private static final double STEP = 10;
  private static final double[] RIMS = {12, 2};
  private static final double REACH_SHARE = 0.35;
  private static final double OUT_OF_LINE = 0.1;

  private final Region openings;
  private final List<Panel> panels;
  private final List<RegistrationTick> ticks = new ArrayList<>();

  /**
   * A placer.
   *
   * @param openings of all stencils together
   */
  RegistrationPlacer(Region openings, List<Panel> panels) {
    this(openings, panels, List.of());
  }

  /**
   * A placer that adds to ticks that are common already.
   *
   * @param there ticks that panels of other stencils have
   */
  RegistrationPlacer(Region openings, List<Panel> panels, List<RegistrationTick> there) {
    this.openings = openings;
    this.panels = List.copyOf(panels);
    this.ticks.addAll(there);
  }

  /** The same, with more only for panels that the ticks there are don't hold. */
  List<RegistrationTick> placeWhereNeeded() {
    for (Panel panel : panels) {
      if (!holds(panel, on(panel, ticks))) {
        place(panel);
      }
    }
    return ticks;
  }

  /** The ticks that lie wholly on a panel. */
  static List<RegistrationTick> on(Panel panel, List<RegistrationTick> ticks) {
    Bounds inside = panel.box().grown(-RegistrationTick.ARM);
    return ticks.stream().filter(t -> inside.contains(t.at())).toList();
  }

  /** The ticks of all panels; a panel without enough room has fewer than it needs. */
  List<RegistrationTick> place() {
    panels.forEach(this::place);
    return ticks;
  }

  private void place(Panel panel) {
    for (boolean[] corner :
        new boolean[][] {{false, false}, {true, false}, {true, true}, {false, true}}) {
      Optional<Vec> at = Optional.empty();
      for (double rim : RIMS) {
        Bounds box = panel.box().grown(-RegistrationTick.ARM - rim);
        if (at.isEmpty() && !box.isEmpty()) {
          at = near(box, corner[0], corner[1]);
        }
      }
      at.ifPresent(v -> ticks.add(new RegistrationTick(ticks.size() + 1, v)));
    }
  }

  /** The free place nearest to a corner, not farther in than a third of the panel. */
  private Optional<Vec> near(Bounds box, boolean right, boolean low) {
    int across = (int) Math.floor(REACH_SHARE * box.width() / STEP);
    int down = (int) Math.floor(REACH_SHARE * box.height() / STEP);
    for (int ring = 0; ring <= across + down; ring++) {
      for (int i = Math.max(0, ring - down); i <= Math.min(ring, across); i++) {
        double x = right ? box.maxX() - i * STEP : box.minX() + i * STEP;
        int j = ring - i;
        double y = low ? box.maxY() - j * STEP : box.minY() + j * STEP;
        Vec at = new Vec(x, y);
        if (isFree(at)) {
          return Optional.of(at);
        }
      }
    }
    return Optional.empty();
  }

  private boolean isFree(Vec at) {
    double arm = RegistrationTick.ARM;
    boolean across =
        panels.stream()
            .map(Panel::box)
            .anyMatch(b -> b.grown(arm).contains(at) && !b.grown(-arm).contains(at));
    boolean taken =
        ticks.stream().anyMatch(t -> t.at().distanceTo(at) < 2 * (arm + RegistrationTick.CLEAR));
    return !across && !taken && openings.distanceTo(at) >= arm + RegistrationTick.CLEAR;
  }

  /** Whether the ticks on a panel hold it: three, and one of them beside the line of two others. */
  static boolean holds(Panel panel, List<RegistrationTick> ticks) {
    double beside = OUT_OF_LINE * Math.min(panel.box().width(), panel.box().height());
    for (int i = 0; i < ticks.size(); i++) {
      for (int j = i + 1; j < ticks.size(); j++) {
        Vec a = ticks.get(i).at();
        Vec along = ticks.get(j).at().minus(a).unit();
        if (ticks.stream().anyMatch(t -> Math.abs(t.at().minus(a).cross(along)) > beside)) {
          return ticks.size() >= RegistrationTick.NEEDED;
        }
      }
    }
    return false;
  }
}
