package slabwright.work;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import slabwright.inlay.masking.DyeBook;
import slabwright.site.ColourChoice;
import slabwright.site.Finish;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.units.Quantity;
import slabwright.work.book.Figure;
import slabwright.work.book.Product;
import slabwright.work.book.ShopBook;

/** What the shop book says of the dyes of an inlay, so that its plan shows the same amounts. */
public final class InlayDyes {
  private InlayDyes() {}

  /** Figures by colour; a colour whose product is not in the book is left out. */
  public static Map<String, DyeBook> of(
      FloorArea area, Inlay inlay, Collection<String> colours, ShopBook book) {
    Map<String, DyeBook> dyes = new HashMap<>();
    for (String colour : colours) {
      coat(area, inlay, colour)
          .ifPresent(
              c ->
                  book.products().stream()
                      .filter(p -> p.id().equals(c.product()))
                      .findFirst()
                      .ifPresent(p -> dyes.put(colour, book(p, c.coats()))));
    }
    return Map.copyOf(dyes);
  }

  /**
   * The finish system's inlay coat of the colour's own product, or the first when it names none.
   */
  private static Optional<Finish.Coat> coat(FloorArea area, Inlay inlay, String colour) {
    String own =
        inlay.spec().colours().stream()
            .filter(c -> c.colour().equals(colour))
            .map(ColourChoice::product)
            .findFirst()
            .orElse("");
    return area.finish().coats().stream()
        .filter(c -> c.target() == Finish.Target.INLAY)
        .filter(c -> own.isEmpty() || c.product().equals(own))
        .findFirst();
  }

  private static DyeBook book(Product p, int coats) {
    return new DyeBook(
        OptionalInt.of(coats),
        optional(p.spread().coverage()),
        optional(p.spread().loss()),
        optional(p.laying().jar().map(v -> v / Quantity.LITRE_MM3)));
  }

  private static OptionalDouble optional(Figure<Double> figure) {
    return figure.maybe().map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }
}
