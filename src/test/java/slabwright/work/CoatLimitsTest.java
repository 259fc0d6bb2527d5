package slabwright.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.site.Slab;
import slabwright.units.Message;
import slabwright.work.book.BookSamples;
import slabwright.work.book.Figure;
import slabwright.work.coat.CoatPlan;
import slabwright.work.handover.Reopening;
import slabwright.work.rule.DewPoint;

/** The terrace of the tram hall on other days; its sealer is laid from 10 to 32.2 °C. */
class CoatLimitsTest {
  private static final Site SITE = WorkSamples.tramHall();
  private static final String FIRST = "terrace/coat.1.outdoor-sealer.1";
  private static final String SECOND = "terrace/coat.1.outdoor-sealer.2";

  @Test
  void a_coat_on_a_cold_slab_is_held_with_what_frees_it_and_has_no_date_nor_reopening() {
    WorkPlan plan = on(9, 14, 60);
    HeldStep held = plan.outlook().hold(FIRST).orElseThrow();
    assertThat(held.why().key()).isEqualTo("work.held.cold");
    assertThat(held.frees()).extracting(Message::key).startsWith("work.held.warm-it");
    assertThat(plan.days().maybe().orElseThrow().step(FIRST)).isEmpty();
    assertThat(plan.outlook().isHeld("terrace", terrace(plan).coats().get(0))).isTrue();
    Reopening reopening = Reopening.of(terrace(plan), plan).orElseThrow();
    assertThat(reopening.light().isKnown()).isFalse();
  }

  @Test
  void cold_air_holds_a_coat_on_a_warm_slab_for_it_dries_in_that_air() {
    assertThat(on(14, 9, 60).outlook().hold(FIRST)).isPresent();
  }

  @Test
  void heat_dew_and_damp_air_each_hold_it_by_their_own_reason() {
    assertThat(key(on(35, 30, 20))).isEqualTo("work.held.hot");
    assertThat(key(on(12, 14, 80))).isEqualTo("work.held.dew");
    assertThat(key(on(20, 20, 86))).isEqualTo("work.held.dew");
    assertThat(key(on(28, 20, 86))).isEqualTo("work.held.humid");
  }

  @Test
  void a_rolled_coat_whose_wet_edge_the_book_does_not_know_at_that_temperature_is_held() {
    String table = "60 F: 15 min, 80 F: 8 min";
    Site cool = with("terrace", 13, 13, 50);
    WorkPlan unknown =
        WorkSamples.plan(
            cool, WorkSamples.bookWith("product", "outdoor-sealer", "wet edge", table));
    HeldStep held = unknown.outlook().hold(FIRST).orElseThrow();
    assertThat(held.why().key()).isEqualTo("work.held.not-so");
    assertThat(Said.of(held.why())).contains("wet edge").contains("13 °C");
    assertThat(held.frees())
        .extracting(Message::key)
        .containsExactly("work.held.mend-it", "work.held.other-day", "work.held.other-range");
    assertThat(unknown.days().maybe().orElseThrow().step(FIRST)).isEmpty();
    assertThat(on(13, 13, 50).outlook().hold(FIRST)).isEmpty();
  }

  @Test
  void what_follows_in_the_other_area_keeps_its_dates() {
    WorkPlan cold = on(9, 14, 60);
    assertThat(cold.outlook().canStart()).isTrue();
    assertThat(cold.days().maybe().orElseThrow().step("reading-hall/coat.4.topcoat.2")).isPresent();
  }

  @Test
  void drying_goes_by_the_colder_and_the_pot_life_by_the_warmer_of_slab_and_air() {
    WorkPlan coldSlab = hall(16, 24);
    WorkPlan coldAir = hall(24, 16);
    assertThat(topcoat(coldSlab).at(topcoat(coldSlab).product().drying().recoatFrom()))
        .isEqualTo(topcoat(coldAir).at(topcoat(coldAir).product().drying().recoatFrom()));
    assertThat(topcoat(coldSlab).workingTime()).isEqualTo(topcoat(coldAir).workingTime());
    WorkPlan even = hall(16, 16);
    assertThat(topcoat(coldSlab).at(topcoat(coldSlab).product().drying().recoatFrom()))
        .isEqualTo(topcoat(even).at(topcoat(even).product().drying().recoatFrom()));
    assertThat(minutes(topcoat(coldSlab).workingTime()))
        .isLessThan(minutes(topcoat(even).workingTime()));
  }

  @Property(tries = 200)
  void no_coat_is_dated_outside_its_limits(
      @ForAll @DoubleRange(min = -5, max = 40) double surface,
      @ForAll @DoubleRange(min = -5, max = 40) double air,
      @ForAll @DoubleRange(min = 5, max = 100) double humidity) {
    WorkPlan plan = small(surface, air, humidity);
    boolean fits =
        Math.min(surface, air) >= 10
            && Math.max(surface, air) <= (90 - 32) * 5 / 9.0
            && surface - DewPoint.of(air, humidity) >= 3
            && humidity <= 85;
    assertThat(plan.outlook().hold(FIRST).isEmpty()).isEqualTo(fits);
    assertThat(plan.outlook().hold(SECOND).isEmpty()).isEqualTo(fits);
  }

  private static double minutes(Figure<Duration> time) {
    return time.maybe().orElseThrow().toSeconds() / 60.0;
  }

  private static String key(WorkPlan plan) {
    return plan.outlook().hold(FIRST).orElseThrow().why().key();
  }

  private static AreaWorkPlan terrace(WorkPlan plan) {
    return plan.area("terrace").orElseThrow();
  }

  private static CoatPlan topcoat(WorkPlan plan) {
    return plan.area("reading-hall").orElseThrow().coat("topcoat").orElseThrow();
  }

  private static WorkPlan on(double surface, double air, double humidity) {
    return WorkSamples.plan(with("terrace", surface, air, humidity));
  }

  private static WorkPlan hall(double surface, double air) {
    return WorkSamples.plan(with("reading-hall", surface, air, 40));
  }

  private static WorkPlan small(double surface, double air, double humidity) {
    Site site = with("terrace", surface, air, humidity);
    return WorkSamples.planSmall(site, BookSamples.book());
  }

  private static Site with(String id, double surface, double air, double humidity) {
    List<FloorArea> areas =
        SITE.areas().stream()
            .map(a -> a.id().equals(id) ? a.withSlab(slab(a, surface, air, humidity)) : a)
            .toList();
    return SITE.withAreas(areas);
  }

  private static Slab slab(FloorArea area, double surface, double air, double humidity) {
    return area.slab()
        .withSurfaceC(OptionalDouble.of(surface))
        .withAirC(OptionalDouble.of(air))
        .withHumidity(OptionalDouble.of(humidity));
  }
}
