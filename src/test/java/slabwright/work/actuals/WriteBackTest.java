package slabwright.work.actuals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.site.Finish;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.units.Result;
import slabwright.work.Said;
import slabwright.work.WorkPlan;
import slabwright.work.WorkSamples;
import slabwright.work.book.BookSamples;
import slabwright.work.book.ShopBook;
import slabwright.work.book.ShopBookText;
import slabwright.work.coat.CoatPlan;

class WriteBackTest {
  private static final WorkPlan PLAN = WorkSamples.plan(WorkSamples.tramHall());
  private static final ShopBookText BOOK = BookSamples.text();

  @Test
  void what_was_poured_gives_the_coverage_and_planning_again_gives_that_volume() {
    WriteBack.NewBook result = back(actual(WriteBack.ActualKind.USED, "sealer", "5 gal"));
    WriteBack.Change change = result.changes().get(0);
    assertThat(Said.of(change.sentence())).startsWith("coverage of sealer: 400 ft2/gal → 34");
    WorkPlan again = WorkSamples.plan(WorkSamples.tramHall(), ShopBook.of(result.text()));
    CoatPlan sealer = again.area("reading-hall").orElseThrow().coat("sealer").orElseThrow();
    double gallons = sealer.totalVolume().maybe().orElseThrow() / 3785411.784;
    assertThat(gallons).isCloseTo(5, within(0.005));
  }

  @Test
  void hours_of_a_pass_give_its_rate() {
    WriteBack.NewBook result =
        back(
            actual(WriteBack.ActualKind.MACHINE, "metal 60", "8 h"),
            actual(WriteBack.ActualKind.HAND, "metal 60", "150 min"));
    assertThat(result.changes())
        .extracting(WriteBack.Change::key)
        .containsExactly("machine rate", "hand rate");
    WorkPlan again = WorkSamples.plan(WorkSamples.tramHall(), ShopBook.of(result.text()));
    long minutes =
        again.area("reading-hall").orElseThrow().prep().steps().stream()
            .filter(s -> s.id().equals("grit.metal 60"))
            .mapToLong(s -> s.machineTime().maybe().orElseThrow().toMinutes())
            .sum();
    assertThat(minutes).isBetween(479L, 481L);
  }

  @Test
  void comments_and_all_other_values_stay() {
    ShopBookText after = back(actual(WriteBack.ActualKind.LAID, "topcoat", "2 h")).text();
    List<String> before = BOOK.text().lines().toList();
    List<String> lines = after.text().lines().toList();
    long different = 0;
    for (int i = 0; i < before.size(); i++) {
      different += before.get(i).equals(lines.get(i)) ? 0 : 1;
    }
    assertThat(different).isEqualTo(1);
  }

  @Test
  void a_product_used_twice_on_a_floor_is_written_back_by_both_of_its_places() {
    Site site = WorkSamples.tramHall();
    FloorArea hall = site.area("reading-hall").orElseThrow();
    List<Finish.Coat> coats = new ArrayList<>(hall.finish().coats());
    coats.add(new Finish.Coat("sealer", 2, Finish.Target.WHOLE_FLOOR));
    Finish twice = new Finish(hall.finish().exposure(), coats);
    Site sealedAgain =
        site.withAreas(List.of(hall.withFinish(twice), site.area("terrace").orElseThrow()));
    WriteBack.NewBook result =
        WriteBack.of(
                WorkSamples.plan(sealedAgain),
                BOOK,
                List.of(actual(WriteBack.ActualKind.USED, "sealer", "15 gal")))
            .orThrow();
    WorkPlan again = WorkSamples.plan(sealedAgain, ShopBook.of(result.text()));
    double gallons =
        again.area("reading-hall").orElseThrow().coats().stream()
                .filter(c -> c.product().id().equals("sealer"))
                .mapToDouble(c -> c.totalVolume().maybe().orElseThrow())
                .sum()
            / 3785411.784;
    assertThat(gallons).isCloseTo(15, within(0.015));
  }

  @Test
  void what_the_plan_does_not_use_is_refused() {
    Result<WriteBack.NewBook> bad =
        WriteBack.of(PLAN, BOOK, List.of(actual(WriteBack.ActualKind.USED, "varnish", "1 gal")));
    assertThat(((Result.Refused<?>) bad).message().key())
        .isEqualTo("work.write-back.the-plan-has-no-floor");
    assertThat(Said.why(bad)).contains("varnish");
  }

  @Test
  void no_time_and_no_volume_are_refused() {
    for (String amount : List.of("0 gal", "none", "3 h")) {
      assertThat(
              WriteBack.of(PLAN, BOOK, List.of(actual(WriteBack.ActualKind.USED, "sealer", amount)))
                  .isOk())
          .as(amount)
          .isFalse();
    }
    assertThat(
            WriteBack.of(PLAN, BOOK, List.of(actual(WriteBack.ActualKind.HAND, "metal 60", "0 h")))
                .isOk())
        .isFalse();
  }

  @Test
  void only_what_the_plan_uses_is_asked_for() {
    assertThat(WriteBack.askable(PLAN))
        .extracting(a -> a.what().word() + " " + a.name())
        .contains("used sealer", "laid topcoat", "machine metal 60", "hand resin 200")
        .doesNotContain("used filler", "machine metal 16", "laid inlay-dye");
  }

  private static WriteBack.Actual actual(WriteBack.ActualKind what, String name, String amount) {
    return new WriteBack.Actual(what, name, amount);
  }

  private static WriteBack.NewBook back(WriteBack.Actual... measured) {
    return WriteBack.of(PLAN, BOOK, List.of(measured)).orThrow();
  }
}
