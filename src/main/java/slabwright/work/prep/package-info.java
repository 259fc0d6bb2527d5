/**
 * Preparing the floor: levelling, residue, grit steps, filler, hours and bags, zone by zone. Areas
 * in mm², lengths in mm, volumes in mm³, masses in kg.
 *
 * <p>{@link PrepPlan} (entry) of {@link PrepParameters}, made by {@link PrepStepBuilder}: {@link
 * PrepStep}, {@link PrepZone}, {@link ZoneHours}; {@link FillerPlan} with {@link FillerGap}; {@link
 * LevellingPlan}; {@link MixPlan} of either, {@link Mix} by mix, worked out by {@link MixPieces};
 * {@link Bond} and {@link BondAdvice}; {@link ExposureChart} and {@link ExposureChange} (what
 * aggregate will show).
 */
package slabwright.work.prep;
