package slabwright.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.site.AirSpace;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.units.Message;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.step.AirEffect;
import slabwright.work.step.StepKind;
import slabwright.work.step.ToolKind;

class SharedAirTest {
  private static final Site SITE = WorkSamples.tramHall();
  private static final String NEVER = "work.start.never-clear-beside";

  @Test
  void nothing_sparks_in_the_hall_while_the_terrace_is_sealed_and_until_it_may_be_recoated() {
    DayPlan days = days(SITE);
    List<ScheduledStep> coats = solventOn(days, "terrace");
    assertThat(coats).isNotEmpty();
    for (ScheduledStep coat : coats) {
      assertThat(coat.task().air().vapour().after().toHours()).isBetween(4L, 8L);
      LocalDateTime clear = coat.end().plus(coat.task().air().vapour().after());
      assertThat(sparksInTheHall(days, coat.start(), clear)).as(coat.task().id()).isEmpty();
    }
  }

  @Test
  void without_the_shared_door_the_hall_is_ground_beside_the_sealer() {
    DayPlan days = days(apart(SITE));
    assertThat(solventOn(days, "terrace"))
        .anySatisfy(c -> assertThat(sparksInTheHall(days, c.start(), c.end())).isNotEmpty());
  }

  @Test
  void dust_of_the_terrace_never_falls_into_a_coat_of_the_hall_until_it_may_be_recoated() {
    DayPlan together = days(SITE);
    DayPlan alone = days(apart(SITE));
    assertThat(dustInWetCoats(together, "terrace", "reading-hall")).isEmpty();
    assertThat(dustInWetCoats(together, "reading-hall", "terrace")).isEmpty();
    assertThat(dustInWetCoats(alone, "reading-hall", "terrace")).isNotEmpty();
    assertThat(coatsOn(together, "reading-hall"))
        .isNotEmpty()
        .allSatisfy(
            s -> {
              assertThat(s.task().air().wet().areas()).containsExactly("reading-hall", "terrace");
              assertThat(s.task().air().wet().after()).isPositive();
            });
  }

  private static List<ScheduledStep> coatsOn(DayPlan days, String area) {
    return days.steps().stream()
        .filter(s -> s.task().type().isOn(area) && s.task().type().coat().isPresent())
        .toList();
  }

  /** Steps that raise dust on one floor while a coat of the other is wet. */
  private static List<String> dustInWetCoats(DayPlan days, String dusty, String coated) {
    return coatsOn(days, coated).stream()
        .flatMap(
            c ->
                days.steps().stream()
                    .filter(s -> s.task().type().isOn(dusty))
                    .filter(s -> s.task().type().air() instanceof AirEffect.Dust)
                    .filter(s -> isIn(s, c.start(), c.end().plus(c.task().air().wet().after())))
                    .map(s -> c.task().id() + " and " + s.task().id()))
        .toList();
  }

  private static boolean isIn(ScheduledStep step, LocalDateTime from, LocalDateTime to) {
    return step.spans().stream().anyMatch(x -> x.start().isBefore(to) && from.isBefore(x.end()));
  }

  /** The sample names the door at the terrace alone. */
  @Test
  void a_door_that_only_one_side_names_is_shared_all_the_same() {
    assertThat(solventOn(days(SITE), "terrace"))
        .isNotEmpty()
        .allSatisfy(
            c -> assertThat(c.task().air().vapour().areas()).containsExactly("reading-hall"));
    WorkPlan plan = WorkSamples.plan(WorkSamples.solventHall());
    assertThat(solventOn(plan.outlook().order().maybe().orElseThrow(), "reading-hall"))
        .isNotEmpty()
        .allSatisfy(c -> assertThat(c.task().air().vapour().areas()).containsExactly("terrace"));
  }

  @Test
  void vapour_indoors_counts_beside_until_its_own_floor_is_open_again() {
    WorkPlan plan = WorkSamples.plan(WorkSamples.solventHall());
    List<ScheduledStep> laid =
        solventOn(plan.outlook().order().maybe().orElseThrow(), "reading-hall");
    assertThat(plan.outlook().closed()).isNotEmpty();
    for (ClosedAir c : plan.outlook().closed()) {
      assertThat(laid)
          .filteredOn(s -> s.task().id().equals(c.step()))
          .singleElement()
          .satisfies(
              s ->
                  assertThat(s.task().air().vapour().after())
                      .isGreaterThanOrEqualTo(c.after().orElseThrow()));
    }
  }

