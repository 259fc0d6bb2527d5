/**
 * When each step of the job happens: steps with a crew, drying waits and recoat windows are placed
 * into working days; the result is a value for bars, a table and a calendar file. Times are local
 * and carry no zone.
 *
 * <p>{@link DayPlanner} (entry) gives {@link Planned}, at best a {@link DayPlan}. In: {@link
 * WorkStep}, {@link StepWait}, {@link StepAir} with {@link VapourReach} and {@link WetFilm}, {@link
 * WorkingWeek}, {@link JobMeans} with {@link JobTool}, {@link StepValidator}. Search: {@link
 * ScheduleSearch}, {@link PartialSchedule}, {@link CrewCalendar} with {@link Reservation}, {@link
 * SparkZone}, {@link ScheduleLowerBound}, {@link JoinedSteps}. Out: {@link ScheduledStep} with
 * {@link Assigned}, {@link BindingConstraint}, {@link TimeSpan}, {@link PersonRota}. Views: {@link
 * CriticalSteps}, {@link DayBars}, {@link DayTable}, {@link LateStart} with {@link Replay}, {@link
 * KeepOut}, {@link KeepOutPeriod}, {@link ICalendarWriter}.
 */
package slabwright.work.days;
