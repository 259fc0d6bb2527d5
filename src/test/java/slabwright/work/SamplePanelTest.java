package slabwright.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.site.Site;
import slabwright.work.book.BookSamples;
import slabwright.work.book.ShopBook;
import slabwright.work.days.DayPlan;
import slabwright.work.days.KeepOut;
import slabwright.work.days.KeepOutPeriod;
import slabwright.work.days.ScheduledStep;
import slabwright.work.step.StepKind;

/** Nobody without protection is where the vapour of a sample panel still counts. */
class SamplePanelTest {
  private static final String HALL = "reading-hall";

  private static DayPlan days(Site site, ShopBook book) {
    WorkPlan plan = WorkSamples.plan(site, book);
    return plan.days().maybe().or(() -> plan.outlook().order().maybe()).orElseThrow();
  }

  private static ScheduledStep panel(DayPlan days) {
    return days.steps().stream()
        .filter(s -> s.task().type().kind() == StepKind.SAMPLE_PANEL)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void nobody_works_on_its_floor_before_others_may_come_back() {
    for (Site site : List.of(WorkSamples.tramHall(), WorkSamples.solventHall())) {
      DayPlan days = days(site, BookSamples.book());
      ScheduledStep panel = panel(days);
      LocalDateTime clear =
          panel.end().plus(panel.task().keepOut().map(KeepOut::after).orElse(Duration.ZERO));
      assertThat(clear).isAfter(panel.end());
      assertThat(KeepOutPeriod.until(panel).orElseThrow()).isAfterOrEqualTo(clear);
      assertThat(days.steps())
          .filteredOn(s -> s.task().type().isOn(HALL) && s.start().isAfter(panel.start()))
          .isNotEmpty()
          .allSatisfy(s -> assertThat(s.start()).as(s.task().id()).isAfterOrEqualTo(clear));
    }
  }

  /** The book's inlay dye dries 20 min, its solvent dye for the floor 30 min: the slower counts. */
  @Test
  void it_counts_until_the_slowest_dye_with_solvent_on_it_is_dry() {
    assertThat(wait(days(WorkSamples.tramHall(), BookSamples.book())))
        .isEqualTo(Duration.ofMinutes(20));
    assertThat(wait(days(WorkSamples.solventHall(), BookSamples.book())))
        .isEqualTo(Duration.ofMinutes(30));
  }

  @Test
  void without_solvent_in_any_dye_nothing_waits_for_it() {
    ShopBook dry = WorkSamples.bookWith("product", "inlay-dye", "solvents", "none");
    DayPlan days = days(WorkSamples.tramHall(), dry);
    assertThat(wait(days)).isZero();
    assertThat(panel(days).task().keepOut()).isEmpty();
  }

  @Test
  void nothing_sparks_behind_an_open_doorway_before_it_is_dry() {
    ScheduledStep panel = panel(days(WorkSamples.tramHall(), BookSamples.book()));
    assertThat(panel.task().air().vapour().areas()).containsExactly("terrace");
    assertThat(panel.task().air().vapour().after()).isEqualTo(Duration.ofMinutes(20));
  }

  private static Duration wait(DayPlan days) {
    String panel = panel(days).task().id();
    return days.steps().stream()
        .flatMap(s -> s.task().waits().stream())
        .filter(w -> w.after().equals(panel))
        .map(w -> w.atLeast())
        .findFirst()
        .orElseThrow();
  }
}
