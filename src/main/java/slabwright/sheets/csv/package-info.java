/**
 * The numbers as CSV tables, the same values as in sheets and JSON.
 *
 * <p>{@link QuantitiesCsv} (entry: a line for each number, in mm, mm² and mm³), {@link TakeoffCsv}
 * and {@link BuyCsv} (entries: for people, in the plan's units and names), {@link Csv} (quoting
 * after RFC 4180).
 */
package slabwright.sheets.csv;
