/**
 * Which row of which published rule applies to this floor, its number, and what follows: silica,
 * slip, moisture, dew point and heat. Cautions, not advice in law: local codes, data sheets and
 * licensed practice come first.
 *
 * <p>{@link RuleNote} (entry: what each rule gives), then {@link SilicaRule}, {@link SlipClass},
 * {@link MoistureNotes} with {@link MoistureFormulas}, {@link DewPoint}, {@link TemperatureRule},
 * {@link LevelChangeRule}; {@link CrewSafety} and {@link BreathingRule} for who does the work.
 */
package slabwright.work.rule;
