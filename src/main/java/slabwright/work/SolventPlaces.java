package slabwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Setting;
import slabwright.units.UnitSystem;
import slabwright.work.air.AirPath;

/**
 * Where on a floor with solvent the gas meter is held and where extinguishers stand: one source for
 * the plan that shows them and the list they are loaded by. Common practice, no source.
 *
 * @param floor without what stands on it
 * @param path of the air, where it is drawn
 */
public record SolventPlaces(
    FloorArea area, Region floor, Optional<AirPath> path, UnitSystem units) {
  /** Pieces smaller than this share of the floor are not worth a meter point. */
  private static final double WORTH = 0.02;

  private static final int MOST = 4;

  /** How near to a curve, mm. */
  private static final double TOLERANCE = 0.5;

  /** Outdoors the wind does what it will: no fan draws, and doors beside the floor are shut. */
  public static SolventPlaces of(FloorArea area, Region floor, AirPlan air, UnitSystem units) {
    return new SolventPlaces(area, floor, isOutdoors(area) ? Optional.empty() : air.path(), units);
  }

  /** How far to each side of its way moving air is taken to sweep: common practice, no source. */
  public static double sweep(UnitSystem units) {
    return units == UnitSystem.METRIC ? 3000 : 10 * 304.8;
  }

  public boolean isOutdoors() {
    return isOutdoors(area);
  }

  private static boolean isOutdoors(FloorArea area) {
    return area.setting() == Setting.OUTDOOR;
  }

  /** What the air misses; nothing outdoors. */
  public Region missed() {
    return isOutdoors()
        ? Region.empty()
        : path.map(
                p ->
                    floor.minus(
                        Region.around(
                            Line.of(p.inlet().at(), p.outlet().at()),
                            sweep(units),
                            true,
                            TOLERANCE)))
            .orElse(floor);
  }

  /** At the fan first, then in the middle of each large place that the air misses. */
  public List<Vec> meterPoints() {
    List<Vec> points = new ArrayList<>();
    path.ifPresent(p -> points.add(p.outlet().at().towards(p.inlet().at(), 0.12)));
    if (isOutdoors()) {
      points.add(floor.labelPoint());
    }
    missed().parts().stream()
        .filter(r -> r.area() > WORTH * floor.area())
        .sorted((a, b) -> Double.compare(b.area(), a.area()))
        .limit(MOST)
        .forEach(r -> points.add(r.labelPoint()));
    return points;
  }

  /** Beside each stands an extinguisher. */
  public List<Doorway> exits() {
    return area.doorways().stream().filter(d -> !isShut(d)).toList();
  }

  /** Outdoors a door into another floor is no way out while there is another: vapour follows. */
  public boolean isShut(Doorway d) {
    return isOutdoors()
        && leads(d)
        && area.doorways().stream().anyMatch(o -> o.wayIn() && !leads(o));
  }

  private static boolean leads(Doorway d) {
    return d.passage().leadsTo().isPresent();
  }
}
