package slabwright.work.coat;

import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.site.FloorArea;
import slabwright.site.MoistureReading;
import slabwright.site.Setting;

/**
 * What has to be known before a sealer is chosen.
 *
 * @param humidity highest F2170 reading, % RH
 * @param emission highest F1869 reading, lb per 1000 ft² in 24 h
 * @param damp whether a D4263 sheet showed moisture
 * @param barrier whether there is a vapour barrier; empty when nobody knows
 * @param wet whether the floor gets wet in use
 * @param sun whether the sun falls on it
 * @param heavyTraffic chairs, carts, many feet
 */
public record SealerQuestions(
    OptionalDouble humidity,
    OptionalDouble emission,
    Optional<Boolean> damp,
    Optional<Boolean> barrier,
    boolean outdoors,
    boolean wet,
    boolean sun,
    boolean heavyTraffic) {

  /** What the plan knows; outdoors is taken as wet and in the sun. */
  public static SealerQuestions of(FloorArea area, boolean heavyTraffic) {
    boolean outdoors = area.setting() == Setting.OUTDOOR;
    OptionalDouble sheet = highest(area, MoistureReading.Test.D4263);
    return new SealerQuestions(
        highest(area, MoistureReading.Test.F2170),
        highest(area, MoistureReading.Test.F1869),
        sheet.isPresent() ? Optional.of(sheet.getAsDouble() > 0) : Optional.empty(),
        area.slab().vapourBarrier(),
        outdoors,
        outdoors,
        outdoors,
        heavyTraffic);
  }

  private static OptionalDouble highest(FloorArea area, MoistureReading.Test test) {
    return area.slab().moisture().stream()
        .filter(r -> r.test() == test)
        .mapToDouble(MoistureReading::value)
        .max();
  }

  boolean measured() {
    return humidity.isPresent() || emission.isPresent();
  }
}
