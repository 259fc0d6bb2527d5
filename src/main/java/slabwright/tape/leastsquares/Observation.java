package slabwright.tape.leastsquares;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A reading as a row of the adjustment: what was read, how far it can be trusted, and what the
 * corners make of it. Corners are one array of coordinates, {@code x0 y0 x1 y1 …} in mm.
 */
public sealed interface Observation
    permits DistanceObservation, TurnObservation, OffsetObservation, WallSpotObservation {
  /** The value read: mm, or radians for a turn. */
  double read();

  /** One standard deviation of the value, in the same unit. */
  double sd();

  /** What the corners give for it. */
  double computed(double[] xy);

  /** Fills the row with the slopes of {@link #computed}. */
  void slopes(double[] xy, DesignRow row);

  /** Value read less value computed. */
  default double misfit(double[] xy) {
    return read() - computed(xy);
  }

  /** The corners it touches, each once. */
  default List<Integer> corners(double[] xy) {
    DesignRow row = new DesignRow();
    slopes(xy, row);
    return IntStream.range(0, row.size())
        .map(k -> row.coordinate(k) / 2)
        .distinct()
        .boxed()
        .toList();
  }
}
