package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import slabwright.drawing.TextBox;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.work.book.BookSamples;
import slabwright.work.book.Product;
import slabwright.work.book.ShopBook;
import slabwright.work.handover.Cost;
import slabwright.work.handover.CostLine;

/** Prices appear on sheet 8 alone, and nothing shipped carries a brand. */
class PricesTest {
  private static final String USES_THE_BOOK =
      "page-\\d\\d-(quantities|day-plan|rolling|air-|scope|reopening|load-list).*";

  private static final SheetSamples HALL = SheetSamples.tramHall();
  private static final ShopBook BOOK = BookSamples.book();

  private static List<String> words(PrintedPage page) {
    return TextBox.of(page.drawing()).stream().map(TextBox::words).toList();
  }

  private static Set<String> prices() {
    Set<String> prices = new HashSet<>();
    Cost cost = Cost.of(HALL.work(HALL.site()));
    for (CostLine l : cost.lines()) {
      l.unitPrice().maybe().ifPresent(p -> prices.add(money(p)));
      l.amount().maybe().ifPresent(p -> prices.add(money(p)));
    }
    prices.add(money(cost.total().maybe().orElseThrow()));
    return prices;
  }

  /** With a comma between thousands, in cents at least. */
  private static String money(BigDecimal amount) {
    return new DecimalFormat("#,##0.00##", DecimalFormatSymbols.getInstance(Locale.US))
        .format(amount);
  }

  @Test
  void every_price_is_on_sheet_8_and_on_no_other_page() {
    Set<String> prices = prices();
    Set<String> found = new HashSet<>();
    for (PrintedPage page : HALL.on(PaperSize.TABLOID)) {
      List<String> words = words(page);
      if (page.name().contains("scope-cost")) {
        words.stream().filter(prices::contains).forEach(found::add);
      } else {
        assertThat(words)
            .as(page.name())
            .noneMatch(prices::contains)
            .noneMatch(w -> w.contains(BOOK.currency()));
      }
    }
    assertThat(found).isEqualTo(prices);
  }

  @Test
  void every_product_of_the_shipped_book_says_that_it_is_invented() {
    assertThat(BOOK.invented()).isTrue();
    assertThat(BOOK.products()).extracting(Product::label).allMatch(l -> l.endsWith("(invented)"));
    assertThat(BookSamples.text().text()).doesNotContain("™", "®", "©");
  }

  @Test
  void every_sheet_that_uses_the_shipped_book_says_that_it_is_invented() {
    Map<String, String> sheets = new TreeMap<>();
    for (PrintedPage page : HALL.on(PaperSize.TABLOID)) {
      if (page.name().matches(USES_THE_BOOK)) {
        String sheet = page.name().replaceFirst("page-\\d\\d-", "").replace("-continued", "");
        sheets.merge(sheet, String.join(" ", words(page)), String::concat);
      }
    }
    assertThat(sheets).hasSizeGreaterThan(5);
    sheets.forEach(
        (sheet, words) ->
            assertThat(words).as(sheet).contains("invented example shop").contains("rely on"));
  }
}
