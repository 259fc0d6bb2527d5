package slabwright.floor;

import slabwright.shape.Region;
import slabwright.site.Mark;

/** What stands on the floor inside the outline; where two overlap the later mark owns the place. */
public record Obstacle(Mark mark, Region region) {
  /** Area of its foot in mm². */
  public double area() {
    return region.area();
  }
}
