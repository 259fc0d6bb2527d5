package slabwright.work.book;

import java.time.Duration;

/**
 * How a product is mixed.
 *
 * @param twoPart whether it sets once mixed
 * @param workingTime how long a mixed batch can be laid
 * @param mixingTime how long mixing one batch takes
 * @param largestBatch mm³ that the shop mixes at once
 */
public record Mixing(
    Figure<Boolean> twoPart,
    Figure<TemperatureTable> workingTime,
    Figure<Duration> mixingTime,
    Figure<Double> largestBatch) {

  static Mixing read(BookSection s) {
    return new Mixing(
        s.yes("two-part"),
        s.table("working_time"),
        s.time("mixing_time"),
        s.number("largest_batch", BookDimension.VOLUME));
  }
}
