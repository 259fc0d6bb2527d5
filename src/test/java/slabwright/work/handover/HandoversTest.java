package slabwright.work.handover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import slabwright.site.AdviceId;
import slabwright.site.Declined;
import slabwright.site.Finish;
import slabwright.site.FloorArea;
import slabwright.site.FloorUse;
import slabwright.site.Site;
import slabwright.site.Slab;
import slabwright.site.job.JobCrew;
import slabwright.units.QuantityFormat;
import slabwright.work.Said;
import slabwright.work.WorkPlan;
import slabwright.work.WorkSamples;
import slabwright.work.book.ShopBook;
import slabwright.work.coat.Kits;
import slabwright.work.step.StepKind;

class HandoversTest {
  private static final Site SITE = WorkSamples.tramHall();
  private static final WorkPlan PLAN = WorkSamples.plan(SITE);

  @Test
  void every_cost_line_names_the_sheet_it_comes_from_and_the_total_is_their_sum() {
    Cost cost = Cost.of(PLAN);
    assertThat(cost.lines())
        .allMatch(l -> Said.of(l.source()).matches("(quantities|day plan|cautions): .+"));
    BigDecimal sum = BigDecimal.ZERO;
    for (CostLine l : cost.lines()) {
      sum = sum.add(l.amount().maybe().orElseThrow());
    }
    assertThat(cost.total().maybe().orElseThrow()).isEqualByComparingTo(sum);
  }

  @Test
  void labour_is_hours_of_presence_times_the_books_price_with_hours_of_steps_beside_them() {
    long minutes = PLAN.presence().maybe().orElseThrow().present().toMinutes();
    BigDecimal hours =
        BigDecimal.valueOf(minutes).divide(BigDecimal.valueOf(60), 2, RoundingMode.HALF_UP);
    assertThat(Cost.of(PLAN).lines().get(0).amount().maybe().orElseThrow())
        .isEqualByComparingTo(
            hours.multiply(new BigDecimal("62.00")).setScale(2, RoundingMode.HALF_UP));
    long steps = PLAN.days().maybe().orElseThrow().personTime().toMinutes();
    assertThat(steps).isLessThan(minutes);
    BigDecimal onTheFloor =
        BigDecimal.valueOf(steps).divide(BigDecimal.valueOf(60), 2, RoundingMode.HALF_UP);
    assertThat(Said.of(Cost.of(PLAN).lines().get(0).source()))
        .isEqualTo(
            "day plan: hours of presence; "
                + onTheFloor.toPlainString()
                + " h of them hands on the floor");
  }

  @Test
  void a_price_that_is_not_in_the_book_leaves_the_total_open_by_name() {
    ShopBook book = WorkSamples.bookWith("crew", "", "price an hour", "?");
    Cost cost = Cost.of(WorkSamples.plan(SITE, book));
    assertThat(Said.of(cost.total().text(BigDecimal::toString)))
        .isEqualTo("not in the shop book: price an hour of crew");
    assertThat(cost.known()).isPositive();
  }

  @Test
  void vinyl_is_paid_by_what_comes_off_the_roll() {
    CostLine vinyl =
        Cost.of(PLAN).lines().stream()
            .filter(l -> Said.of(l.what()).startsWith("Stencil vinyl"))
            .findFirst()
            .orElseThrow();
    assertThat(Said.of(vinyl.what())).endsWith("49′ 2 9/16″ × 4′ 0″ off the roll");
    assertThat(Said.of(vinyl.quantity().text(q -> q))).isEqualTo("196.87 sq ft");
    assertThat(vinyl.amount().maybe().orElseThrow()).isEqualByComparingTo("173.76");
  }

  @Test
  void advice_declined_in_the_plan_stands_with_who_and_when() {
    Scope scope = Scope.of(PLAN);
    assertThat(scope.declined())
        .singleElement()
        .satisfies(
            g -> {
              assertThat(g.key()).isEqualTo("terrace/moisture-test");
              assertThat(Said.of(g.words())).startsWith("Terrace: Measure the slab's moisture");
              assertThat(Said.of(g.status()))
                  .isEqualTo("declined by A. Castell (invented) on Nov\u00a020,\u00a02026");
            });
    assertThat(scope.included()).anyMatch(s -> Said.of(s).contains("Two-part clear topcoat"));
  }

