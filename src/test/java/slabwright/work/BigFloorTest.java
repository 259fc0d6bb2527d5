package slabwright.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.site.Finish;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.units.Message;
import slabwright.work.book.BookSamples;
import slabwright.work.book.Figure;
import slabwright.work.book.ShopBook;
import slabwright.work.book.ShopBookText;
import slabwright.work.coat.CoatPlan;
import slabwright.work.coat.DividedCoat;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.StepWait;
import slabwright.work.handover.Scope;
import slabwright.work.step.StepKind;

/** An invented bare hall of several sizes, sealed and topcoated by the example crew. */
class BigFloorTest {
  private static WorkPlan plan(double width, double depth) {
    return plan(width, depth, WorkSamples.bookWith("crew", "", "people", "4"));
  }

  private static WorkPlan plan(double width, double depth, ShopBook book) {
    return plan(
        width,
        depth,
        book,
        List.of(
            new Finish.Coat("sealer", 1, Finish.Target.WHOLE_FLOOR),
            new Finish.Coat("topcoat", 2, Finish.Target.WHOLE_FLOOR)));
  }

  private static WorkPlan plan(double width, double depth, ShopBook book, List<Finish.Coat> coats) {
    Site tram = WorkSamples.tramHall();
    FloorArea hall = tram.area("reading-hall").orElseThrow();
    FloorArea bare =
        hall.withMarks(List.of())
            .withInlays(List.of())
            .withFinish(new Finish(hall.finish().exposure(), coats));
    Site site = tram.withAreas(List.of(bare));
    AreaTakeoff floor =
        new AreaTakeoff(
            bare,
            Region.of(Ring.rectangle(0, 0, width, depth)),
            2 * (width + depth),
            Optional.of(new Vec(width / 2, 0)),
            WorkSamples.prep("reading-hall"),
            List.of(),
            List.of());
    return WorkPlan.of(site, List.of(floor), book);
  }

  @Test
  void five_thousand_square_metres_give_a_plan_and_a_price() {
    WorkPlan plan = plan(100_000, 50_000);
    DayPlan days = plan.days().maybe().orElseThrow();
    long sections = days.steps().stream().filter(BigFloorTest::isCoat).count();
    assertThat(sections).isGreaterThan(20);
    assertThat(days.steps()).filteredOn(BigFloorTest::isCoat).allMatch(s -> s.spans().size() == 1);
    assertThat(Scope.of(plan).cost().total()).matches(Figure::isKnown);
  }

  /** Each of five sections was told by itself, and a lead read them all to find the worst. */
  @Test
  void sections_whose_vapour_stops_the_job_are_told_once_by_the_worst() {
    WorkPlan plan =
        plan(
            100_000,
            50_000,
            WorkSamples.bookWith("crew", "", "people", "4"),
            List.of(new Finish.Coat("base-dye", 1, Finish.Target.WHOLE_FLOOR)));
    List<Message> told =
        plan.outlook().cannotStart().stream()
            .filter(m -> m.key().equals("work.start.over-a-quarter"))
            .toList();
    int sections = plan.areas().get(0).coats().get(0).divided().orElseThrow().sections().size();
    assertThat(sections).isGreaterThan(2);
    assertThat(told).hasSize(1);
    assertThat(Said.of(told.get(0))).contains(" of " + sections);
  }

  /** One line for each of fifty sections hid the one that was held for another reason. */
  @Test
  void sections_held_for_one_reason_are_told_once_with_their_number_and_kept_each_in_the_list() {
    WorkPlan plan =
        plan(
            100_000,
            50_000,
            WorkSamples.bookWith("crew", "", "people", "4"),
            List.of(new Finish.Coat("base-dye", 1, Finish.Target.WHOLE_FLOOR)));
    int sections = plan.areas().get(0).coats().get(0).divided().orElseThrow().sections().size();
    List<HeldStep> held = plan.outlook().held().stream().filter(h -> !h.frees().isEmpty()).toList();
    assertThat(held).hasSizeGreaterThanOrEqualTo(sections);
    List<HeldGroup> told = HeldGroup.of(plan.outlook().held());
    assertThat(told).hasSizeLessThan(4);
    assertThat(told.stream().mapToInt(g -> g.all().size()).sum()).isEqualTo(held.size());
    HeldGroup coats =
        told.stream().filter(g -> g.all().size() == sections).findFirst().orElseThrow();
    assertThat(Said.of(coats.why())).contains(sections + " steps for this reason");
    double worst =
        coats.all().stream().mapToDouble(h -> (Double) h.why().values().get(1)).max().orElseThrow();
    assertThat(coats.worst().why().values()).contains(worst);
  }

