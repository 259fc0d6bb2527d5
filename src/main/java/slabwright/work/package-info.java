/**
 * The work on a site: prep, coats, batches, air, days, cautions, cost and the papers handed over.
 * Everything is a value computed from a site, its floor take-offs, its inlays and the shop book, so
 * that sheets, reports and the window show the same numbers.
 *
 * <p>{@link WorkPlan} (entry) from {@link AreaTakeoff} and {@link InlayTakeoff}, made by {@link
 * WorkPlanner}: {@link AreaWorkPlan} and {@link AirPlan}. Steps: {@link AreaStepPlanner}, {@link
 * InlayStepPlanner}, {@link SectionSteps}, {@link StepSequence}, in {@link StepHours}. Coats:
 * {@link WeatherDays} with {@link DayCheck} and {@link ForecastDrying}, {@link CoatList}. Air:
 * {@link AirPlanner}, {@link StepTiming}, {@link VapourStepCollector}, {@link WayOut}. Who may be
 * in it: {@link AreaEntries} hold the steps of each floor area against the entry rule by {@link
 * EntryPlanner}, {@link LaidVapour}, {@link BreathingCrew} and {@link VapourHold} into an {@link
 * AreaEntry}, {@link SharedDoors} know which floors lead to which, {@link SharedAir} lets vapour
 * through doorways; what comes of it is {@link JobOutlook}: {@link HeldStep} (told by {@link
 * HeldGroup}) and {@link ClosedAir}. Cautions: {@link AreaRuleNotes}. {@link AreaResult} is a floor
 * area with its take-off and inlays; {@link JobFrame}: what comes before and after all steps;
 * {@link Presence}: hours of steps and of presence. {@link MeterWatch}: who reads the gas meter;
 * {@link OthersOff}: how long others stay off; {@link VapourLeft}: what the crew leaves behind.
 * {@link JobTools}: the tools on the job; {@link SilicaShift}: what a person grinds a shift.
 *
 * <p>{@link StepTypes} are the types of one floor area's steps, with and without a day plan.
 */
package slabwright.work;
