package slabwright.work.book;

import java.math.BigDecimal;
import slabwright.units.Parsed;

/**
 * A product as it is sold.
 *
 * @param mm3 its volume, all parts together
 */
public record Kit(double mm3, Figure<BigDecimal> price) {

  /** Reads {@code 5 gal @ 190.00} or {@code 5 gal @ ?}. */
  static Parsed<Kit> read(String text) {
    String[] sides = text.split("@", -1);
    Parsed<Double> volume = BookDimension.VOLUME.read(sides[0].strip());
    if (volume instanceof Parsed.Bad<Double> bad) {
      return Parsed.bad(bad.why());
    }
    String price = sides.length > 1 ? sides[1].strip() : "?";
    return price.equals("?")
        ? Parsed.ok(
            new Kit(volume.orThrow(), Figure.missing("price of the " + sides[0].strip() + " kit")))
        : BookSection.money(price).map(p -> new Kit(volume.orThrow(), Figure.known(p)));
  }
}
