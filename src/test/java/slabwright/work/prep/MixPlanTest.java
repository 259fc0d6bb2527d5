package slabwright.work.prep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import slabwright.site.MarkType;
import slabwright.units.UnitSystem;
import slabwright.work.Said;
import slabwright.work.book.BookSamples;
import slabwright.work.book.Figure;
import slabwright.work.book.ShopBook;
import slabwright.work.book.ShopBookText;
import slabwright.work.step.StepPlace;

/** What sets in the pail is mixed in batches that are used up before it does. */
class MixPlanTest {
  private static final ShopBook BOOK = BookSamples.book();

  /** The filler that is mixed in pails of one gallon, as the only one. */
  private static final ShopBook PAILS =
      book("(?s)\\[product filler\\].*?(?=\\[product leveller\\])");

  private static ShopBook book(String without) {
    String text = BookSamples.text().text().replaceAll(without, "");
    return ShopBook.of(ShopBookText.parse(text).orThrow());
  }

  private static MixPlan mortar(double m2, double mm, Figure<Double> celsius, ShopBook book) {
    PrepParameters.ToLevel low =
        new PrepParameters.ToLevel(
            new StepPlace.Zone("t"),
            Said.text("t"),
            PrepZone.Kind.TRENCH_LOW,
            m2 * 1e6,
            OptionalDouble.of(mm));
    return LevellingPlan.of(List.of(low), book, celsius).mixing().get(0);
  }

  private static MixPlan filler(double metres, double mm2, double celsius, ShopBook book) {
    return FillerPlan.of(List.of(joint(metres, mm2)), book, Figure.known(celsius))
        .mixing()
        .orElseThrow();
  }

  private static FillerGap joint(double metres, double mm2) {
    return FillerGap.of("j", MarkType.JOINT, metres * 1000, mm2, 1);
  }

  private static List<Mix> mixes(MixPlan plan) {
    return plan.mixes().maybe().orElseThrow();
  }

  /**
   * By hand: 3 m² at 30 ft²/h are 64.6 min of one person. At 20 °C mortar can be laid for 24 min, 4
   * of them to mix: two people use up 40 of those minutes a batch. At 30 °C it is 12 min, so 16.
   */
  @Example
  void a_warmer_slab_asks_for_more_and_smaller_batches_of_mortar() {
    assertThat(mixes(mortar(3, 20, Figure.known(20.0), BOOK))).hasSize(2);
    assertThat(mixes(mortar(3, 20, Figure.known(30.0), BOOK))).hasSize(5);
    assertThat(mixes(mortar(3, 20, Figure.known(30.0), BOOK)).get(0).mixed())
        .isCloseTo(60e6 / 0.95 / 5, within(1e4));
  }

  @Property(tries = 200)
  void no_batch_outlasts_what_the_book_gives_and_together_they_fill_all(
      @ForAll @DoubleRange(min = 0.2, max = 60) double m2,
      @ForAll @DoubleRange(min = 2, max = 60) double mm,
      @ForAll @DoubleRange(min = 10, max = 32) double celsius) {
    MixPlan plan = mortar(m2, mm, Figure.known(celsius), BOOK);
    Duration most = plan.workingTime().maybe().orElseThrow().minusMinutes(4).plusMillis(2);
    assertThat(mixes(plan)).allMatch(b -> b.laying().compareTo(most) <= 0);
    double litres = m2 * mm / 0.95;
    assertThat(mixes(plan).stream().mapToDouble(Mix::used).sum() / 1e6)
        .isCloseTo(litres, within(1e-6 * litres));
    double minutes = m2 / (30 * 0.09290304) * 60 / 2;
    assertThat(mixes(plan).size())
        .isGreaterThanOrEqualTo((int) (minutes * 60000 / most.toMillis()));
  }

  /** A thin crack takes long and little: 4 mm² a metre leave most of a gallon in the pail. */
  @Example
  void what_sets_in_a_kit_that_is_not_split_is_said_and_bought() {
    FillerPlan thin = FillerPlan.of(List.of(joint(60, 4)), PAILS, Figure.known(20.0));
    MixPlan plan = thin.mixing().orElseThrow();
    assertThat(plan.count()).isGreaterThan(1);
    assertThat(plan.wasted()).isPositive();
    assertThat(thin.kits().maybe().orElseThrow().count()).isEqualTo(plan.count());
    assertThat(told(plan)).contains("A kit is not split");
  }

  @Example
  void a_cartridge_is_not_a_batch_and_its_nozzle_bounds_every_stop() {
    MixPlan plan = filler(30, 225, 20, BOOK);
    assertThat(plan.nozzle()).isTrue();
    assertThat(plan.count()).isEqualTo((int) Math.ceil(30 * 0.225 / 0.9 / 0.6506));
    assertThat(told(plan)).contains("cartridges").contains("the nozzle sets 9 min after");
  }

  /** Three cartridges and two guns: two at once, then the third, so as long as two take. */
  @Example
  void who_fills_out_of_cartridges_has_a_gun_each_and_shares_none() {
    MixPlan three = filler(8, 225, 20, BOOK);
    assertThat(three.count()).isEqualTo(4);
    MixPlan one = filler(1, 225, 20, BOOK);
    assertThat(three.fillers()).isEqualTo(2);
    assertThat(one.fillers()).isEqualTo(1);
    assertThat(one.emptied()).contains(mixes(one).get(0).laying());
    assertThat(three.emptied().orElseThrow())
        .isEqualTo(mixes(three).get(0).laying().plus(mixes(three).get(2).laying()));
    assertThat(told(three)).contains("by one of 2 people, a gun for each");
    assertThat(told(one)).contains("by one person");
  }

  @Example
  void a_book_without_a_pot_life_or_a_mixing_time_has_the_data_sheet_asked() {
    String silent = "(?m)^working time = 50 F: 35 min.*$";
    assertThat(told(mortar(3, 20, Figure.known(20.0), book(silent)))).contains("data sheet");
    assertThat(told(mortar(3, 20, Figure.known(20.0), book("(?m)^mixing time = 4 min$"))))
        .contains("data sheet");
    assertThat(told(mortar(3, 20, Figure.refused(Said.text("no air read")), BOOK)))
        .contains("no air read");
  }

  private static String told(MixPlan plan) {
    return plan.told(UnitSystem.METRIC).map(Said::of).orElse("");
  }

  @Example
  void nothing_to_fill_has_nothing_to_mix() {
    assertThat(FillerPlan.of(List.of(), BOOK, Figure.known(20.0)).mixing())
        .isEqualTo(Optional.empty());
  }
}
