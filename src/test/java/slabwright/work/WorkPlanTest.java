package slabwright.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import slabwright.inlay.masking.DyeNeed;
import slabwright.site.AirSpace;
import slabwright.site.FloorArea;
import slabwright.site.FloorUse;
import slabwright.site.Site;
import slabwright.site.Slab;
import slabwright.units.Message;
import slabwright.units.UnitSystem;
import slabwright.work.air.AirScreening;
import slabwright.work.air.ClearingTime;
import slabwright.work.book.Figure;
import slabwright.work.book.ShopBook;
import slabwright.work.coat.CoatPlan;
import slabwright.work.coat.LanePlan;
import slabwright.work.days.DayPlan;
import slabwright.work.days.DayTable;
import slabwright.work.days.LateStart;
import slabwright.work.days.ScheduledStep;
import slabwright.work.prep.PrepStep;

/** The tram hall as a whole, planned by the invented shop book. */
class WorkPlanTest {
  private static final Site SITE = WorkSamples.solventHall();
  private static final WorkPlan PLAN = WorkSamples.plan(SITE);
  private static final String HALL = "reading-hall";
  private static final String MIST = HALL + "/inlay.heron.2.inlay-dye.1.mist.1";

  @Test
  void every_step_of_both_areas_finds_its_day() {
    DayPlan days = PLAN.days().maybe().orElseThrow();
    assertThat(days.steps()).extracting(s -> s.task().area()).contains("Reading hall", "Terrace");
    assertThat(days.steps()).allMatch(s -> !s.start().isBefore(SITE.start().orElseThrow()));
    assertThat(PLAN.table().maybe().orElseThrow().lines()).anyMatch(DayTable.Line::critical);
  }

  @Test
  void the_crew_sets_up_and_then_levels_the_proud_trench_before_anything_else() {
    assertThat(
            PLAN.days().maybe().orElseThrow().steps().stream()
                .limit(2)
                .map(s -> Said.of(s.task().name())))
        .containsExactly("Unload and set up", "Grind flush: drain trench");
  }

  /** The example book grinds 30 ft² an hour 3 mm deep; concrete weighs 2.3 kg for 1 m² and mm. */
  @Test
  void hours_and_dust_of_the_proud_trench_follow_the_volume_ground_off() {
    double mm2 = hall(PLAN).prep().levelling().trenches().get(0).mm2();
    double high = 25.4 / 8;
    assertThat(hall(PLAN).prep().levelling().trenches().get(0).mm3().getAsDouble())
        .isCloseTo(mm2 * high, within(1.0));
    PrepStep flush = hall(PLAN).prep().steps().get(0);
    assertThat(flush.dust().maybe().orElseThrow()).isCloseTo(mm2 / 1e6 * high * 2.3, within(0.001));
    double hours = mm2 / (304.8 * 304.8) / 30 * high / 3;
    assertThat(flush.handTime().maybe().orElseThrow().toSeconds() / 3600.0)
        .isCloseTo(hours, within(0.01));
  }

  @Test
  void zones_of_the_prep_plan_are_the_floor_to_be_ground() {
    double zones =
        hall(PLAN).prep().zones().stream().mapToDouble(z -> z.machine() + z.hand()).sum();
    assertThat(zones).isCloseTo(hall(PLAN).floor().net(), within(1000.0));
  }

  @Test
  void the_lanes_keep_a_wet_edge_and_cover_the_floor() {
    CoatPlan sealer = hall(PLAN).coat("sealer").orElseThrow();
    LanePlan lanes = sealer.lanes().maybe().orElseThrow().orElseThrow();
    assertThat(sealer.keepsWetEdge()).isEqualTo(Figure.known(true));
    assertThat(lanes.cutOff()).isEmpty();
    assertThat(lanes.lanes().stream().mapToDouble(l -> l.region().area()).sum())
        .isCloseTo(hall(PLAN).floor().net(), within(5000.0));
  }

  @Test
  void vapour_is_lower_with_air_and_higher_in_the_lowest_metre() {
    AirScreening air = screening(PLAN);
    assertThat(air.stated().orElseThrow().peakLel()).isLessThan(air.closed().peakLel());
    assertThat(air.closed().layerPeakLel() / air.closed().peakLel()).isCloseTo(4.572, within(1e-9));
    assertThat(air.need().health()).isGreaterThan(air.need().fire());
  }

  @Test
  void every_coat_of_a_solvent_product_is_in_the_screening_of_a_graphic_colour_by_colour() {
    assertThat(screening(PLAN).steps()).hasSize(2 + 2 * 3);
  }

