package slabwright.work.book;

import java.time.Duration;

/**
 * How a product is mixed.
 *
 * @param twoPart whether it sets once mixed
 * @param workingTime how long a mixed batch can be laid
 * @param mixingTime how long mixing one batch takes
 * @param largestBatch mm³ that the shop mixes at once
 * @param nozzle whether a kit is a cartridge that mixes in its nozzle; asked of fillers only
 */
public record Mixing(
    Figure<Boolean> twoPart,
    Figure<TemperatureTable> workingTime,
    Figure<Duration> mixingTime,
    Figure<Double> largestBatch,
    Figure<Boolean> nozzle) {

  static Mixing read(BookSection s, boolean filler) {
    return new Mixing(
        s.yes("two-part"),
        s.table("working_time"),
        s.time("mixing_time"),
        s.number("largest_batch", BookDimension.VOLUME),
        filler ? s.yes("mixes_in_its_nozzle") : Figure.known(false));
  }
}
