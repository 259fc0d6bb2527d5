/**
 * What is known of the job beside its floor: who is in it ({@link Party}, {@link JobCrew}), what
 * must be settled first ({@link Stop}, {@link StepHold}), the weather ({@link DayForecast}) and
 * what was seen and read on the day ({@link PinnedPhoto}, {@link CoatReading}).
 */
package slabwright.site.job;
