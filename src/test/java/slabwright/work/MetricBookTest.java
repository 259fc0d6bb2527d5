package slabwright.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.site.Site;
import slabwright.units.UnitSystem;
import slabwright.work.air.AirScreening;
import slabwright.work.book.BookSamples;
import slabwright.work.book.ShopBook;
import slabwright.work.book.ShopBookText;
import slabwright.work.coat.Batches;
import slabwright.work.coat.CoatPlan;
import slabwright.work.coat.Kits;

/** The same plan and the same book, in feet and gallons and in metric units throughout. */
class MetricBookTest {
  private static final Site FEET = WorkSamples.tramHall().withUnits(UnitSystem.FEET_INCHES);
  private static final ShopBookText METRIC = MetricBook.of(BookSamples.text());
  private static final WorkPlan HERE = WorkSamples.plan(FEET);
  private static final WorkPlan THERE =
      WorkSamples.plan(FEET.withUnits(UnitSystem.METRIC), ShopBook.of(METRIC));

  @Test
  void no_value_of_the_other_book_is_in_feet_gallons_or_fahrenheit() {
    assertThat(ShopBook.of(METRIC).faults()).isEmpty();
    assertThat(METRIC.text().lines().map(l -> l.replaceFirst("#.*", "")))
        .noneMatch(l -> l.matches(".*= .*\\b(ft2|ft|gal|floz|qt|lb|cfm|F|in)\\b.*"));
  }

  @Test
  void both_give_the_same_amounts() {
    List<Double> here = amounts(HERE);
    List<Double> there = amounts(THERE);
    assertThat(here).hasSizeGreaterThan(50).hasSameSizeAs(there);
    for (int i = 0; i < here.size(); i++) {
      assertThat(there.get(i))
          .as("amount %d", i)
          .isCloseTo(here.get(i), within(1e-6 * Math.abs(here.get(i)) + 1e-9));
    }
  }

  @Test
  void both_give_the_same_days() {
    assertThat(THERE.days().maybe().orElseThrow().end())
        .isEqualTo(HERE.days().maybe().orElseThrow().end());
    assertThat(THERE.days().maybe().orElseThrow().personTime())
        .isEqualTo(HERE.days().maybe().orElseThrow().personTime());
  }

  private static List<Double> amounts(WorkPlan plan) {
    List<Double> all = new ArrayList<>();
    for (AreaWorkPlan w : plan.areas()) {
      w.coats().forEach(c -> coat(c, all));
      w.prep()
          .steps()
          .forEach(s -> all.add((double) s.machineTime().maybe().orElseThrow().toSeconds()));
      w.prep()
          .steps()
          .forEach(s -> all.add((double) s.handTime().maybe().orElseThrow().toSeconds()));
      w.prep().dust().maybe().ifPresent(all::add);
      w.bags().maybe().ifPresent(n -> all.add((double) n));
      all.add(w.prep().filler().kits().map(Kits::bought).maybe().orElseThrow());
      w.air().maybe().flatMap(AirPlan::screening).ifPresent(s -> air(s, all));
    }
    return all;
  }

  private static void coat(CoatPlan c, List<Double> all) {
    c.totalVolume().maybe().ifPresent(all::add);
    c.kits().map(Kits::bought).maybe().ifPresent(all::add);
    c.kits().maybe().ifPresent(k -> all.add((double) k.count()));
    c.film().maybe().ifPresent(f -> all.addAll(List.of(f.wet(), f.dry())));
    c.mixed().map(Batches::used).ifPresent(all::add);
    c.mixed().ifPresent(b -> all.add((double) b.list().size()));
    c.grit().maybe().ifPresent(all::add);
    c.wetEdge().maybe().ifPresent(t -> all.add((double) t.toSeconds()));
    c.lanes().maybe().flatMap(l -> l).ifPresent(l -> all.add((double) l.lanes().size()));
  }

  private static void air(AirScreening s, List<Double> all) {
    all.add(s.closed().peakLel());
    all.add(s.stated().orElseThrow().peakLel());
    all.add(s.stated().orElseThrow().together());
    all.add(s.need().fire());
    all.add(s.need().health());
  }
}