  @Test
  void advice_is_declined_followed_or_open_and_nothing_else() {
    assertThat(Scope.of(PLAN).advice())
        .allSatisfy(
            g -> assertThat(g.declined() || g.followed().isPresent() || g.isOpen()).isTrue())
        .filteredOn(Scope.GivenAdvice::isOpen)
        .allMatch(g -> Said.of(g.status()).equals("open"));
  }

  @Test
  void advice_that_the_plan_follows_is_not_open() {
    assertThat(advice(PLAN, "reading-hall/sample-panel"))
        .isEqualTo("followed: the panel is in the day plan");
    FloorArea hall = SITE.areas().get(0);
    String two = "reading-hall/two-part-traffic";
    FloorUse busy = new FloorUse(hall.use().wet(), hall.use().sun(), Optional.of(true));
    assertThat(advice(withHall(hall.withUse(busy)), two))
        .isEqualTo("followed: Two-part clear topcoat (invented)");
    assertThat(advice(withHall(hall.withUse(busy).withFinish(sealed())), two)).isEqualTo("open");
  }

  private static WorkPlan withHall(FloorArea hall) {
    return WorkSamples.plan(SITE.withAreas(List.of(hall, SITE.areas().get(1))));
  }

  private static String advice(WorkPlan plan, String key) {
    return Scope.of(plan).advice().stream()
        .filter(g -> g.key().equals(key))
        .map(g -> Said.of(g.status()))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void who_and_when_are_left_out_where_nobody_knows() {
    Declined bare = Declined.of(AdviceId.MOISTURE_TEST);
    FloorArea terrace = SITE.area("terrace").orElseThrow().withDeclined(List.of(bare));
    WorkPlan plan = WorkSamples.plan(SITE.withAreas(List.of(SITE.areas().get(0), terrace)));
    assertThat(Scope.of(plan).declined())
        .extracting(g -> Said.of(g.status()))
        .containsExactly("declined");
  }

  @Test
  void a_refusal_of_advice_that_is_not_given_prints_nothing() {
    Declined other = Declined.of(AdviceId.WET_UNKNOWN);
    FloorArea terrace = SITE.area("terrace").orElseThrow().withDeclined(List.of(other));
    WorkPlan plan = WorkSamples.plan(SITE.withAreas(List.of(SITE.areas().get(0), terrace)));
    assertThat(Scope.of(plan).declined()).isEmpty();
  }

  @Test
  void the_floor_reopens_after_the_last_coats_drying_times() {
    Reopening hall = Reopening.of(PLAN.area("reading-hall").orElseThrow(), PLAN).orElseThrow();
    LocalDateTime last = hall.lastCoat().maybe().orElseThrow();
    assertThat(hall.full().maybe().orElseThrow()).isEqualTo(last.plusDays(7));
    assertThat(hall.light().maybe().orElseThrow()).isAfter(last.plusHours(12));
    assertThat(hall.paper(PLAN).text(Said::of)).contains("invented example").contains("no wax");
  }

  @Test
  void a_moment_of_reopening_has_weekday_day_month_and_hour() {
    DateTimeFormatter english =
        DateTimeFormatter.ofPattern("EEE, MMM\u00a0d, h:mm\u00a0a", Locale.ENGLISH);
    LocalDateTime morning = LocalDateTime.of(2026, 1, 1, 7, 5);
    for (int day = 0; day < 366; day++) {
      LocalDateTime t = morning.plusDays(day);
      assertThat(Said.of(Reopening.moment(t))).isEqualTo(english.format(t));
    }
  }

  @Test
  void the_approval_says_where_how_large_and_which_way() {
    HandoverDocument paper = Handovers.of(PLAN).approvals().get(0);
    assertThat(paper.text(Said::of))
        .contains("Heron ring")
        .contains("7′ 10 1/2″")
        .contains("______________________  client, date");
  }

  @Test
  void the_load_list_has_the_kits_of_every_product_and_the_plans_machines() {
    String text = Handovers.of(PLAN).loadList().text(Said::of);
    assertThat(text)
        .contains("floor grinder, 29 in")
        .contains("8\u00a0of\u00a01.00\u00a0gal")
        .contains("Half masks with P100 filters for dust: 3")
        .contains("Vacuum bags");
  }

  @Test
  void the_load_list_has_the_fan_with_its_duct_the_grit_and_each_hand_grinder_of_the_plan() {
    JobCrew crew = new JobCrew("", List.of(), new TreeMap<>(Map.of("hand grinder", 2)));
    Site two = SITE.withJob(SITE.job().withCrew(crew));
    assertThat(Handovers.of(WorkSamples.plan(two)).loadList().text(Said::of))
        .contains(
            "hand grinder 5", "hand grinder 2", "fan and duct 12", "Clear polymer grit (invented)");
    assertThat(Handovers.of(PLAN).loadList().text(Said::of)).doesNotContain("hand grinder 2");
  }

  @Test
  void what_goes_on_the_van_is_told_in_whole_feet() {
    assertThat(Handovers.of(PLAN).loadList().text(Said::of))
        .containsPattern("Film and tape along walls[^:]*: \\d+ ft")
        .doesNotContainPattern("\\d\\.\\d+ (sq )?ft\\b.*paper");
  }

  @Test
  void the_load_list_has_diamonds_in_their_bond_masking_and_spares() {
    assertThat(Handovers.of(PLAN).loadList().text(Said::of))
        .contains("metal 60: ")
        .contains(" bond")
        .contains("resin 200")
        .contains("Masking tape")
        .contains("Vacuum hose and filter");
  }

  /** 22 fl oz a cartridge and a tenth lost, as the example book has them. */
  @Test
  void the_load_list_has_a_nozzle_for_each_cartridge_of_each_floor_and_the_gun() {
    double cartridge = 22 * QuantityFormat.US_GALLON_MM3 / 128;
    long nozzles =
        PLAN.areas().stream()
            .mapToLong(a -> (long) Math.ceil(a.prep().filler().mm3() / 0.9 / cartridge))
            .sum();
    assertThat(nozzles).isGreaterThan(2);
    assertThat(Handovers.of(PLAN).loadList().text(Said::of))
        .contains("Cartridge gun, mixing nozzles: " + nozzles + " and spares");
    ShopBook pails = WorkSamples.bookWith("product", "filler", "mixes in its nozzle", "no");
    assertThat(Handovers.of(WorkSamples.plan(SITE, pails)).loadList().text(Said::of))
        .doesNotContain("Cartridge gun");
    ShopBook unknown = WorkSamples.bookWith("product", "filler", "working time", "?");
    assertThat(Handovers.of(WorkSamples.plan(SITE, unknown)).loadList().text(Said::of))
        .contains("Cartridge gun, mixing nozzles: one for each cartridge and each day");
  }

  /** So slow a crew fills one floor on several days: each morning a new nozzle. */
  @Test
  void a_floor_filled_on_several_days_takes_a_further_nozzle_for_each_further_day() {
    WorkPlan slow = WorkSamples.plan(SITE, WorkSamples.bookWith("prep", "", "filling", "3 ft/h"));
    long further =
        slow.days().maybe().orElseThrow().steps().stream()
            .filter(s -> s.task().type().kind() == StepKind.FILL_GAPS)
            .mapToLong(s -> s.spans().size() - 1)
            .sum();
    assertThat(further).isPositive();
    assertThat(nozzles(slow)).isEqualTo(nozzles(PLAN) + further);
  }

  private static long nozzles(WorkPlan plan) {
    Matcher m =
        Pattern.compile("mixing nozzles: (\\d+) and spares")
            .matcher(Handovers.of(plan).loadList().text(Said::of));
    assertThat(m.find()).isTrue();
    return Long.parseLong(m.group(1));
  }

  @Test
  void the_load_list_keeps_every_line_where_two_floor_areas_have_one_name() {
    List<FloorArea> areas = SITE.areas().stream().map(a -> a.withName("Hall")).toList();
    List<HandoverDocument.Section> renamed =
        Handovers.of(WorkSamples.plan(SITE.withAreas(areas))).loadList().sections();
    List<HandoverDocument.Section> before = Handovers.of(PLAN).loadList().sections();
    for (int i = 0; i < before.size(); i++) {
      assertThat(renamed.get(i).rows())
          .as(Said.of(before.get(i).heading()))
          .hasSameSizeAs(before.get(i).rows());
    }
  }

  @Test
  void the_load_list_adds_up_a_product_that_is_laid_twice_on_a_floor() {
    FloorArea hall = SITE.areas().get(0);
    List<Finish.Coat> coats = new ArrayList<>(hall.finish().coats());
    coats.add(new Finish.Coat("sealer", 1, Finish.Target.WHOLE_FLOOR));
    FloorArea twice = hall.withFinish(new Finish(hall.finish().exposure(), coats));
    WorkPlan plan = WorkSamples.plan(SITE.withAreas(List.of(twice, SITE.areas().get(1))));
    assertThat(products(plan)).hasSameSizeAs(products(PLAN));
    assertThat(needed(plan, "sealer")).isCloseTo(2 * needed(PLAN, "sealer"), within(1e-6));
  }

  private static List<HandoverDocument.Row> products(WorkPlan plan) {
    return Handovers.of(plan).loadList().sections().stream()
        .filter(s -> Said.of(s.heading()).equals("Products"))
        .flatMap(s -> s.rows().stream())
        .toList();
  }

  @Test
  void the_walkthrough_asks_only_for_what_the_plan_does_not_know() {
    String text = Walkthrough.of(SITE).text(Said::of);
    assertThat(text).contains("Is there a vapor barrier?");
    String hall = text.substring(text.indexOf("Reading hall"), text.indexOf("Terrace"));
    assertThat(hall).doesNotContain("Scratch hardness").doesNotContain("Ceiling height");
    assertThat(hall).doesNotContain("wet in use").doesNotContain("many feet");
  }

  @Test
  void the_walkthrough_asks_what_goes_on_on_a_floor_nobody_asked_about() {
    List<FloorArea> areas = SITE.areas().stream().map(a -> a.withUse(FloorUse.NOT_ASKED)).toList();
    String text = Walkthrough.of(SITE.withAreas(areas)).text(Said::of);
    assertThat(text.split("Does it get wet in use", -1)).hasSize(3);
    assertThat(text.split("many feet", -1)).as("indoors alone").hasSize(2);
  }

  @Test
  void each_row_of_the_walkthrough_asks_one_thing() {
    Site bare =
        SITE.withAreas(
            SITE.areas().stream()
                .map(a -> a.withUse(FloorUse.NOT_ASKED).withSlab(Slab.UNKNOWN))
                .toList());
    Walkthrough.of(bare).sections().stream()
        .filter(s -> !Said.of(s.heading()).equals("Before work starts"))
        .flatMap(s -> s.rows().stream())
        .map(r -> Said.of(r.label()))
        .forEach(
            q -> {
              assertThat(q).containsOnlyOnce("?");
              assertThat(q).doesNotContain(", and who").doesNotContain(", who");
            });
  }

  @Test
  void an_outdoor_slab_is_not_asked_for_a_probe_that_does_not_fit_it() {
    String terrace = Walkthrough.of(SITE).text(Said::of);
    terrace = terrace.substring(terrace.indexOf("\nTerrace"));
    assertThat(terrace).doesNotContain("F2170").contains("vapor barrier");
  }

  private static BuyLine line(WorkPlan plan, String product) {
    return BuyList.of(plan).stream()
        .filter(b -> b.product().equals(product))
        .findFirst()
        .orElseThrow();
  }

  private static double needed(WorkPlan plan, String product) {
    return line(plan, product).kits().maybe().orElseThrow().needed();
  }

  @Test
  void kits_of_one_product_are_bought_for_the_job_and_not_by_area() {
    FloorArea hall = SITE.areas().get(0).withFinish(sealed());
    FloorArea terrace = SITE.areas().get(1).withFinish(sealed());
    WorkPlan plan = WorkSamples.plan(SITE.withAreas(List.of(hall, terrace)));
    Kits job = line(plan, "sealer").kits().maybe().orElseThrow();
    double needed = 0;
    double bought = 0;
    for (String id : List.of(hall.id(), terrace.id())) {
      Kits area =
          plan.area(id).orElseThrow().coat("sealer").orElseThrow().kits().maybe().orElseThrow();
      needed += area.needed();
      bought += area.bought();
    }
    assertThat(job.needed()).isCloseTo(needed, within(1e-6));
    assertThat(job.bought()).isGreaterThanOrEqualTo(needed).isLessThan(bought);
    assertThat(Cost.of(plan).lines())
        .filteredOn(l -> Said.of(l.what()).startsWith("Water-borne penetrating sealer"))
        .hasSameSizeAs(job.lines());
  }

  private static Finish sealed() {
    return new Finish(
        Optional.empty(), List.of(new Finish.Coat("sealer", 1, Finish.Target.WHOLE_FLOOR)));
  }

  @Test
  void a_product_that_is_mixed_whole_keeps_the_kits_that_each_coat_opens() {
    int opened =
        PLAN.area("reading-hall")
            .orElseThrow()
            .coat("topcoat")
            .orElseThrow()
            .kits()
            .maybe()
            .orElseThrow()
            .count();
    assertThat(line(PLAN, "topcoat").kits().maybe().orElseThrow().count()).isEqualTo(opened);
  }

  @Test
  void what_is_used_up_is_bought_once_for_the_price_that_the_cost_has() {
    List<CostLine> cost = Cost.of(PLAN).lines();
    List<SupplyLine> supplies = SupplyLine.of(PLAN);
    assertThat(supplies).extracting(s -> Said.of(s.what())).doesNotHaveDuplicates();
    for (String word :
        List.of("Clear polymer grit", "vinyl", "paper", "tape", "sleeves", "Brushes", "pails")) {
      assertThat(supplies).as(word).anyMatch(s -> Said.of(s.what()).contains(word));
    }
    for (SupplyLine s : supplies) {
      CostLine paid =
          cost.stream().filter(c -> c.what().equals(s.what())).findFirst().orElseThrow();
      assertThat(s.price()).isEqualTo(paid.amount());
      assertThat(s.neededOn()).isPresent();
    }
  }

  @Test
  void film_is_wanted_before_the_day_on_which_it_is_tried() {
    SupplyLine film =
        SupplyLine.of(PLAN).stream()
            .filter(s -> Said.of(s.what()).contains("vinyl"))
            .findFirst()
            .orElseThrow();
    assertThat(film.neededOn().orElseThrow())
        .isBefore(
            PLAN.days().maybe().orElseThrow().steps().stream()
                .filter(s -> s.task().type().kind() == StepKind.TACK_TEST)
                .findFirst()
                .orElseThrow()
                .start()
                .toLocalDate());
  }

  @Test
  void a_dye_for_the_floor_is_ordered_in_the_books_colour_or_asked_for() {
    assertThat(line(PLAN, "water-dye").colour()).isPresent();
    ShopBook none = WorkSamples.bookWith("product", "water-dye", "colour", "?");
    assertThat(Said.of(line(WorkSamples.plan(SITE, none), "water-dye").name()))
        .endsWith(", color to be chosen");
  }

  @Test
  void advice_on_a_damp_slab_that_nobody_decided_on_stands_until_it_is_met_or_declined() {
    List<Scope.GivenAdvice> unmet = Scope.of(PLAN).unmetMoisture();
    assertThat(unmet).singleElement().matches(g -> g.advice().id() == AdviceId.BREATHING_HUMID);
    FloorArea hall = SITE.areas().get(0);
    Declined no = Declined.of(AdviceId.BREATHING_HUMID).withBy("A. Castell (invented)");
    Site declined = SITE.withAreas(List.of(hall.withDeclined(List.of(no)), SITE.areas().get(1)));
    assertThat(Scope.of(WorkSamples.plan(declined)).unmetMoisture()).isEmpty();
  }

  @Test
  void each_colour_of_a_graphic_is_a_dye_of_its_own() {
    List<BuyLine> dyes =
        BuyList.of(PLAN).stream().filter(b -> b.product().equals("inlay-dye")).toList();
    assertThat(dyes)
        .extracting(b -> b.colour().map(Said::of).orElse("#"))
        .doesNotHaveDuplicates()
        .noneMatch(n -> n.contains("#"));
    double all = dyes.stream().mapToDouble(b -> b.kits().maybe().orElseThrow().needed()).sum();
    double volume =
        PLAN.area("reading-hall")
            .orElseThrow()
            .coat("inlay-dye")
            .orElseThrow()
            .totalVolume()
            .maybe()
            .orElseThrow();
    assertThat(all).isCloseTo(volume, within(1.0));
  }
}
