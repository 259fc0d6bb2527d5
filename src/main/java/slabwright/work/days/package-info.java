/**
 * When each step of the job happens: steps with a crew, drying waits and recoat windows are placed
 * into working days; the result is a value for bars, a table and a calendar file. Times are local
 * and carry no zone.
 */
package slabwright.work.days;