  @Test
  void a_section_is_laid_in_what_set_up_clean_up_and_the_break_leave_of_the_day() {
    WorkPlan plan = plan(100_000, 50_000);
    Duration day = StepHours.inOneGo(plan.book()).maybe().orElseThrow();
    assertThat(day).isEqualTo(Duration.ofMinutes(7 * 60 + 15));
    for (CoatPlan coat : plan.areas().get(0).coats()) {
      for (DividedCoat.Section s : coat.divided().orElseThrow().sections()) {
        assertThat(s.plan().coatTime().maybe().orElseThrow()).isLessThanOrEqualTo(day);
      }
    }
  }

  @Test
  void a_coat_divided_for_its_wet_edge_goes_on_coat_by_coat_each_section_in_its_own_window() {
    String six = "60 F: 6 min, 80 F: 6 min";
    WorkPlan plan =
        plan(18_000, 18_000, WorkSamples.bookWith("product", "topcoat", "wet edge", six));
    CoatPlan top = plan.areas().get(0).coats().get(1);
    int sections = top.divided().orElseThrow().sections().size();
    DayPlan days = plan.days().maybe().orElseThrow();
    List<ScheduledStep> coats =
        days.steps().stream()
            .filter(BigFloorTest::isCoat)
            .filter(s -> s.task().id().contains("topcoat"))
            .toList();
    assertThat(coats).hasSize(2 * sections);
    assertThat(coats.subList(0, sections))
        .allMatch(s -> s.task().type().coat().orElseThrow().number() == 1);
    for (ScheduledStep s : coats.subList(sections, 2 * sections)) {
      assertThat(s.task().waits())
          .anyMatch(w -> w.atMost().isPresent() && isSameSection(days, w, s));
    }
  }

  @Test
  void three_floor_grinders_with_their_vacuums_grind_in_a_third_of_the_time() {
    ShopBookText grinders = BookSamples.text().with("tool", "floor grinder 29", "count", "3");
    WorkPlan three =
        plan(100_000, 50_000, ShopBook.of(grinders.with("tool", "vacuum large", "count", "3")));
    ScheduledStep alone = pass(plan(100_000, 50_000));
    ScheduledStep together = pass(three);
    assertThat(together.task().people()).isEqualTo(3);
    assertThat(together.task().length().toMinutes())
        .isBetween(
            alone.task().length().toMinutes() / 3, alone.task().length().toMinutes() / 3 + 1);
    assertThat(together.who().tools()).doesNotHaveDuplicates().hasSize(6);
    ScheduledStep oneVacuum = pass(plan(100_000, 50_000, ShopBook.of(grinders)));
    assertThat(oneVacuum.task().people()).as("the small vacuum pulls too little").isEqualTo(1);
  }

  private static ScheduledStep pass(WorkPlan plan) {
    return plan.days().maybe().orElseThrow().steps().stream()
        .filter(s -> s.task().type().kind() == StepKind.METAL_PASS)
        .filter(s -> s.task().type().isMachineGrinding())
        .findFirst()
        .orElseThrow();
  }

  private static boolean isSameSection(DayPlan days, StepWait w, ScheduledStep s) {
    String first = days.step(w.after()).orElseThrow().task().id();
    return first.equals(s.task().id().replace("topcoat.2", "topcoat.1"));
  }

  private static boolean isCoat(ScheduledStep s) {
    return s.task().type().kind() == StepKind.COAT && !s.isAbrading();
  }
}
