package slabwright.work.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import slabwright.units.QuantityFormat;
import slabwright.units.Result;
import slabwright.work.Said;

class ShopBookTest {
  private static final String FIRST = "slabwright-shop-book 1\n";

  @Test
  void the_shipped_book_reads_without_a_fault_and_says_that_it_is_invented() {
    ShopBook book = ExampleBook.book();
    assertThat(book.faults()).isEmpty();
    assertThat(book.invented()).isTrue();
    assertThat(Said.of(book.origin())).contains("invented example").contains("data sheets");
  }

  @Test
  void every_kind_of_product_is_in_the_shipped_book_but_the_cleaner() {
    ShopBook book = ExampleBook.book();
    for (ProductKind kind : ProductKind.values()) {
      assertThat(book.first(kind).isPresent())
          .as(kind.word())
          .isEqualTo(kind != ProductKind.CLEANER);
    }
  }

  @Test
  void a_value_that_is_not_there_is_missing_by_name_and_never_guessed() {
    Product p = product("kind = sealer\ncoverage = ?");
    assertThat(Said.of(p.spread().coverage().text(String::valueOf)))
        .isEqualTo("not in the shop book: coverage of p");
    assertThat(p.spread().loss().isKnown()).isFalse();
  }

  /** "the recoat from of filler" is no sentence. */
  @Test
  void a_table_that_ends_before_the_cold_is_named_by_its_word_in_the_book() {
    TemperatureTable table =
        product("recoat from = 50 F: 2 h, 90 F: 1 h").drying().recoatFrom().maybe().orElseThrow();
    assertThat(Said.of(table.at(6).text(String::valueOf)))
        .startsWith("the shop book gives the \"recoat from\" of p from");
  }

  @Test
  void units_of_both_systems_give_the_same_amount() {
    Product gallons = product("coverage = 300 ft2/gal\nkits = 1 gal");
    Product litres = product("coverage = 7.362716 m2/L\nkits = 3.785411784 L");
    assertThat(litres.spread().coverage().maybe().orElseThrow())
        .isCloseTo(gallons.spread().coverage().maybe().orElseThrow(), within(1e-6));
    assertThat(litres.spread().kits().maybe().orElseThrow().get(0).mm3())
        .isCloseTo(QuantityFormat.US_GALLON_MM3, within(1e-3));
  }

  @Test
  void an_unknown_key_is_named_with_its_line_and_left_alone() {
    ShopBook book = book("[crew]\npeople = 2\ncofee = 4 h\n");
    assertThat(book.faults())
        .extracting(f -> Said.of(f.said()))
        .containsExactly("line 4: \"cofee\" is not known in [crew] and is left alone");
    assertThat(book.crew().people()).isEqualTo(Figure.known(2));
  }

  @Test
  void a_value_that_can_not_be_read_is_refused_with_an_example() {
    ShopBook book = book("[prep]\ncleaning = 900 gal\n");
    assertThat(book.prep().cleaning()).isInstanceOf(Figure.Refused.class);
    assertThat(Said.of(book.faults().get(0).said()))
        .isEqualTo("line 3: cleaning: \"900 gal\" can't be read; write for example 250 ft2/h");
  }

  @Test
  void no_shop_book_and_a_newer_one_are_refused() {
    assertThat(ShopBookText.parse("people = 2")).isInstanceOf(Result.Refused.class);
    assertThat(Said.why(ShopBookText.parse("slabwright-shop-book 2\n")))
        .isEqualTo(
            "This shop book is of version 2 and this program reads version 1; get a newer"
                + " program.");
  }

  @Test
  void a_new_value_keeps_the_comments_and_every_other_line() {
    ShopBookText text =
        ShopBookText.parse(FIRST + "# mine\n[crew]\npeople = 3   # on most jobs\n").orThrow();
    assertThat(text.with("crew", "", "people", "4").text())
        .isEqualTo(FIRST + "# mine\n[crew]\npeople = 4   # on most jobs\n");
    assertThat(text.with("crew", "", "day", "8 h").text()).endsWith("on most jobs\nday = 8 h\n");
    assertThat(text.with("prep", "", "filling", "9 m/h").text())
        .endsWith("\n[prep]\nfilling = 9 m/h\n");
  }

  @Test
  void a_solvent_without_all_its_values_can_not_be_used() {
    String solvent = "[solvent xylol]\nspecific gravity = 0.88\nmolar mass = 106 g/mol\n";
    Product p = book(solvent + "[product p]\nsolvents = xylol 60 %\n").products().get(0);
    assertThat(p.solvents()).isInstanceOf(Figure.Refused.class);
    String rest = "lower explosive limit = 1 %\nflash point = 81 F\n8-hour limit = 100 ppm\n";
    Product q = book(solvent + rest + "[product p]\nsolvents = xylol 60 %\n").products().get(0);
    assertThat(q.solvents().maybe().orElseThrow().get(0).share()).isCloseTo(0.6, within(1e-12));
  }

  @Test
  void a_table_is_read_between_its_points_and_never_outside_them() {
    TemperatureTable table =
        product("working time = 10 C: 60 min, 30 C: 20 min")
            .mixing()
            .workingTime()
            .maybe()
            .orElseThrow();
    assertThat(table.at(10)).isEqualTo(Figure.known(Duration.ofMinutes(60)));
    assertThat(table.at(20)).isEqualTo(Figure.known(Duration.ofMinutes(40)));
    assertThat(table.at(30)).isEqualTo(Figure.known(Duration.ofMinutes(20)));
    assertThat(Said.of(table.at(30.1).text(Duration::toString)))
        .contains("\"working time\" of p")
        .contains("from 10 °C (50 °F) to 30 °C (86 °F)");
  }

  @Test
  void none_is_known_and_a_question_mark_is_not() {
    assertThat(product("recoat until = none").drying().recoatUntil().isKnown()).isTrue();
    assertThat(product("recoat until = ?").drying().recoatUntil().isKnown()).isFalse();
  }

  private static ShopBook book(String rest) {
    return ShopBook.of(ShopBookText.parse(FIRST + rest).orThrow());
  }

  private static Product product(String entries) {
    return book("[product p]\n" + entries + "\n").products().get(0);
  }

  @Test
  void a_tool_of_an_unknown_kind_is_named_with_the_kinds_there_are() {
    ShopBook book =
        ShopBook.of(ExampleBook.text().with("tool", "vacuum small", "kind", "vacuum cleaner"));
    assertThat(book.faults())
        .singleElement()
        .satisfies(
            f ->
                assertThat(Said.of(f.sentence()))
                    .contains("\"vacuum cleaner\" is none of floor grinder, hand grinder, vacuum"));
  }
}