  @Test
  void vapour_over_the_entry_rule_closes_the_floor_behind_the_shared_door_too() {
    WorkPlan plan = WorkSamples.plan(WorkSamples.solventHall());
    List<ClosedAir> hall =
        plan.outlook().closed().stream().filter(c -> c.area().equals("reading-hall")).toList();
    assertThat(hall).isNotEmpty();
    for (ClosedAir c : hall) {
      assertThat(plan.outlook().closed()).contains(c.at("terrace"));
      assertThat(c.span()).isPresent();
      assertThat(
              plan.days().maybe().orElseThrow().steps().stream()
                  .filter(s -> s.task().type().isOn("terrace"))
                  .flatMap(s -> s.spans().stream()))
          .noneMatch(
              s ->
                  s.start().isBefore(c.span().get().end())
                      && c.span().get().start().isBefore(s.end()));
    }
    assertThat(WorkSamples.plan(apart(WorkSamples.solventHall())).outlook().closed())
        .allMatch(c -> c.area().equals("reading-hall"));
  }

  @Test
  void a_doorway_that_does_not_say_where_it_leads_is_named() {
    assertThat(WorkSamples.plan(SITE).outlook().checks())
        .filteredOn(c -> c.what().key().equals("work.shared-doors.unsaid"))
        .extracting(c -> Said.of(c.what()))
        .anySatisfy(s -> assertThat(s).contains("yard door").contains("Reading hall"))
        .noneSatisfy(s -> assertThat(s).contains("main doors"));
  }

  @Test
  void one_floor_alone_asks_of_no_doorway() {
    Site one = SITE.withAreas(List.of(SITE.areas().get(0)));
    assertThat(new SharedDoors(one).unsaid()).isEmpty();
    assertThat(new SharedDoors(apart(SITE)).unsaid()).hasSize(4);
  }

  @Test
  void the_floor_that_another_has_as_its_only_way_in_is_coated_last_and_the_plan_says_so() {
    WorkPlan plan = WorkSamples.plan(SITE);
    LocalDateTime hall = lastOn(plan, "reading-hall");
    assertThat(plan.days().maybe().orElseThrow().steps())
        .filteredOn(s -> s.task().type().isOn("terrace"))
        .filteredOn(s -> s.task().type().coat().isPresent())
        .hasSize(2)
        .allSatisfy(s -> assertThat(s.start()).isAfterOrEqualTo(hall));
    assertThat(plan.outlook().checks())
        .extracting(c -> c.what().key())
        .contains("work.shared-doors.last");
    assertThat(plan.outlook().checks())
        .extracting(c -> Said.of(c.what()))
        .anyMatch(w -> w.endsWith("leave \"Reading hall\" before the first coat of \"Terrace\""));
  }

  @Test
  void a_way_in_is_cleaned_just_before_its_coat_and_not_days_before_it_is_walked_over() {
    WorkPlan plan = WorkSamples.plan(SITE);
    LocalDateTime hall = lastOn(plan, "reading-hall");
    assertThat(plan.days().maybe().orElseThrow().steps())
        .filteredOn(s -> s.task().type().isOn("terrace"))
        .filteredOn(s -> s.task().type().kind() == StepKind.CLEAN)
        .singleElement()
        .satisfies(s -> assertThat(s.start()).isAfterOrEqualTo(hall));
  }

  @Test
  void a_sample_panel_with_a_solvent_dye_is_made_with_its_fan_running() {
    DayPlan days =
        WorkSamples.plan(WorkSamples.solventHall()).outlook().order().maybe().orElseThrow();
    ScheduledStep panel = days.step("reading-hall/sample").orElseThrow();
    assertThat(panel.task().type().tools()).containsExactly(ToolKind.FAN);
    assertThat(panel.task().air().vapour().areas())
        .as("nothing sparks behind the shared door meanwhile")
        .containsExactly("terrace");
    assertThat(panel.start()).isAfterOrEqualTo(days.step("reading-hall/fan").orElseThrow().end());
  }

  @Test
  void one_person_with_solvent_is_told_that_nobody_works_alone_in_its_vapour() {
    Site site = WorkSamples.tramHall();
    WorkPlan alone = WorkSamples.plan(site, WorkSamples.bookWith("crew", "", "people", "1"));
    assertThat(alone.outlook().checks())
        .filteredOn(c -> c.what().key().equals("work.work-plan.alone"))
        .extracting(DayCheck::area)
        .containsExactly("reading-hall", "terrace");
    assertThat(WorkSamples.plan(site).outlook().checks())
        .extracting(c -> c.what().key())
        .doesNotContain("work.work-plan.alone");
  }

