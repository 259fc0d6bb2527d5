package slabwright.work.stop;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.site.AreaDetails;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.Site;
import slabwright.site.Spot;
import slabwright.site.job.Stop;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.work.Said;
import slabwright.work.WorkPlan;
import slabwright.work.WorkSamples;
import slabwright.work.handover.Handovers;
import slabwright.work.step.StepKind;

/** What stops a job before it starts. */
class StopsTest {
  private static final Site HALL = WorkSamples.tramHall();

  private static FloorArea floor(String residue, AreaDetails details) {
    Spot middle = new Spot(Length.feet(4), Length.feet(4));
    Form form = new Form.Rectangle(middle, Length.feet(3), Length.feet(2), Length.inches(0), 0);
    Mark mark = Mark.of("r", "old stuff", new MarkKind.Residue(residue), form);
    return FloorArea.of("hall", "Hall", List.of()).withMarks(List.of(mark)).withDetails(details);
  }

  private static AreaDetails builtIn(int year) {
    return AreaDetails.NONE.withBuilt(
        new AreaDetails.Built(OptionalInt.of(year), Optional.empty(), Optional.empty()));
  }

  private static List<Stop.Kind> asked(FloorArea area, boolean fireCode) {
    return StopFinder.of(area, fireCode).stream().map(JobStop::kind).toList();
  }

  @ParameterizedTest
  @CsvSource({"1979, true", "1980, true", "1981, false", "2004, false"})
  void residue_on_a_slab_from_before_1981_asks_for_the_laboratory(int year, boolean laboratory) {
    List<Stop.Kind> asked = asked(floor("carpet adhesive", builtIn(year)), false);
    assertThat(asked.contains(Stop.Kind.ASBESTOS)).isEqualTo(laboratory);
    assertThat(asked).as("whatever the age").contains(Stop.Kind.OWNERS_SURVEY);
  }

  @Test
  void a_slab_of_unknown_age_counts_as_old() {
    assertThat(asked(floor("mastic", AreaDetails.NONE), false)).contains(Stop.Kind.ASBESTOS);
  }

  @Test
  void a_bare_slab_asks_nothing() {
    FloorArea bare = FloorArea.of("hall", "Hall", List.of());
    assertThat(asked(bare, false)).isEmpty();
  }

  /** Somebody asked it, whether the program would have or not. */
  @Test
  void a_question_that_stands_in_the_plan_is_asked_on_though_nothing_else_asks_it() {
    Stop.State given = new Stop.Cleared("F. A. (invented)", LocalDate.of(2026, 11, 20), "");
    AreaDetails details =
        AreaDetails.NONE.withStops(List.of(new Stop(Stop.Kind.FIRE_PERMIT, given)));
    FloorArea bare = FloorArea.of("hall", "Hall", List.of()).withDetails(details);
    assertThat(asked(bare, false)).containsExactly(Stop.Kind.FIRE_PERMIT);
    assertThat(StopFinder.of(bare, false).get(0).state()).isEqualTo(given);
  }

  @Test
  void old_floor_paint_asks_for_a_lead_test_at_any_age() {
    assertThat(asked(floor("Old floor paint", builtIn(2010)), false))
        .contains(Stop.Kind.LEAD_PAINT);
    assertThat(asked(floor("thinset", builtIn(2010)), false)).doesNotContain(Stop.Kind.LEAD_PAINT);
  }

  /** A word that nobody thought of must not let lead through. */
  @ParameterizedTest
  @CsvSource({
    "Grey enamel, true",
    "line marking, true",
    "old primer under glue, true",
    "black stuff, true",
    "'', true",
    "carpet glue, false",
    "cutback mastic, false",
    "tile grout, false",
    "started thinset, false"
  })
  void what_may_be_paint_asks_for_a_lead_test_and_so_does_what_nobody_knows(
      String residue, boolean lead) {
    assertThat(asked(floor(residue, builtIn(2010)), false).contains(Stop.Kind.LEAD_PAINT))
        .isEqualTo(lead);
  }

  @Test
  void a_post_tensioned_or_a_heated_slab_is_scanned_before_anything_is_drilled() {
    for (boolean tensioned : List.of(true, false)) {
      AreaDetails d =
          AreaDetails.NONE.withBuilt(
              new AreaDetails.Built(
                  OptionalInt.of(2000), Optional.of(tensioned), Optional.of(!tensioned)));
      List<JobStop> stops =
          StopFinder.of(FloorArea.of("h", "Hall", List.of()).withDetails(d), false);
      assertThat(stops).singleElement().satisfies(s -> assertThat(s.step()).isEmpty());
      assertThat(Said.of(stops.get(0).reason()))
          .contains("No drilling")
          .contains("moisture probes");
    }
  }

  @Test
  void flammable_finishes_past_the_codes_limit_ask_for_a_permit_before_the_first_coat() {
    List<JobStop> stops = StopFinder.of(FloorArea.of("h", "Hall", List.of()), true);
    assertThat(stops).singleElement().satisfies(s -> assertThat(s.step()).contains(StepKind.COAT));
    assertThat(Said.of(stops.get(0).reason())).contains("350 sq ft").contains("IFC 105");
  }

  @Test
  void an_open_stop_leaves_the_job_in_order_and_without_dates() {
    WorkPlan open = WorkSamples.plan(hallWith(List.of()));
    assertThat(open.days().isKnown()).isFalse();
    assertThat(open.outlook().order().isKnown()).isTrue();
    assertThat(open.outlook().cannotStart())
        .extracting(Message::key)
        .contains("work.stop.asbestos")
        .doesNotContain("work.stop.owners-survey");
  }

  @Test
  void a_cleared_stop_blocks_nothing_and_prints_as_done_with_its_report() {
    WorkPlan plan = WorkSamples.plan(HALL);
    assertThat(plan.days().isKnown()).isTrue();
    String walk = Handovers.of(plan).walkthrough().text(Said::of);
    assertThat(walk)
        .contains("Reading hall: Asbestos in old adhesive or flooring?: done: cleared by")
        .contains("report QM-2611-07");
    assertThat(Handovers.of(plan).loadList().text(Said::of)).contains("Before work starts");
  }

  @Test
  void a_stop_confirmed_out_of_scope_blocks_nothing() {
    Stop.State confirmed =
        new Stop.Confirmed("K. R.", Optional.of(LocalDate.of(2026, 11, 1)), "glue stays covered");
    WorkPlan plan =
        WorkSamples.plan(
            hallWith(
                List.of(
                    new Stop(Stop.Kind.ASBESTOS, confirmed),
                    new Stop(Stop.Kind.FIRE_PERMIT, confirmed))));
    assertThat(plan.days().isKnown()).isTrue();
    assertThat(Handovers.of(plan).walkthrough().text(Said::of))
        .contains("out of scope, confirmed by K. R.: glue stays covered");
  }

  @Test
  void the_walkthrough_asks_when_it_was_built_and_what_runs_in_the_slab() {
    assertThat(Handovers.of(WorkSamples.plan(HALL)).walkthrough().text(Said::of))
        .contains("When was the building built?")
        .contains("Is the slab post-tensioned?")
        .contains("Is the slab heated?");
  }

  private static Site hallWith(List<Stop> stops) {
    FloorArea hall = HALL.areas().get(0);
    FloorArea other = hall.withDetails(hall.details().withStops(stops));
    return HALL.withAreas(List.of(other, HALL.areas().get(1)));
  }
}
