package slabwright.work.actuals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.work.book.BookSamples;
import slabwright.work.book.ShopBook;
import slabwright.work.book.ShopBookText;

class RateWriterTest {
  @Test
  void what_really_happened_goes_back_into_the_book_with_its_comments() {
    ShopBookText before = BookSamples.text();
    RateWriter feet = new RateWriter(UnitSystem.FEET_INCHES);
    double ft2 = QuantityFormat.SQUARE_FOOT_MM2;
    ShopBookText after = feet.machineRate(before, "metal 30", 1000 * ft2, Duration.ofMinutes(250));
    after = feet.coverage(after, "sealer", 1900 * ft2, 1, 5 * QuantityFormat.US_GALLON_MM3, 0.05);
    assertThat(after.value("grit", "metal 30", "machine rate")).contains("240 ft2/h");
    assertThat(after.value("product", "sealer", "coverage")).contains("400 ft2/gal");
    assertThat(after.text().lines().filter(l -> l.contains("#")).toList())
        .isEqualTo(before.text().lines().filter(l -> l.contains("#")).toList());
    assertThat(ShopBook.of(after).faults()).isEmpty();
  }

  @Test
  void actuals_read_back_as_what_they_were_in_either_system() {
    for (UnitSystem units : UnitSystem.values()) {
      ShopBookText book =
          new RateWriter(units)
              .layingRate(BookSamples.text(), "topcoat", 5e7, 2, Duration.ofMinutes(30));
      double rate =
          ShopBook.of(book).products().stream()
              .filter(p -> p.id().equals("topcoat"))
              .findFirst()
              .flatMap(p -> p.laying().rate().maybe())
              .orElseThrow();
      assertThat(rate).isCloseTo(5e7, within(5e4));
    }
  }
}