  @Test
  void with_another_way_in_the_order_is_free_again() {
    WorkPlan plan = WorkSamples.plan(apart(SITE));
    assertThat(plan.outlook().checks())
        .extracting(c -> c.what().key())
        .doesNotContain("work.shared-doors.last");
    assertThat(solventOn(plan.days().maybe().orElseThrow(), "terrace").get(0).start())
        .isBefore(lastOn(plan, "reading-hall"));
  }

  private static LocalDateTime lastOn(WorkPlan plan, String area) {
    return plan.days().maybe().orElseThrow().steps().stream()
        .filter(s -> s.task().type().isOn(area))
        .map(ScheduledStep::end)
        .max(LocalDateTime::compareTo)
        .orElseThrow();
  }

  @Test
  void a_sealed_doorway_shares_neither_air_nor_order_and_the_crew_is_told_to_seal_it() {
    WorkPlan plan = WorkSamples.plan(sealed(SITE, true));
    assertThat(solventOn(plan.days().maybe().orElseThrow(), "terrace"))
        .isNotEmpty()
        .allSatisfy(c -> assertThat(c.task().air().vapour().areas()).isEmpty());
    assertThat(plan.outlook().checks())
        .filteredOn(c -> c.what().key().equals("work.shared-doors.sealed"))
        .extracting(c -> Said.of(c.what()))
        .singleElement()
        .asString()
        .contains("to the main doors", "Terrace", "Reading hall", "tape it shut");
  }

  @Test
  void air_passes_where_one_side_of_a_doorway_does_not_say_that_it_is_sealed() {
    Site one = sealed(SITE, true);
    Doorway.LeadsTo back = new Doorway.LeadsTo("terrace", "from-main");
    FloorArea hall = one.area("reading-hall").orElseThrow();
    Site both =
        one.withAreas(
            List.of(
                hall.withDoorways(
                    hall.doorways().stream()
                        .map(d -> d.id().equals("main") ? leading(d, back) : d)
                        .toList()),
                one.area("terrace").orElseThrow()));
    assertThat(solventOn(days(both), "terrace"))
        .isNotEmpty()
        .allSatisfy(
            c -> assertThat(c.task().air().vapour().areas()).containsExactly("reading-hall"));
  }

  private static Doorway leading(Doorway d, Doorway.LeadsTo to) {
    return d.withPassage(d.passage().withLeadsTo(Optional.of(to)));
  }

  /** The doorway between hall and terrace no way in, and sealed at the terrace's side. */
  private static Site sealed(Site site, boolean shut) {
    return site.withAreas(
        site.areas().stream()
            .map(
                a ->
                    a.withDoorways(
                        a.doorways().stream()
                            .map(d -> d.withWayIn(d.wayIn() && !d.id().equals("main")))
                            .map(
                                d ->
                                    d.id().equals("from-main")
                                        ? d.withPassage(d.passage().withSealed(shut))
                                        : d)
                            .toList()))
            .toList());
  }

  @Test
  void vapour_that_never_clears_behind_a_shared_door_stops_the_job() {
    Site site = WorkSamples.solventHall();
    List<FloorArea> still =
        site.areas().stream()
            .map(a -> a.withAir(new AirSpace(a.air().ceiling(), 0, a.air().mixing())))
            .toList();
    Site unaired = site.withAreas(still);
    assertThat(WorkSamples.plan(unaired).outlook().cannotStart())
        .extracting(Message::key)
        .contains(NEVER);
    assertThat(WorkSamples.plan(apart(unaired)).outlook().cannotStart())
        .extracting(Message::key)
        .doesNotContain(NEVER);
  }

  private static DayPlan days(Site site) {
    return WorkSamples.plan(site).days().maybe().orElseThrow();
  }

  private static List<ScheduledStep> solventOn(DayPlan days, String area) {
    return days.steps().stream()
        .filter(s -> s.task().type().isOn(area))
        .filter(s -> s.task().type().air() instanceof AirEffect.Vapour)
        .filter(s -> s.task().type().coat().isPresent())
        .toList();
  }

  private static List<ScheduledStep> sparksInTheHall(
      DayPlan days, LocalDateTime from, LocalDateTime to) {
    return days.steps().stream()
        .filter(s -> s.task().type().isOn("reading-hall") && s.task().type().sparks())
        .filter(s -> isIn(s, from, to))
        .toList();
  }

  private static Site apart(Site site) {
    return site.withAreas(site.areas().stream().map(SharedAirTest::closed).toList());
  }

  private static FloorArea closed(FloorArea area) {
    return area.withDoorways(
        area.doorways().stream()
            .map(d -> d.withPassage(new Doorway.Passage(Optional.empty(), d.passage().clear())))
            .toList());
  }
}
