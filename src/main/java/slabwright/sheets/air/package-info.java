/**
 * Sheet 7, cautions and air: which rule applies, how vapour rises, who keeps out.
 *
 * <p>{@link CautionSheet} (entry), {@link RuleBlock}, {@link AirColumn}, {@link VapourBlock},
 * {@link VapourPlot}, {@link JobClock}, {@link ShareFormat}. {@link AirPlanSheet} (entry: ignition
 * sources, detectors, power and the air's path on the plan). {@link VapourDrawing} is the plot
 * alone, for a card in the window.
 */
package slabwright.sheets.air;
