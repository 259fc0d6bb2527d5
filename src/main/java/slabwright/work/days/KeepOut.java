package slabwright.work.days;

import java.time.Duration;
import slabwright.units.Message;

/**
 * Other trades stay off the floor area during a step and some time after it.
 *
 * @param reason in a few words
 * @param after how long past the step's end
 */
public record KeepOut(Message reason, Duration after) {}
