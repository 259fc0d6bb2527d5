package slabwright.floor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Machine;
import slabwright.site.MarkKind;

/**
 * Reach against a flood fill on a fine raster. The raster can't tell a gap from a wall within a
 * cell or two, so the true reach must lie between the raster's for a slightly wider and a slightly
 * narrower machine.
 */
class RasterReachTest {
  private static final double CELL = 20;

  /** Half a cell's diagonal at either end of a distance, and the flattening. */
  private static final double ERROR = CELL * Math.sqrt(2) + 2;

  /** Outlines are snapped: a cell's middle so near to one may be told to lie on either side. */
  private static final double SEAM = 0.05;

  @Example
  void a_cell_on_the_line_between_floor_and_way_in_is_open() {
    reach_lies_between_two_flood_fills(174);
  }

  @Example
  void the_tip_of_a_trench_between_two_cells_is_in_the_way() {
    reach_lies_between_two_flood_fills(-1458237863937041881L);
  }

  @Property(tries = 10_000)
  @Tag("long")
  void reach_lies_between_two_flood_fills_on_thousands_of_floors(@ForAll long seed) {
    reach_lies_between_two_flood_fills(seed);
  }

  @Property(tries = 100)
  void reach_lies_between_two_flood_fills(@ForAll long seed) {
    RandomFloors random = new RandomFloors(seed);
    double body = random.between(400, 900);
    Machine machine = Floors.machine(body, body - random.between(0, 200), random.between(0, 60));
    FloorArea area = random.area().withMachines(List.of(machine));
    FloorTakeoff t = FloorTakeoff.of(area, 0.5, () -> false);
    Bounds bounds = t.gross().bounds().grown(1_500);
    DistanceRaster raster = new DistanceRaster(bounds, CELL);
    boolean[] inner = flood(raster, t, machine, ERROR);
    boolean[] outer = flood(raster, t, machine, -ERROR);
    boolean[] exact = raster.fill(t.asFound().machine());
    boolean[] grindable = raster.fill(ground(t, false).offset(-SEAM, SEAM / 2));
    List<Vec> missed = new ArrayList<>();
    List<Vec> tooFar = new ArrayList<>();
    for (int i = 0; i < raster.size(); i++) {
      if (inner[i] && grindable[i] && !exact[i]) {
        missed.add(raster.middle(i));
      }
      if (exact[i] && !outer[i]) {
        tooFar.add(raster.middle(i));
      }
    }
    assertThat(missed).as("must be reached").isEmpty();
    assertThat(tooFar).as("must not be reached").isEmpty();
  }

  /**
   * Erode by half the body with the clearance it rolls with, flood from the ways in, keep what has
   * the working clearance, dilate by the half head; {@code e} harder.
   */
  private static boolean[] flood(DistanceRaster raster, FloorTakeoff t, Machine m, double e) {
    double depth = m.body().mm() + Math.max(m.clearance().mm(), m.passing().mm());
    List<Region> boxes =
        WayIn.of(t.area(), t.gross(), depth, 0.5).stream()
            .map(w -> w.box().offset(SEAM, SEAM / 2))
            .toList();
    boolean[] open = raster.fill(ground(t, true));
    boolean[] seeds = new boolean[raster.size()];
    for (Region box : boxes) {
      boolean[] inside = raster.fill(box);
      for (int i = 0; i < open.length; i++) {
        open[i] |= inside[i];
        seeds[i] |= inside[i];
      }
    }
    double[] room = raster.distanceTo(shut(raster, t, boxes, open, e > 0));
    boolean[] fits = new boolean[open.length];
    for (int i = 0; i < open.length; i++) {
      fits[i] = open[i] && room[i] > m.passage() / 2 + e;
    }
    boolean[] rolls = raster.flood(fits, seeds);
    double[] off = raster.distanceTo(rolls);
    double hug = Math.max(0, 2 * (m.passing().mm() - m.clearance().mm()) - (e > 0 ? 0 : 2 * e));
    boolean[] middle = new boolean[open.length];
    for (int i = 0; i < open.length; i++) {
      boolean near = m.passing().mm() > m.clearance().mm() ? off[i] < hug : rolls[i];
      middle[i] = open[i] && near && room[i] > m.body().mm() / 2 + m.clearance().mm() + e;
    }
    double[] away = raster.distanceTo(middle);
    boolean[] ground = new boolean[open.length];
    for (int i = 0; i < open.length; i++) {
      ground[i] = away[i] < m.grinding().mm() / 2 - (e > 0 ? 0 : 2 * e);
    }
    return ground;
  }

  /** What is not open and, for the harder flood, every cell with a point of an obstacle's edge. */
  private static boolean[] shut(
      DistanceRaster raster, FloorTakeoff t, List<Region> boxes, boolean[] open, boolean harder) {
    Region all = ground(t, true).union(Region.union(boxes));
    boolean[] shut = harder ? raster.outlineOf(all) : new boolean[open.length];
    for (int i = 0; i < open.length; i++) {
      shut[i] |= !open[i];
    }
    return shut;
  }

  /** Floor that may be driven on, or, stricter, ground by machine, read off the zones. */
  private static Region ground(FloorTakeoff t, boolean drive) {
    return Region.union(
        t.zones().stream()
            .filter(z -> z.mark().map(m -> allows(m.kind(), drive)).orElse(true))
            .map(Zone::region)
            .toList());
  }

  private static boolean allows(MarkKind kind, boolean drive) {
    if (kind instanceof MarkKind.Trench trench) {
      return !trench.stopsMachine();
    }
    return drive || !(kind instanceof MarkKind.DrainOrBox);
  }
}
