package slabwright.inlay.settingout;

import java.util.ArrayList;
import java.util.List;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/**
 * The setting out of an inlay: a fix for each panel corner and a diagonal check for each panel.
 *
 * @param points the four corners of each panel, as read, in the order of the panels
 * @param diagonals in the order of the panels
 */
public record SettingOut(List<SettingOutPoint> points, List<DiagonalCheck> diagonals) {
  public SettingOut {
    points = List.copyOf(points);
    diagonals = List.copyOf(diagonals);
  }

  /**
   * Finds the fixes.
   *
   * @param toSite from the blank's frame to the site's
   * @param floor the free floor: a tape runs over it alone, through nothing that stands on it
   * @param corners that can be found on the site
   */
  public static SettingOut of(
      PanelPlan plan,
      Affine toSite,
      Region floor,
      List<KnownCorner> corners,
      SettingOutParameters rules) {
    SettingOutMethodSearch search = new SettingOutMethodSearch(floor, corners, rules);
    List<SettingOutPoint> points = new ArrayList<>();
    List<DiagonalCheck> diagonals = new ArrayList<>();
    for (Panel panel : plan.panels()) {
      Bounds b = panel.box();
      for (SettingOutPoint.Corner corner : SettingOutPoint.Corner.values()) {
        Vec at = toSite.apply(corner.of(b));
        points.add(new SettingOutPoint(panel.name(), corner, at, search.to(at)));
      }
      diagonals.add(new DiagonalCheck(panel.name(), Math.hypot(b.width(), b.height())));
    }
    return new SettingOut(points, diagonals);
  }
}
