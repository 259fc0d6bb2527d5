package slabwright.work.book;

import java.util.List;
import java.util.Locale;
import slabwright.site.Exposure;
import slabwright.units.Parsed;

/**
 * One grinding pass as this shop does it.
 *
 * @param name such as {@code metal 30}
 * @param family metal, hybrid or resin; only metal tools come in bonds here
 * @param levels the aggregate levels it is used for
 * @param machineRate mm² an hour with the floor grinder
 * @param handRate mm² an hour with a hand grinder
 * @param dust kg/mm² taken off
 */
public record GritRate(
    String name,
    Figure<GritFamily> family,
    Figure<List<Exposure>> levels,
    Figure<Double> machineRate,
    Figure<Double> handRate,
    Figure<Double> dust) {

  static GritRate read(BookSection s) {
    return new GritRate(
        s.name(),
        s.choice("family", "metal, hybrid or resin", GritFamily.class),
        s.list("for", "fine, medium", GritRate::level),
        s.number("machine rate", BookDimension.AREA_RATE),
        s.number("hand rate", BookDimension.AREA_RATE),
        s.number("dust", BookDimension.MASS_PER_AREA));
  }

  /** Whether its tools come in bonds. */
  public boolean isMetal() {
    return family.maybe().filter(f -> f == GritFamily.METAL).isPresent();
  }

  /** Whether the shop runs it towards this exposure. */
  public boolean serves(Exposure wanted) {
    return levels.maybe().filter(l -> l.contains(wanted)).isPresent();
  }

  private static Parsed<Exposure> level(String word) {
    for (Exposure e : Exposure.values()) {
      if (e.name().toLowerCase(Locale.ROOT).equals(word)) {
        return Parsed.ok(e);
      }
    }
    return Parsed.bad("\"%s\" is none of cream, fine, medium, coarse".formatted(word));
  }
}