  @Test
  void without_any_airflow_the_vapour_stays_and_the_job_can_not_start() {
    WorkPlan plan = WorkSamples.plan(withAir(new AirSpace(hallOf(SITE).air().ceiling(), 0, 1)));
    assertThat(screening(plan).stated()).isEmpty();
    assertThat(plan.days().isKnown()).isFalse();
    assertThat(plan.outlook().cannotStart())
        .extracting(Message::key)
        .contains("work.start.never-clear", "work.start.over-a-quarter");
    assertThat(ordered(plan, HALL + "/coat.1.base-dye.1").worked()).isPositive();
  }

  @Test
  void others_are_kept_out_by_each_steps_own_vapour_and_never_shorter_than_it_is_wet() {
    Duration dye = step(PLAN, HALL + "/coat.1.base-dye.1").task().keepOut().orElseThrow().after();
    Duration mist =
        step(PLAN, HALL + "/inlay.heron.2.inlay-dye.1.mist.1")
            .task()
            .keepOut()
            .orElseThrow()
            .after();
    assertThat(mist).isLessThan(dye);
    double layer =
        screening(PLAN).stated().orElseThrow().steps().stream()
            .filter(s -> Said.of(s.name()).contains("coat 1"))
            .map(s -> ((ClearingTime.After) s.layerToHealth()).minutes())
            .findFirst()
            .orElseThrow();
    long wet = step(PLAN, HALL + "/coat.1.base-dye.1").task().air().wet().after().toMinutes();
    assertThat(dye.toMinutes()).isEqualTo(Math.max((long) Math.ceil(layer), wet));
  }

  @Test
  void each_of_two_inlays_of_one_name_keeps_others_out_by_its_own_vapour() {
    // so little that the air clears later than the dye dries
    Site little = withAir(new AirSpace(hallOf(SITE).air().ceiling(), 340, 3));
    WorkPlan one = WorkSamples.plan(little);
    WorkPlan plan =
        WorkPlan.of(little, WorkSamples.floorsWithSecondHeron(little, 0.05), PLAN.book());
    Duration large = keptOut(plan, MIST);
    Duration small = keptOut(plan, HALL + "/inlay.second.2.inlay-dye.1.mist.1");
    assertThat(small).isLessThan(large);
    assertThat(large).isGreaterThan(ordered(plan, MIST).task().air().wet().after());
    assertThat(large).isEqualTo(keptOut(one, MIST));
  }

  private static Duration keptOut(WorkPlan plan, String id) {
    return ordered(plan, id).task().keepOut().orElseThrow().after();
  }

  private static ScheduledStep ordered(WorkPlan plan, String id) {
    return plan.outlook().order().maybe().orElseThrow().step(id).orElseThrow();
  }

  @Test
  void without_a_ceiling_height_the_air_is_asked_for_and_the_days_are_there() {
    WorkPlan plan = WorkSamples.plan(withAir(new AirSpace(Optional.empty(), 3400, 3)));
    assertThat(Said.of(hall(plan).air().text(Object::toString)))
        .contains("ceiling height")
        .contains("measure");
    assertThat(plan.days().isKnown()).isTrue();
  }

  @Test
  void outdoors_there_is_no_room_to_screen_but_the_fire_code_may_apply() {
    AirPlan air = PLAN.area("terrace").orElseThrow().air().maybe().orElseThrow();
    assertThat(air.screening()).isEmpty();
    assertThat(air.fire().applies()).isTrue();
  }

  @Test
  void what_the_book_lacks_is_named_and_nothing_is_guessed() {
    WorkPlan plan =
        WorkSamples.plan(SITE, WorkSamples.bookWith("product", "sealer", "coverage", "?"));
    CoatPlan sealer = hall(plan).coat("sealer").orElseThrow();
    assertThat(Said.of(sealer.kits().text(Object::toString)))
        .isEqualTo("not in the shop book: coverage of sealer");
    assertThat(plan.days().isKnown()).isTrue();
  }

  @Test
  void a_missing_rate_leaves_the_day_plan_open_by_name() {
    WorkPlan plan =
        WorkSamples.plan(SITE, WorkSamples.bookWith("prep", "", "trench levelling", "?"));
    assertThat(Said.of(plan.days().text(Object::toString)))
        .isEqualTo("not in the shop book: trench levelling of prep");
  }

  @Test
  void without_a_day_plan_the_air_is_still_screened_coat_after_coat() {
    WorkPlan plan =
        WorkSamples.plan(SITE, WorkSamples.bookWith("prep", "", "trench levelling", "?"));
    assertThat(screening(plan).steps()).hasSize(2 + 2 * 3);
    assertThat(screening(plan).closed().peakLel())
        .isCloseTo(screening(PLAN).closed().peakLel(), within(1e-3));
    assertThat(Said.of(hall(plan).air().maybe().orElseThrow().assumption()))
        .contains("no day plan yet");
  }

