package slabwright.work.top;

import java.util.List;
import java.util.Optional;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.Obstacle;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;

/**
 * What there is to grind on a top or a flight of steps. Millimetres and mm².
 *
 * @param id of its mark
 * @param face the upper faces together, seen from above
 * @param freeSides how much of its outline does not stand against a wall
 * @param steps equal treads; 1 for a top
 * @param tread depth of one tread; 0 for a top
 * @param nosing length of one front edge between two treads; 0 for a top
 * @param thickness of the edges
 */
public record TopTakeoff(
    String id,
    String name,
    double face,
    double freeSides,
    int steps,
    double tread,
    double nosing,
    double thickness) {
  /**
   * The usual depth of a tread, 11 in, by which the way up is told from the shape (International
   * Building Code, least tread depth; from memory).
   */
  static final double USUAL_TREAD = 11 * 25.4;

  /** Every top and step of a floor area, in the order of its marks. */
  public static List<TopTakeoff> of(FloorTakeoff takeoff) {
    return takeoff.standing().stream().flatMap(s -> of(s, takeoff.gross()).stream()).toList();
  }

  private static Optional<TopTakeoff> of(Obstacle standing, Region gross) {
    Mark mark = standing.mark();
    if (!(mark.kind() instanceof MarkKind.TopOrStep kind) || standing.area() == 0) {
      return Optional.empty();
    }
    int steps = Math.max(1, kind.steps());
    Flight flight = steps == 1 ? new Flight(0, 0) : flight(mark.form(), standing.region(), steps);
    return Optional.of(
        new TopTakeoff(
            mark.id(),
            mark.name(),
            standing.area(),
            freeSides(standing.region(), gross),
            steps,
            flight.tread(),
            flight.nosing(),
            kind.thickness().mm()));
  }

  /**
   * Two regions that fill a third share half of what their boundaries have too much; what the foot
   * shares with the rest of the room is free, what it shares with the room's outline is not.
   */
  private static double freeSides(Region foot, Region gross) {
    double rest = gross.minus(foot).boundaryLength();
    return Math.max(0, (foot.boundaryLength() + rest - gross.boundaryLength()) / 2);
  }

  private record Flight(double tread, double nosing) {}

  /** Up the side whose treads come nearer to the usual depth. */
  private static Flight flight(Form form, Region region, int steps) {
    Bounds b = region.bounds();
    double one = form instanceof Form.Rectangle r ? r.length().mm() : b.width();
    double other = form instanceof Form.Rectangle r ? r.width().mm() : b.height();
    boolean upOne = off(one / steps) <= off(other / steps);
    return upOne ? new Flight(one / steps, other) : new Flight(other / steps, one);
  }

  private static double off(double tread) {
    return Math.abs(Math.log(tread / USUAL_TREAD));
  }

  /** All edges to grind: the free sides and the front edges between the treads. */
  public double edgeLength() {
    return freeSides + (steps - 1) * nosing;
  }

  /** The edges' faces. */
  public double edgeArea() {
    return edgeLength() * thickness;
  }
}
