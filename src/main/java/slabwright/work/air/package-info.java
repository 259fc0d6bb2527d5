/**
 * {@link Solvent} vapour in a room, as a screening estimate: how high it rises with and without
 * fresh air, against the explosive limit and the exposure limits, and how much air is needed.
 * Volumes of air and vapour in m³, airflow in m³ a minute, liquids in mm³, times in minutes,
 * concentrations as a share (1 ppm is 1e-6). Nothing is ever capped.
 *
 * <p>{@link AirScreening} (entry) of each {@link VapourStep}; {@link Solvent}, {@link
 * ExposureLimit}, {@link SolventShare}, {@link Mixture}; {@link WellMixedRoom} and {@link
 * ConcentrationCurve}; {@link AirFigures}, {@link StepAirFigures}, {@link LimitComparison}, {@link
 * ClearingTime}, {@link FreshAirNeed}, {@link AirVolume}; {@link FireCodeCheck}, {@link
 * IgnitionCheck} of {@link IgnitionParameters}, {@link GasMeter} with {@link MeterRule}, {@link
 * AirPath}. Who may be in it: {@link EntryRule} with {@link AirLevel}, {@link EntryLimit} and
 * {@link BreathingProtection}, on the careful reading of {@link LowestMetre}.
 *
 * <p>Definition: a well-mixed room, {@code V dC = G dt - Q' C dt} with {@code Q' = Q / K}; each
 * step's vapour is set free evenly while it is laid. Peaks take each step at its fastest plausible
 * laying and at the worst moment of its time. Known limits: vapour heavier than air lies on the
 * floor, so the room's mean understates what is there; a second figure holds all of it in the
 * lowest metre, and it rules. It replaces neither a gas meter nor a licensed person.
 */
package slabwright.work.air;
