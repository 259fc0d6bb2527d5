package slabwright.work.coat;

import slabwright.site.AdviceId;
import slabwright.units.Message;

/**
 * Advice that a client may decline in writing.
 *
 * @param id what the plan keeps of it when it is declined
 * @param prefer what to do
 * @param why in one sentence or two
 */
public record ClientAdvice(AdviceId id, Message prefer, Message why) {
  static ClientAdvice of(AdviceId id, Message why) {
    return new ClientAdvice(id, prefer(id), why);
  }

  /** What a piece of advice says, whether it is given on this floor or not. */
  public static Message prefer(AdviceId id) {
    return switch (id) {
      case SAMPLE_PANEL -> Message.of("work.sealer-advice.approve-a-sample-panel");
      case MOISTURE_TEST -> Message.of("work.sealer-advice.measure-the-slabs-moisture");
      case BREATHING_HUMID -> Message.of("work.sealer-advice.breathing-a-film-only-as-wet");
      case BREATHING_DAMP -> Message.of("work.sealer-advice.breathing-no-two-part-film");
      case BARRIER_UNKNOWN -> Message.of("work.sealer-advice.breathing-or-find-the-barrier");
      case BARRIER_NONE -> Message.of("work.sealer-advice.breathing");
      case OUTDOOR_BREATHING -> Message.of("work.sealer-advice.outdoors-stands-frost");
      case SUN_UNKNOWN -> Message.of("work.sealer-advice.find-out-sun");
      case SUN_FAST -> Message.of("work.sealer-advice.fast-to-sunlight");
      case WET_UNKNOWN -> Message.of("work.sealer-advice.find-out-wet");
      case GRIT -> Message.of("work.sealer-advice.grit");
      case TRAFFIC_UNKNOWN -> Message.of("work.sealer-advice.find-out-traffic");
      case TWO_PART_TRAFFIC -> Message.of("work.sealer-advice.two-part-topcoat");
    };
  }
}
