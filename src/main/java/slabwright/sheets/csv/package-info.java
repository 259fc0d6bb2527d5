/**
 * The numbers as one CSV table, the same values as in sheets and JSON.
 *
 * <p>{@link QuantitiesCsv} (entry: a line for each number, in mm, mm² and mm³), {@link Csv}
 * (quoting after RFC 4180).
 */
package slabwright.sheets.csv;
