/**
 * What the job really took, written back to the shop book, so that the next job is reckoned by it.
 *
 * <p>{@link WriteBack} (entry: hours and volumes against what was planned, and the lines that
 * change), {@link RateWriter} (a new value in the book, all comments kept).
 */
package slabwright.work.actuals;
