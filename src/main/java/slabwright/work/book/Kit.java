package slabwright.work.book;

import java.math.BigDecimal;
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * A product as it is sold.
 *
 * @param mm3 its volume, all parts together
 */
public record Kit(double mm3, Figure<BigDecimal> price) {

  /** Reads {@code 5 gal @ 190.00} or {@code 5 gal @ ?}. */
  static Result<Kit> read(String text) {
    String[] sides = text.split("@", -1);
    Result<Double> volume = BookDimension.VOLUME.read(sides[0].strip());
    if (volume instanceof Result.Refused<Double> bad) {
      return Result.refused(bad.refusals());
    }
    String price = sides.length > 1 ? sides[1].strip() : "?";
    return price.equals("?")
        ? Result.ok(
            new Kit(
                volume.orThrow(),
                Figure.missing(Message.of("work.kit.price-of-the-kit", sides[0].strip()))))
        : BookSection.money(price).map(p -> new Kit(volume.orThrow(), Figure.known(p)));
  }
}
