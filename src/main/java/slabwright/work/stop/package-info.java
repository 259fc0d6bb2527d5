/**
 * What stops a job before it starts, as questions with an answer each: asbestos, lead paint, a slab
 * that must be scanned, the fire authority's permit. Cautions, not advice in law: local codes and
 * licensed practice come first.
 *
 * <p>{@link StopFinder} (entry: which questions a floor asks), {@link JobStop} (one question with
 * how it stands).
 */
package slabwright.work.stop;
