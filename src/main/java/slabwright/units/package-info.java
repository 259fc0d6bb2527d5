/**
 * Exact lengths as a person typed them, numbers with their unit, text in and out. The lowest room:
 * nothing of floors.
 *
 * <p>{@link Length} (entry: parse and print) with {@link LengthUnit}, {@link LengthReader} and
 * {@link LengthFormat}, {@link BareUnit} (a number without unit); {@link UnitSystem}; {@link
 * QuantityFormat} (areas, volumes, temperatures), {@link QuantityReader} and {@link RateFormat}
 * (coverage, film, airflow); {@link UnitPair} keeps one of two; {@link LetterNumbering} counts A,
 * B, … AA; {@link FileName} makes names of files; {@link QuarterHour} tells times as a crew is told
 * them; {@link Recent} keeps the last few values worked out.
 *
 * <p>What people call a colour: {@link ColourNaming} (entry), {@link ColourName}, {@link CieLab}.
 *
 * <p>What any room has to say is a {@link Message}, a key with values; {@link Result} is a value or
 * each {@link Refusal}, a message with its place, why there is none. {@link PartFaults} keeps what
 * a fault of the program ended while the rest is done.
 */
package slabwright.units;
