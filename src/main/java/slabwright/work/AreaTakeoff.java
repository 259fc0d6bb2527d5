package slabwright.work;

import java.util.List;
import java.util.Optional;
import slabwright.floor.FloorTakeoff;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.Finish;
import slabwright.site.FloorArea;
import slabwright.site.Setting;
import slabwright.work.prep.PrepParameters;
import slabwright.work.top.TopTakeoff;

/**
 * One floor area with what was measured on it; what the work is planned from.
 *
 * @param floor the free floor, to be coated
 * @param cutIn length painted by brush before rolling, mm
 * @param tops ground by hand, a job apart
 * @param wayOut where the crew leaves; empty when the outline has no door and no open edge
 */
public record AreaTakeoff(
    FloorArea area,
    Region floor,
    double cutIn,
    Optional<Vec> wayOut,
    PrepParameters prep,
    List<TopTakeoff> tops,
    List<InlayTakeoff> inlays) {
  public AreaTakeoff {
    tops = List.copyOf(tops);
    String dye = firstInlayDye(area);
    inlays = inlays.stream().map(i -> i.withDye(dye)).toList();
  }

  /** From a take-off and the inlays that lie on the floor. */
  public static AreaTakeoff of(FloorTakeoff takeoff, List<InlayTakeoff> inlays) {
    return new AreaTakeoff(
        takeoff.area(),
        takeoff.net(),
        takeoff.cutIn(),
        WayOut.of(takeoff.area()),
        PrepParameters.of(takeoff),
        TopTakeoff.of(takeoff),
        inlays);
  }

  /** What a colour gets that names no product of its own. */
  private static String firstInlayDye(FloorArea area) {
    return area.finish().coats().stream()
        .filter(c -> c.target() == Finish.Target.INLAY)
        .map(Finish.Coat::product)
        .findFirst()
        .orElse("");
  }

  /** Net floor in mm². */
  public double net() {
    return floor.area();
  }

  /**
   * Length in mm that film and tape are put along before dye is sprayed: what is cut in elsewhere,
   * and the doorways, as colour stops there. Common practice, no source.
   */
  public double masked() {
    return cutIn + area.doorways().stream().mapToDouble(d -> d.width().mm()).sum();
  }

  public boolean isOutdoors() {
    return area.setting() == Setting.OUTDOOR;
  }
}
