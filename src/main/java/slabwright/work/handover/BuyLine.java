package slabwright.work.handover;

import java.util.Optional;
import slabwright.units.Message;
import slabwright.work.book.Figure;
import slabwright.work.coat.Kits;

/**
 * A product to buy for the whole job, one line for each colour.
 *
 * @param product id in the shop book
 * @param label of the product, for people
 * @param colour what people call the colour; empty for a product that has none of its own
 * @param kits for all floor areas together; what is needed stands in them in mm³, losses included
 */
public record BuyLine(String product, String label, Optional<Message> colour, Figure<Kits> kits) {
  /** The product, with its colour where it has one. */
  public Message name() {
    return colour
        .map(c -> Message.of("work.buy-line.of-colour", label, c))
        .orElseGet(() -> Message.of("work.buy-line.product", label));
  }
}
