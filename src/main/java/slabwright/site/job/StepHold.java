package slabwright.site.job;

/**
 * A kind of step that a person holds back by hand.
 *
 * @param step word of the kind of step, lower case with hyphens, such as {@code grind}
 * @param reason why it waits
 */
public record StepHold(String step, String reason) {}
