package slabwright.work.book;

import java.util.List;
import slabwright.work.air.SolventShare;

/**
 * Something the shop lays on a floor.
 *
 * @param id the section's name
 * @param label for people; never a brand in the shipped book
 * @param solvents by volume; empty for a water-borne product, missing when the book is silent
 * @param colour of a base dye: how it looks on a light grey slab in the book's coats, sRGB as six
 *     hex digits; only pictures use it. Missing for every other kind: a graphic brings its own
 */
public record Product(
    String id,
    String label,
    Figure<ProductKind> kind,
    ProductCoverage spread,
    Mixing mixing,
    Laying laying,
    Drying drying,
    ProductSuitability suits,
    Figure<List<SolventShare>> solvents,
    Figure<String> colour) {
  /** The label without what it says in brackets at its end, for titles and offers. */
  public String shortLabel() {
    return label.replaceFirst(" \\([^)]*\\)$", "");
  }

  /** Whether the book says that it is of a kind. */
  public boolean is(ProductKind k) {
    return kind.maybe().filter(k::equals).isPresent();
  }
}
