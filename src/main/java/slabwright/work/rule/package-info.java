/**
 * Which row of which published rule applies to this floor, its number, and what follows: silica,
 * slip, moisture, dew point and heat. Cautions, not advice in law: local codes, data sheets and
 * licensed practice come first.
 */
package slabwright.work.rule;
