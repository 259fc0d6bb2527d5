package slabwright.tape;

import java.util.List;
import java.util.Optional;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * A room whose readings have been brought to agree. Frame: first corner at the origin, first wall
 * along x, y to its left; millimetres.
 *
 * @param room the readings it was made from
 * @param corners in walking order
 * @param rises height of each wall's arc over its chord, positive to the right of the walk, 0 for a
 *     straight wall
 * @param area mm², arcs included
 * @param areaSd standard deviation of the area, where the method gives one
 * @param redundancy how many readings more than needed
 * @param sigma how the residuals compare with the stated errors: 1 is as stated, more is worse
 */
public record AdjustedRoom(
    TapeRoom room,
    Method method,
    List<Corner> corners,
    List<Double> rises,
    double area,
    Optional<Double> areaSd,
    int redundancy,
    double sigma,
    ClosingReport closing,
    List<ReadingReport> readings,
    List<TapeAdvice> advice) {
  public AdjustedRoom {
    corners = List.copyOf(corners);
    rises = List.copyOf(rises);
    readings = List.copyOf(readings);
    advice = List.copyOf(advice);
  }

  /** A corner and how well it is known; the compass rule does not say how well. */
  public record Corner(String name, Vec at, Optional<ErrorEllipse> ellipse) {}

  /** How the readings were brought to agree. */
  public enum Method {
    /** Walls and turns only: the gap is shared out by the compass rule. */
    COMPASS_RULE,
    /** Weighted least squares on the corners. */
    LEAST_SQUARES
  }

  /** Whether the walk went round counter-clockwise, the room on its left. */
  public boolean counterClockwise() {
    return new Ring(corners.stream().map(Corner::at).toList()).signedArea() > 0;
  }
}