  @Test
  void a_floor_that_may_get_wet_is_judged_wet_until_somebody_says_that_it_stays_dry() {
    FloorArea inner = hallOf(SITE).withDoorways(List.of());
    assertThat(slipClass(inner.withUse(FloorUse.NOT_ASKED))).contains("Interior, Wet");
    assertThat(slipClass(inner.withUse(FloorUse.NOT_ASKED.withWet(Optional.of(true)))))
        .contains("Interior, Wet");
    assertThat(slipClass(inner.withUse(FloorUse.NOT_ASKED.withWet(Optional.of(false)))))
        .contains("Interior, Dry");
  }

  private static String slipClass(FloorArea area) {
    return hall(WorkSamples.plan(with(area))).notes().stream()
        .filter(n -> Said.of(n.subject()).equals("Slip"))
        .map(n -> Said.of(n.rule()))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_plan_is_a_value() {
    assertThat(WorkSamples.plan(SITE).areas()).isEqualTo(PLAN.areas());
    assertThat(WorkSamples.plan(SITE).days()).isEqualTo(PLAN.days());
  }

  @Test
  void a_late_first_coat_makes_the_job_end_no_earlier() {
    LateStart.Result late =
        PLAN.lateStart(HALL + "/coat.1.base-dye.1", Duration.ofHours(9)).maybe().orElseThrow();
    assertThat(((LateStart.Result.Later) late).consequence().end().isNegative()).isFalse();
  }

  @Test
  void the_dye_of_all_stencils_is_the_dye_that_is_bought() {
    DyeNeed dark = hall(PLAN).dyeNeed("heron", "#1f3d4d").orElseThrow();
    DyeNeed light = hall(PLAN).dyeNeed("heron", "#8a5a2b").orElseThrow();
    double mm3 = hall(PLAN).coat("inlay-dye").orElseThrow().totalVolume().maybe().orElseThrow();
    assertThat(dark.litres().orElseThrow() + light.litres().orElseThrow())
        .isCloseTo(mm3 / 1e6, within(1e-9));
    assertThat(dark.jars()).hasValue(2);
    assertThat(hall(PLAN).dyeNeed("heron", "#ffffff")).isEmpty();
  }

  @Test
  void a_day_hotter_than_the_books_table_refuses_the_two_part_coat() {
    Slab s = hallOf(SITE).slab();
    Slab hot = s.withAirC(OptionalDouble.of(35));
    WorkPlan plan = WorkSamples.plan(with(hallOf(SITE).withSlab(hot)));
    assertThat(Said.of(hall(plan).coat("topcoat").orElseThrow().batches().text(Object::toString)))
        .contains("\"working time\" of topcoat")
        .contains("35 °C");
  }

  @Test
  void a_kit_that_can_not_be_laid_in_time_asks_for_hands() {
    ShopBook slow = WorkSamples.bookWith("product", "topcoat", "laying rate", "200 ft2/h");
    assertThat(
            Said.of(
                hall(WorkSamples.plan(SITE, slow))
                    .coat("topcoat")
                    .orElseThrow()
                    .batches()
                    .text(b -> "")))
        .startsWith("add hands");
  }

  @Test
  void the_same_plan_in_metric_units_and_a_metric_book_gives_the_same_amounts() {
    ShopBook metric =
        WorkSamples.bookWith("product", "sealer", "coverage", "9.816954698844464 m2/L");
    WorkPlan other = WorkSamples.plan(SITE.withUnits(UnitSystem.METRIC), metric);
    for (CoatPlan coat : hall(PLAN).coats()) {
      double here = coat.totalVolume().maybe().orElseThrow();
      String id = coat.product().id();
      assertThat(hall(other).coat(id).orElseThrow().totalVolume().maybe().orElseThrow())
          .isCloseTo(here, within(here * 1e-9));
    }
    assertThat(other.days().maybe().orElseThrow().end())
        .isEqualTo(PLAN.days().maybe().orElseThrow().end());
  }

  private static ScheduledStep step(WorkPlan plan, String id) {
    return plan.days().maybe().orElseThrow().step(id).orElseThrow();
  }

  private static AirScreening screening(WorkPlan plan) {
    return hall(plan).air().maybe().orElseThrow().screening().orElseThrow();
  }

  private static AreaWorkPlan hall(WorkPlan plan) {
    return plan.area(HALL).orElseThrow();
  }

  private static FloorArea hallOf(Site site) {
    return site.area(HALL).orElseThrow();
  }

  private static Site withAir(AirSpace air) {
    return with(hallOf(SITE).withAir(air));
  }

  private static Site with(FloorArea hall) {
    List<FloorArea> areas = SITE.areas().stream().map(a -> a.id().equals(HALL) ? hall : a).toList();
    return SITE.withAreas(areas);
  }
}
