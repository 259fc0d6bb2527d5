package slabwright.work.air;

import java.util.List;
import java.util.Optional;
import slabwright.units.Message;

/**
 * The vapour of a whole job in one room: a screening estimate.
 *
 * @param mixing the factor K
 * @param celsius the air's temperature
 * @param closed without any fresh air
 * @param stated with the fresh air that was stated; empty when none was
 * @param need fresh air the worst step needs
 */
public record AirScreening(
    AirVolume space,
    List<VapourStep> steps,
    double mixing,
    double celsius,
    AirFigures closed,
    Optional<AirFigures> stated,
    FreshAirNeed need) {
  /** Stands beside the figures wherever they are shown. */
  public static final Message NOTICE = Message.of("work.air-screening.notice");

  public AirScreening {
    steps = List.copyOf(steps);
  }

  /** Screens the steps; {@code airflow} in m³/min, empty or 0 for none. */
  public static AirScreening of(
      List<VapourStep> steps,
      AirVolume space,
      Optional<Double> airflow,
      double mixing,
      double celsius) {
    if (mixing < 1) {
      throw new IllegalArgumentException("a mixing factor K is at least 1");
    }
    return new AirScreening(
        space,
        steps,
        mixing,
        celsius,
        AirFigures.of(steps, space, 0, mixing, celsius),
        airflow.map(q -> AirFigures.of(steps, space, q, mixing, celsius)),
        FreshAirNeed.of(steps, space, mixing, celsius));
  }
}
