package slabwright.site;

import java.util.List;
import slabwright.shape.Vec;

/**
 * The client's photo, to show the finished floor on.
 *
 * @param file path relative to the plan's folder and inside it
 * @param points four places that are known in the photo and on the floor
 * @param mask corners of the part of the photo that is floor, in pixels (x right, y down); empty
 *     means all that the floor reaches, else at least 3
 */
public record ClientPhoto(String file, List<FloorPoint> points, List<Vec> mask) {
  public ClientPhoto {
    points = List.copyOf(points);
    mask = List.copyOf(mask);
  }

  /** The same photo after the floor that it shows has moved. */
  public ClientPhoto moved(Move how) {
    return new ClientPhoto(
        file,
        points.stream().map(p -> new FloorPoint(p.picture(), how.spot(p.floor()))).toList(),
        mask);
  }

  /**
   * One place.
   *
   * @param picture in pixels of the photo, x right, y down
   * @param floor on the site
   */
  public record FloorPoint(Vec picture, Spot floor) {}
}
