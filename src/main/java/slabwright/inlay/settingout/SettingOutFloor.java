package slabwright.inlay.settingout;

import java.util.List;
import slabwright.shape.Region;
import slabwright.site.Doorway;
import slabwright.site.OutlinePiece;
import slabwright.units.UnitSystem;

/**
 * The floor that an inlay is set out on, in the site's frame.
 *
 * @param free the free floor: a tape runs over it alone, through nothing that stands on it
 * @param units whose whole feet or meters square a line off
 */
public record SettingOutFloor(
    Region free, List<OutlinePiece> outline, List<Doorway> doorways, UnitSystem units) {
  public SettingOutFloor {
    outline = List.copyOf(outline);
    doorways = List.copyOf(doorways);
  }
}
