package slabwright.work.coat;

import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.site.FloorArea;
import slabwright.site.FloorUse;
import slabwright.site.MoistureReading;
import slabwright.site.Setting;

/**
 * What has to be known before a sealer is chosen.
 *
 * @param humidity highest F2170 reading, % RH
 * @param emission highest F1869 reading, lb per 1000 ft² in 24 h
 * @param damp whether a D4263 sheet showed moisture
 * @param barrier whether there is a vapour barrier; empty when nobody knows
 * @param use whether it gets wet, lies in the sun and is much walked on; an absent answer was not
 *     asked for
 */
public record SealerParameters(
    OptionalDouble humidity,
    OptionalDouble emission,
    Optional<Boolean> damp,
    Optional<Boolean> barrier,
    boolean outdoors,
    FloorUse use) {

  /** What the plan knows. */
  public static SealerParameters of(FloorArea area) {
    OptionalDouble sheet = highest(area, MoistureReading.Test.D4263);
    return new SealerParameters(
        highest(area, MoistureReading.Test.F2170),
        highest(area, MoistureReading.Test.F1869),
        sheet.isPresent() ? Optional.of(sheet.getAsDouble() > 0) : Optional.empty(),
        area.slab().vapourBarrier(),
        area.setting() == Setting.OUTDOOR,
        area.use());
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
