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
public record ClientAdvice(AdviceId id, Message prefer, Message why) {}
