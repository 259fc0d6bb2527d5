package slabwright.floor;

import java.util.Optional;
import slabwright.shape.Region;
import slabwright.site.Mark;

/**
 * The hand work along one thing: an edge of the floor, or a trench or trim that keeps the machine
 * off.
 *
 * @param edge the edge; empty for what lies in the floor
 * @param along the mark in the floor that keeps the machine off; empty for an edge
 * @param length in mm of the edge, or of the mark's border with floor that is driven on
 * @param region the edge strips nearest to it; may be empty where the floor along it is a pocket
 */
public record EdgeStrip(Optional<Edge> edge, Optional<Mark> along, double length, Region region) {
  /** Area in mm². */
  public double area() {
    return region.area();
  }
}
