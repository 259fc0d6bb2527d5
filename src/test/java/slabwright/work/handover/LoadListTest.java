package slabwright.work.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.site.Finish;
import slabwright.site.FloorArea;
import slabwright.site.Machine;
import slabwright.site.Site;
import slabwright.work.AreaWorkPlan;
import slabwright.work.Said;
import slabwright.work.WorkPlan;
import slabwright.work.WorkSamples;
import slabwright.work.book.BookSamples;
import slabwright.work.book.ShopBook;
import slabwright.work.prep.Bond;
import slabwright.work.prep.BondAdvice;
import slabwright.work.prep.PrepPlan;

/** The rows of the tram hall's load list: nothing twice, nothing forgotten. */
class LoadListTest {
  private static final String TOOLS = "work.load-list.machines-and-tools";
  private static final String SAFETY = "work.load-list.safety";
  private static final String SPARES = "work.load-list.spares";

  private static final Site SITE = WorkSamples.tramHall();
  private static final WorkPlan PLAN = WorkSamples.planSmall(SITE, BookSamples.book());

  private static List<HandoverDocument.Row> rows(WorkPlan plan, String heading) {
    return LoadList.of(plan).sections().stream()
        .filter(s -> s.heading().key().equals(heading))
        .flatMap(s -> s.rows().stream())
        .toList();
  }

  private static List<String> keys(WorkPlan plan, String heading) {
    return rows(plan, heading).stream().map(r -> r.label().key()).toList();
  }

  private static List<String> labels(WorkPlan plan, String heading) {
    return rows(plan, heading).stream().map(r -> Said.of(r.label())).toList();
  }

  /** Dye, sealer and topcoat without solvent, and nothing laid on the terrace. */
  private static Site waterborne() {
    return SITE.withAreas(
        SITE.areas().stream()
            .map(
                a ->
                    a.withFinish(
                        new Finish(
                            a.finish().exposure(),
                            a.finish().coats().stream()
                                .filter(c -> c.target() == Finish.Target.WHOLE_FLOOR)
                                .filter(c -> !c.product().equals("outdoor-sealer"))
                                .toList())))
            .toList());
  }

  @Test
  void the_plans_own_floor_grinders_go_and_the_shops_is_not_listed_beside_them() {
    List<String> grinders =
        labels(PLAN, TOOLS).stream().filter(l -> l.startsWith("floor grinder")).toList();
    List<String> onPlan =
        SITE.areas().stream()
            .flatMap(a -> a.machines().stream())
            .map(Machine::name)
            .distinct()
            .toList();
    assertThat(onPlan).hasSizeGreaterThan(1);
    assertThat(labels(PLAN, TOOLS)).containsAll(onPlan);
    assertThat(onPlan).containsAll(grinders);
    List<FloorArea> bare = SITE.areas().stream().map(a -> a.withMachines(List.of())).toList();
    WorkPlan without = WorkSamples.planSmall(SITE.withAreas(bare), BookSamples.book());
    assertThat(labels(without, TOOLS)).contains("floor grinder 29");
  }

  @Test
  void a_tool_that_the_book_has_not_is_listed_as_missing() {
    ShopBook book = WorkSamples.bookWith("tool", "fan and duct 12", "kind", "compressor");
    assertThat(keys(WorkSamples.planSmall(SITE, book), TOOLS))
        .contains("work.cost-line-builder.a-tool");
    assertThat(keys(PLAN, TOOLS)).doesNotContain("work.cost-line-builder.a-tool");
  }

  @Test
  void of_what_is_used_up_that_alone_is_listed_that_has_no_list_of_its_own() {
    List<String> all =
        ConsumableFinder.of(PLAN).stream()
            .filter(c -> c.kind() == Consumable.Kind.DUST_DISPOSAL)
            .map(c -> Said.of(c.what()))
            .toList();
    assertThat(all).isNotEmpty();
    assertThat(labels(PLAN, "work.load-list.used-up"))
        .isNotEmpty()
        .doesNotContainAnyElementsOf(all);
  }

  @Test
  void with_solvent_go_meter_extinguisher_and_gloves_that_stand_it_and_without_none_of_them() {
    List<String> solvent =
        List.of(
            "work.load-list.respirators-and-cartridges-as",
            "work.load-list.gloves-that-stand-the-solvent",
            "work.load-list.gas-meter-for-flammable-vapour",
            "work.load-list.fire-extinguisher-closed-metal",
            "work.load-list.barrier-tape-and-signs-keep");
    List<String> plain =
        List.of("work.load-list.gloves-eyes-and-ears", "work.load-list.barrier-tape-and-first-aid");
    assertThat(keys(PLAN, SAFETY))
        .containsAll(solvent)
        .contains("work.load-list.half-masks")
        .doesNotContainAnyElementsOf(plain);
    WorkPlan water = WorkSamples.planSmall(waterborne(), BookSamples.book());
    assertThat(keys(water, SAFETY))
        .containsAll(plain)
        .contains("work.load-list.half-masks")
        .doesNotContainAnyElementsOf(solvent);
  }

  @Test
  void diamonds_go_in_the_bond_of_each_floor_they_are_for() {
    AreaWorkPlan hall = PLAN.area("reading-hall").orElseThrow();
    assertThat(hall.prep().bond().bonds()).isNotEmpty().doesNotContain(Bond.EXTRA_HARD);
    WorkPlan two = PLAN.withAreas(List.of(hall, bonded(hall, Bond.EXTRA_HARD), bonded(hall)));
    List<String> bonds =
        rows(two, "work.load-list.diamonds-and-pads-each-with").stream()
            .filter(r -> Said.of(r.label()).startsWith("metal"))
            .map(r -> Said.of(r.value()))
            .distinct()
            .toList();
    assertThat(bonds).hasSize(1);
    assertThat(bonds.get(0))
        .contains(Said.of(Bond.words(hall.prep().bond().bonds()).orElseThrow()))
        .contains(Said.of(Bond.words(List.of(Bond.EXTRA_HARD)).orElseThrow()))
        .endsWith("; bond by the scratch test");
  }

  private static AreaWorkPlan bonded(AreaWorkPlan area, Bond... bonds) {
    PrepPlan p = area.prep();
    BondAdvice bond = new BondAdvice(List.of(bonds), p.bond().sentence());
    return area.withPrep(
        new PrepPlan(
            p.steps(), p.zones(), bond, p.chart(), p.changes(), p.filler(), p.levelling()));
  }

  /** The topcoat is the one coat of two parts; the filler comes in cartridges. */
  @Test
  void a_paddle_and_a_scale_go_where_something_is_mixed_in_a_pail() {
    String paddle = "work.load-list.mixing-paddle-and-scale";
    assertThat(keys(PLAN, SPARES)).contains(paddle);
    ShopBook onePart = WorkSamples.bookWith("product", "topcoat", "two-part", "no");
    assertThat(keys(WorkSamples.planSmall(SITE, onePart), SPARES)).doesNotContain(paddle);
    ShopBook pail =
        ShopBook.of(
            BookSamples.text()
                .with("product", "topcoat", "two-part", "no")
                .with("product", "filler", "mixes in its nozzle", "no")
                .with("product", "filler", "mixing time", "3 min"));
    assertThat(keys(WorkSamples.planSmall(SITE, pail), SPARES)).contains(paddle);
  }
}
