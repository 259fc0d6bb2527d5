package slabwright.work.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.units.QuantityFormat;

/**
 * The invented book stays where a contractor would believe it. The ranges are common practice, no
 * source; none is a rate of a product or a company.
 */
class ExampleBookRangeTest {
  private static final ShopBook BOOK = ExampleBook.book();

  private static double feet2(Figure<Double> rate) {
    return rate.maybe().orElseThrow() / QuantityFormat.SQUARE_FOOT_MM2;
  }

  private static double feet(Figure<Double> rate) {
    return rate.maybe().orElseThrow() / 304.8;
  }

  @Test
  void dye_by_sprayer_goes_on_at_the_trades_pace_usual_and_fastest() {
    BOOK.products().stream()
        .filter(p -> p.is(ProductKind.BASE_DYE))
        .forEach(
            p -> {
              assertThat(feet2(p.laying().rate())).isBetween(1500.0, 3500.0);
              assertThat(feet2(p.laying().fastest())).isBetween(1500.0, 3500.0);
              assertThat(feet2(p.laying().fastest())).isGreaterThan(feet2(p.laying().rate()));
            });
  }

  @Test
  void stencils_are_laid_pressed_misted_and_pulled_at_the_trades_pace() {
    InlayRates rates = BOOK.inlay();
    assertThat(feet2(rates.layStencil())).isBetween(40.0, 120.0);
    assertThat(feet2(rates.pullUp())).isBetween(150.0, 400.0);
    assertThat(feet2(rates.mist())).isBetween(100.0, 300.0);
    assertThat(feet(rates.press())).isBetween(150.0, 400.0);
  }

  @Test
  void a_resin_pass_is_quicker_than_a_metal_one() {
    BOOK.grits().stream()
        .filter(g -> !g.isMetal())
        .forEach(g -> assertThat(feet2(g.machineRate())).isBetween(400.0, 800.0));
    double quickestMetal =
        BOOK.grits().stream()
            .filter(GritRate::isMetal)
            .mapToDouble(g -> feet2(g.machineRate()))
            .max()
            .orElseThrow();
    assertThat(quickestMetal).isLessThan(400);
  }

  @Test
  void a_filler_is_a_quick_or_a_slow_one() {
    assertThat(BOOK.products().stream().filter(p -> p.is(ProductKind.FILLER)))
        .hasSizeGreaterThan(1)
        .allSatisfy(
            p -> {
              Duration at20 =
                  p.drying().recoatFrom().maybe().flatMap(t -> t.at(20).maybe()).orElseThrow();
              assertThat(at20).matches(d -> isBetween(d, 20, 60) || isBetween(d, 4 * 60, 12 * 60));
            });
  }

  private static boolean isBetween(Duration d, long fromMinutes, long toMinutes) {
    return d.toMinutes() >= fromMinutes && d.toMinutes() <= toMinutes;
  }

  @Test
  void every_grit_has_a_price_and_a_life_and_whatever_else_is_used_up_a_price() {
    assertThat(BOOK.grits()).allMatch(g -> g.setPrice().isKnown() && g.setLasts().isKnown());
    ConsumablePrices c = BOOK.consumables();
    assertThat(
            List.of(
                c.wallMasking(),
                c.maskingPaper(),
                c.cupWheel(),
                c.screens(),
                c.rollerSleeve(),
                c.brush(),
                c.pail(),
                c.protection(),
                c.gasMeter(),
                c.dustDisposal(),
                c.solventDisposal()))
        .allMatch(Figure::isKnown);
  }

  @Test
  void presence_has_its_hours() {
    SetUpTimes t = BOOK.setUp();
    assertThat(t.unloading().isKnown() && t.daily().isKnown() && t.cleanUp().isKnown()).isTrue();
    assertThat(t.strike().isKnown() && t.breaks().isKnown() && t.fanAndDuct().isKnown()).isTrue();
    assertThat(feet2(t.hepaPass())).isBetween(1500.0, 6000.0);
    assertThat(feet(t.wallMasking())).isBetween(50.0, 250.0);
  }
}
