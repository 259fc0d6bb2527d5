package slabwright.desk.cards.inlay;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.edit.SelectionEdits;
import slabwright.desk.model.scene.FloorPictureMaker;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.OutlineShape;
import slabwright.site.Spot;

/**
 * The way in nearest to an inlay, to place it by: offsets along its wall from a jamb, and off the
 * wall.
 *
 * @param jamb the first jamb, mm on the site
 * @param along the wall's direction, length 1
 * @param in onto the floor, length 1
 */
record DoorwayDatum(Doorway doorway, Vec jamb, Vec along, Vec in) {
  /** The nearest way in, or the nearest doorway where there is no way in. */
  public static Optional<DoorwayDatum> nearest(FloorArea area, Vec to) {
    OutlineShape shape = OutlineShape.of(area.outline(), FloorPictureMaker.TOLERANCE);
    boolean ways = area.doorways().stream().anyMatch(Doorway::wayIn);
    return area.doorways().stream()
        .filter(d -> d.wayIn() || !ways)
        .filter(d -> shape.doorway(d).points().size() > 1)
        .map(d -> of(d, shape))
        .min(Comparator.comparingDouble(j -> j.jamb().distanceTo(to)));
  }

  private static DoorwayDatum of(Doorway d, OutlineShape shape) {
    List<Vec> gap = shape.doorway(d).points();
    Vec along = gap.get(gap.size() - 1).minus(gap.get(0)).unit();
    return new DoorwayDatum(d, gap.get(0), along, along.left().times(shape.floorOnLeft() ? 1 : -1));
  }

  /** How far along the wall from the jamb a point lies, mm. */
  public double along(Spot p) {
    return p.vec().minus(jamb).dot(along);
  }

  /** How far off the wall a point lies, mm. */
  public double off(Spot p) {
    return p.vec().minus(jamb).dot(in);
  }

  public Spot at(double alongMm, double offMm) {
    return Spot.of(jamb.plus(along.times(alongMm)).plus(in.times(offMm)));
  }

  /** By how many degrees the inlay's up is turned from the way people walk in. */
  public double askew(Inlay i) {
    return SelectionEdits.normalAngle(i.turn() + 90 - Math.toDegrees(in.angle()));
  }
}
