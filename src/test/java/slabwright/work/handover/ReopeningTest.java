package slabwright.work.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import slabwright.site.Finish;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.work.AreaWorkPlan;
import slabwright.work.Said;
import slabwright.work.WorkPlan;
import slabwright.work.WorkSamples;
import slabwright.work.days.ClosedFloor;
import slabwright.work.days.DayPlan;

/** When a floor opens again and how it is kept, by its finish and its place. */
class ReopeningTest {
  private static final Site SITE = WorkSamples.tramHall();

  /** The paper of an area with one product on it. */
  private static String paper(String area, String product) {
    List<FloorArea> areas =
        SITE.areas().stream()
            .map(
                a ->
                    a.withFinish(
                        new Finish(
                            Optional.empty(),
                            List.of(new Finish.Coat(product, 1, Finish.Target.WHOLE_FLOOR)))))
            .toList();
    WorkPlan plan = WorkSamples.plan(SITE.withAreas(areas));
    return Reopening.of(plan.area(area).orElseThrow(), plan)
        .orElseThrow()
        .paper(plan)
        .text(Said::of);
  }

  @Example
  void a_film_is_recoated_by_wear_and_a_penetrating_sealer_when_water_no_longer_beads() {
    assertThat(paper("reading-hall", "topcoat"))
        .contains("recoated by wear")
        .doesNotContain("no longer beads");
    assertThat(paper("reading-hall", "sealer"))
        .contains("when water no longer beads")
        .doesNotContain("by wear");
  }

  @Example
  void dye_without_a_sealer_says_that_nothing_protects_it() {
    assertThat(paper("reading-hall", "water-dye"))
        .contains("Nothing protects the dye")
        .doesNotContain("beads");
  }

  @Example
  void a_floor_is_closed_in_the_calendar_from_its_first_step_until_soft_soles_may_walk_on_it() {
    WorkPlan plan = WorkSamples.plan(SITE);
    DayPlan days = plan.days().maybe().orElseThrow();
    for (AreaWorkPlan area : plan.areas()) {
      Reopening opens = Reopening.of(area, plan).orElseThrow();
      List<ClosedFloor> closed =
          Reopening.closures(plan).stream().filter(c -> c.areaId().equals(area.id())).toList();
      assertThat(closed).hasSize(2);
      assertThat(Said.of(closed.get(0).summary())).isEqualTo("Closed: " + area.name());
      assertThat(Said.of(closed.get(1).summary())).contains(": " + area.name()).contains("only");
      assertThat(closed.get(0).span().end())
          .isEqualTo(closed.get(1).span().start())
          .isEqualTo(opens.opensLight().maybe().orElseThrow());
      assertThat(closed.get(1).span().end()).isEqualTo(opens.opensFull().maybe().orElseThrow());
      assertThat(days.steps().stream().filter(s -> s.task().type().isOn(area.id())))
          .isNotEmpty()
          .allSatisfy(
              s -> {
                assertThat(s.start()).isAfterOrEqualTo(closed.get(0).span().start());
                assertThat(s.end()).isBeforeOrEqualTo(closed.get(0).span().end());
              });
    }
  }

  /** The hall opened while acetone sealer was rolled on the terrace before its doors. */
  @Example
  void a_floor_is_not_opened_while_solvent_or_a_closed_floor_lies_before_its_doors() {
    WorkPlan plan = WorkSamples.plan(SITE);
    AreaWorkPlan hall = plan.area("reading-hall").orElseThrow();
    AreaWorkPlan terrace = plan.area("terrace").orElseThrow();
    LocalDateTime feet =
        Reopening.of(terrace, plan).orElseThrow().opensLight().maybe().orElseThrow();
    Reopening opens = Reopening.of(hall, plan).orElseThrow();
    assertThat(opens.opensLight().maybe()).hasValue(feet);
    assertThat(opens.lastCoat().maybe().orElseThrow()).isBefore(feet.minusDays(1));
    assertThat(opens.opensFull().maybe().orElseThrow()).isAfter(feet);
    assertThat(Reopening.waits(hall, plan).map(Said::of).orElseThrow())
        .contains("Reading hall opens no sooner than Terrace");
    assertThat(Reopening.waits(terrace, plan)).isEmpty();
    WorkPlan sealed =
        WorkSamples.plan(SITE.withAreas(SITE.areas().stream().map(ReopeningTest::sealed).toList()));
    assertThat(
            Reopening.of(sealed.area("reading-hall").orElseThrow(), sealed)
                .orElseThrow()
                .opensLight()
                .maybe()
                .orElseThrow())
        .isBefore(feet);
  }

  private static FloorArea sealed(FloorArea area) {
    return area.withDoorways(
        area.doorways().stream()
            .map(
                d ->
                    d.passage().leadsTo().isPresent() || d.id().equals("main")
                        ? d.withPassage(d.passage().withSealed(true))
                        : d)
            .toList());
  }

  @Example
  void outdoors_there_is_a_list_of_its_own() {
    assertThat(paper("terrace", "outdoor-sealer"))
        .contains("No de-icing salt")
        .contains("First rinse with a hose from")
        .contains("Keep rain, dew")
        .doesNotContain("Dust mop")
        .doesNotContain("Socks");
    assertThat(paper("reading-hall", "sealer")).doesNotContain("salt").contains("Dust mop");
  }

  @Example
  void a_floor_that_is_dry_at_night_opens_in_the_morning() {
    LocalDateTime night = LocalDateTime.of(2026, 12, 3, 3, 10);
    LocalDateTime evening = LocalDateTime.of(2026, 12, 3, 18, 1);
    LocalDateTime noon = LocalDateTime.of(2026, 12, 3, 12, 1);
    assertThat(OpeningHours.next(night)).isEqualTo(LocalDateTime.of(2026, 12, 3, 8, 0));
    assertThat(OpeningHours.next(evening)).isEqualTo(LocalDateTime.of(2026, 12, 4, 8, 0));
    assertThat(OpeningHours.next(noon)).isEqualTo(LocalDateTime.of(2026, 12, 3, 12, 15));
    LocalDateTime closing = LocalDateTime.of(2026, 12, 3, 17, 46);
    assertThat(OpeningHours.next(closing)).isEqualTo(LocalDateTime.of(2026, 12, 3, 18, 0));
  }

  @Property
  void an_opening_is_never_before_the_floor_is_ready_and_always_at_an_hour_people_keep(
      @ForAll @IntRange(max = 600_000) int minutes, @ForAll @IntRange(max = 59) int seconds) {
    LocalDateTime ready =
        LocalDateTime.of(2026, 1, 1, 0, 0).plusMinutes(minutes).plusSeconds(seconds);
    LocalDateTime opens = OpeningHours.next(ready);
    assertThat(opens).isAfterOrEqualTo(ready).isBefore(ready.plusHours(15));
    assertThat(opens.toLocalTime()).isBetween(OpeningHours.OPENS, OpeningHours.SHUTS);
    assertThat(opens.getMinute() % 15).isZero();
  }
}
