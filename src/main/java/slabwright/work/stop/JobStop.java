package slabwright.work.stop;

import java.util.Optional;
import slabwright.site.job.Stop;
import slabwright.units.Message;
import slabwright.work.step.StepKind;

/**
 * A question that must be settled before work on a floor area starts.
 *
 * @param area id of the floor area
 * @param where the floor area's name
 * @param state as the plan says; what it does not say is open
 */
public record JobStop(String area, String where, Stop.Kind kind, Stop.State state) {
  public boolean isOpen() {
    return state instanceof Stop.Open;
  }

  /**
   * Whether it keeps the job without dates while it is open. The owner's survey is asked for at any
   * age but stands against nothing: what it may find is asked by the question on asbestos.
   */
  public boolean blocks() {
    return isOpen() && kind != Stop.Kind.OWNERS_SURVEY;
  }

  /** The first kind of step that waits for it; empty for drilling, which is no step of the plan. */
  public Optional<StepKind> step() {
    return switch (kind) {
      case ASBESTOS, LEAD_PAINT, OWNERS_SURVEY -> Optional.of(StepKind.TAKE_OFF_RESIDUE);
      case SLAB_BEFORE_DRILLING -> Optional.empty();
      case FIRE_PERMIT -> Optional.of(StepKind.COAT);
    };
  }

  /** What is asked, why, and what must not be done before. */
  public Message reason() {
    return switch (kind) {
      case ASBESTOS -> Message.of("work.stop.asbestos", where);
      case LEAD_PAINT -> Message.of("work.stop.lead-paint", where);
      case SLAB_BEFORE_DRILLING -> Message.of("work.stop.slab-before-drilling", where);
      case FIRE_PERMIT -> Message.of("work.stop.fire-permit", where);
      case OWNERS_SURVEY -> Message.of("work.stop.owners-survey", where);
    };
  }

  /** The question in a few words. */
  public Message question() {
    return switch (kind) {
      case ASBESTOS -> Message.of("work.stop.asbestos-question");
      case LEAD_PAINT -> Message.of("work.stop.lead-paint-question");
      case SLAB_BEFORE_DRILLING -> Message.of("work.stop.slab-question");
      case FIRE_PERMIT -> Message.of("work.stop.fire-permit-question");
      case OWNERS_SURVEY -> Message.of("work.stop.owners-survey-question");
    };
  }

  /** How it stands: open with what to do, or done with who, when and by which report. */
  public Message standing() {
    if (state instanceof Stop.Cleared c) {
      return c.report().isBlank()
          ? Message.of("work.stop.cleared", c.by(), c.on())
          : Message.of("work.stop.cleared-by-report", c.by(), c.on(), c.report());
    }
    if (state instanceof Stop.Confirmed c) {
      return c.reason().isBlank()
          ? Message.of("work.stop.confirmed", c.by())
          : Message.of("work.stop.confirmed-because", c.by(), c.reason());
    }
    return Message.of("work.stop.open", reason());
  }
}
