package slabwright.site;

import java.util.Optional;
import slabwright.units.Length;

/**
 * The air that vapour goes into.
 *
 * @param ceiling height; absent outdoors or when not measured
 * @param airflowM3PerHour outdoor air drawn through by fan; 0 is a legal case
 * @param mixing K, at least 1: how many times more air real mixing needs than perfect mixing
 */
public record AirSpace(Optional<Length> ceiling, double airflowM3PerHour, double mixing) {
  public static final AirSpace UNKNOWN = new AirSpace(Optional.empty(), 0, 1);
}
