package slabwright.work;

import java.util.List;
import java.util.Optional;
import slabwright.units.Message;
import slabwright.work.air.AirPath;
import slabwright.work.air.AirScreening;
import slabwright.work.air.FireCodeCheck;
import slabwright.work.air.IgnitionCheck;

/**
 * Air, fire and ignition for one floor area.
 *
 * @param screening empty outdoors and where no solvent is used
 * @param assumption what was taken because the plan does not say; may be an empty sentence
 * @param path where air comes in and goes out, if the plan has two openings
 */
public record AirPlan(
    Optional<AirScreening> screening,
    Message assumption,
    FireCodeCheck fire,
    IgnitionCheck ignition,
    Optional<AirPath> path,
    List<Message> advice) {
  public AirPlan {
    advice = List.copyOf(advice);
  }
}
