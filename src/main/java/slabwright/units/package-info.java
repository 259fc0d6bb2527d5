/**
 * Exact lengths as a person typed them, numbers with their unit, text in and out. The lowest room:
 * nothing of floors.
 *
 * <p>{@link Length} (entry: parse and print) with {@link LengthUnit}, {@link LengthReader} and
 * {@link LengthFormat}; {@link UnitSystem}; {@link QuantityFormat} (areas, volumes, temperatures)
 * and {@link RateFormat} (coverage, film, airflow); {@link Parsed} is a value or the sentence that
 * says why there is none; {@link LetterNumbering} counts A, B, … AA.
 */
package slabwright.units;
