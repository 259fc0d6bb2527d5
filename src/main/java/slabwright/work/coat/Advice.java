package slabwright.work.coat;

/**
 * Advice that a client may decline in writing.
 *
 * @param id for the advice log
 * @param prefer what to do
 * @param why in one sentence
 */
public record Advice(String id, String prefer, String why) {}
