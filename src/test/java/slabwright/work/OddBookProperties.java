package slabwright.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import slabwright.site.Site;
import slabwright.work.book.BookSamples;
import slabwright.work.book.ShopBook;
import slabwright.work.book.ShopBookText;
import slabwright.work.handover.Handovers;
import slabwright.work.handover.Scope;

/** Whatever a person writes into the shop book gives a plan that says so, never a crash. */
class OddBookProperties {
  private static final Site SITE = WorkSamples.tramHall();
  private static final List<String> LINES = BookSamples.text().text().lines().toList();

  @Property(tries = 30)
  void an_odd_value_is_said_and_never_breaks_the_plan(
      @ForAll("entries") int line, @ForAll("odd") String value) {
    String[] lines = LINES.toArray(String[]::new);
    lines[line] = lines[line].replaceFirst("=.*", "= ") + value;
    ShopBook book = ShopBook.of(ShopBookText.parse(String.join("\n", lines)).orThrow());
    WorkPlan plan = WorkSamples.planSmall(SITE, book);
    assertThat(plan.areas()).hasSize(SITE.areas().size());
    assertThat(Scope.of(plan).cost().lines()).isNotEmpty();
    assertThat(Handovers.of(plan).loadList().sections()).isNotEmpty();
  }

  /** The same of many more. */
  @Tag("long")
  @Property(tries = 200)
  void an_odd_value_is_said_and_never_breaks_the_plan_of_200(
      @ForAll("entries") int line, @ForAll("odd") String value) {
    an_odd_value_is_said_and_never_breaks_the_plan(line, value);
  }

  @Provide
  Arbitrary<Integer> entries() {
    List<Integer> entries =
        java.util.stream.IntStream.range(1, LINES.size())
            .filter(i -> LINES.get(i).matches("[a-z0-9 -]+ = .*"))
            .boxed()
            .toList();
    return Arbitraries.of(entries);
  }

  @Provide
  Arbitrary<String> odd() {
    return Arbitraries.of(
        "?",
        "none",
        "0",
        "-1",
        "0 h",
        "1 min",
        "0 ft2/h",
        "0.001 ft2/h",
        "99 %",
        "100 %",
        "1",
        "9999",
        "1000000 gal",
        "0 gal @ 1",
        "70 F: 0 min",
        "90 F: 1 h, 50 F: 2 h",
        "23:59",
        "acetone 100 %",
        "yes",
        "no",
        "1 in",
        "0 in",
        "x = y",
        "metal");
  }
}
