package slabwright.work.book;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import slabwright.site.Exposure;
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * One grinding pass as this shop does it.
 *
 * @param name such as {@code metal 30}
 * @param family metal, hybrid or resin; only metal tools come in bonds here
 * @param levels the aggregate levels it is used for
 * @param machineRate mm² an hour with the floor grinder
 * @param handRate mm² an hour with a hand grinder
 * @param dust kg/mm² taken off
 * @param setPrice of one set of diamonds or pads
 * @param setLasts mm² of floor that one set grinds before it is worn
 */
public record GritRate(
    String name,
    Figure<Family> family,
    Figure<List<Exposure>> levels,
    Figure<Double> machineRate,
    Figure<Double> handRate,
    Figure<Double> dust,
    Figure<BigDecimal> setPrice,
    Figure<Double> setLasts) {
  /** What binds the diamonds of a grinding tool. Only metal tools come in bonds here. */
  public enum Family {
    METAL,
    HYBRID,
    RESIN
  }

  static GritRate read(BookSection s) {
    return new GritRate(
        s.name(),
        s.choice("family", Message.of("work.grit-rate.metal-hybrid-or-resin"), Family.class),
        s.list("for", Message.of("work.grit-rate.fine-medium"), GritRate::level),
        s.number("machine_rate", BookDimension.AREA_RATE),
        s.number("hand_rate", BookDimension.AREA_RATE),
        s.number("dust", BookDimension.MASS_PER_AREA),
        s.price("price_a_set"),
        s.number("a_set_lasts", BookDimension.AREA));
  }

  /** Whether its tools come in bonds. */
  public boolean isMetal() {
    return family.maybe().filter(f -> f == Family.METAL).isPresent();
  }

  /** Whether the shop runs it towards this exposure. */
  public boolean serves(Exposure wanted) {
    return levels.maybe().filter(l -> l.contains(wanted)).isPresent();
  }

  private static Result<Exposure> level(String word) {
    for (Exposure e : Exposure.values()) {
      if (e.name().toLowerCase(Locale.ROOT).equals(word)) {
        return Result.ok(e);
      }
    }
    return Result.refused(Message.of("work.grit-rate.is-none-of-cream-fine", word));
  }
}
