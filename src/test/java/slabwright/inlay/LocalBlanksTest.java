package slabwright.inlay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.inlay.Graphics.box;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.inlay.cutfile.CutFile;
import slabwright.inlay.cutfile.CutFileParameters;
import slabwright.inlay.cutfile.FilmOrder;
import slabwright.inlay.cutfile.ShopBundle;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.RegistrationTick;
import slabwright.inlay.proof.ProofBatch;
import slabwright.inlay.proof.ProofLimits;
import slabwright.inlay.proof.ProofPlan;
import slabwright.inlay.proof.ProofVerdict;
import slabwright.inlay.proof.ReturnedFiles;
import slabwright.inlay.proof.ReturnedPage;
import slabwright.inlay.proof.ShadingMeaning;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.LocalBlank;
import slabwright.site.Spot;
import slabwright.site.StencilSpec;
import slabwright.units.Length;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** Vinyl no bigger than its colour. */
class LocalBlanksTest {
  private static final StencilSpec SPEC = StencilSpec.forRoll(Length.mm(1220));
  private static final Region FRAME =
      box(0, 0, 3000, 2400).minus(box(120, 120, 2880, 2280)).minus(box(1400, 0, 1500, 120));

  @TempDir Path folder;

  private static DyedGraphic graphic(Region... colours) {
    List<DyeLayer> layers = new ArrayList<>();
    Bounds painted = Bounds.EMPTY;
    for (int i = 0; i < colours.length; i++) {
      layers.add(new DyeLayer("#00000" + i, 10 * i, colours[i]));
      painted = painted.including(colours[i].bounds());
    }
    return new DyedGraphic(painted, layers, List.of());
  }

  private static InlayPlan plan(StencilSpec spec, Region... colours) {
    return InlayPlan.of(graphic(colours), spec, InlayContext.graphicAlone());
  }

  private static Region sun(double x, double y) {
    return Graphics.letterF(240).map(Affine.move(x, y));
  }

  @Test
  void a_small_sun_in_a_large_emblem_has_a_blank_of_its_own_and_the_emblem_keeps_the_whole() {
    InlayPlan plan = plan(SPEC, sun(2000, 500), FRAME);
    PanelPlan panels = plan.panels().orElseThrow();
    Stencil sun = plan.stencils().stencils().get(0);
    Stencil emblem = plan.stencils().stencils().get(1);
    assertThat(panels.isLocal(sun)).isTrue();
    assertThat(panels.isLocal(emblem)).isFalse();
    assertThat(panels.of(sun).blanks()).hasSize(1);
    assertThat(plan.blankArea(sun)).isLessThan(0.05 * plan.blankArea(emblem));
    assertThat(panels.rollLength(sun)).isLessThan(450);
    assertThat(panels.saving(sun).orElseThrow().roll()).isGreaterThan(1500);
    assertThat(plan.rollLength())
        .isCloseTo(panels.rollLength(sun) + panels.rollLength(emblem), within(1e-6));
    holds(plan);
  }

  @Test
  void islands_far_apart_are_two_blanks_and_near_ones_one() {
    InlayPlan far = plan(SPEC, sun(200, 200).union(sun(2500, 1900)), FRAME);
    InlayPlan near = plan(SPEC, sun(1000, 1000).union(sun(1300, 1000)), FRAME);
    assertThat(own(far).blanks()).hasSize(2);
    assertThat(own(near).blanks()).hasSize(1);
    holds(far);
    holds(near);
  }

  private static PanelPlan own(InlayPlan plan) {
    return plan.panels().orElseThrow().of(plan.stencils().stencils().get(0));
  }

  @Test
  void colours_that_all_need_the_whole_are_planned_as_before() {
    InlayPlan plan = plan(SPEC, FRAME, FRAME.map(Affine.move(30, 30)).minus(FRAME));
    assertThat(plan.panels().orElseThrow().local()).isEmpty();
    InlayPlan one = plan(SPEC, sun(0, 0).union(sun(2500, 1900)));
    assertThat(one.panels().orElseThrow().local()).isEmpty();
  }

  @Test
  void where_every_colour_has_its_own_blank_none_lies_on_the_whole_and_letters_begin_with_a() {
    InlayPlan plan = plan(SPEC, sun(0, 0), sun(2500, 1900));
    PanelPlan panels = plan.panels().orElseThrow();
    assertThat(panels.local()).hasSize(2);
    assertThat(panels.panels()).isEmpty();
    assertThat(panels.all()).extracting(Panel::name).containsExactly("A", "B");
    assertThat(plan.masking().orElseThrow().paper()).isEmpty();
    holds(plan);
  }

  @Test
  void a_blank_without_room_for_three_ticks_grows_until_it_has_them() {
    StencilSpec narrow = SPEC.withMargin(Length.mm(6)).withPress(Length.mm(6));
    InlayPlan plan = plan(narrow, box(2000, 500, 2300, 800), FRAME);
    Bounds blank = own(plan).blanks().get(0);
    assertThat(own(plan).blanks()).hasSize(1);
    assertThat(blank.width()).isGreaterThan(312 + 30);
    holds(plan);
  }

  @Test
  void a_blank_set_by_hand_is_taken_and_one_that_leaves_openings_out_is_told() {
    InlayPlan plan = plan(byHand(1900, 400), sun(2000, 500), FRAME);
    assertThat(own(plan).blanks())
        .singleElement()
        .satisfies(
            b -> {
              assertThat(b.width()).isCloseTo(600, within(1e-6));
              assertThat(b.minX()).isCloseTo(1900 + SPEC.margin().mm(), within(1e-6));
            });
    holds(plan);
    InlayPlan wrong = plan(byHand(100, 400), sun(2000, 500), FRAME);
    assertThat(wrong.panels().orElseThrow().local()).isEmpty();
    assertThat(wrong.findings())
        .extracting(f -> f.message().key())
        .contains("inlay.local-blanks.openings-outside");
  }

  private static StencilSpec byHand(double x, double y) {
    LocalBlank blank =
        new LocalBlank(
            "#000000", new Spot(Length.mm(x), Length.mm(y)), Length.mm(600), Length.mm(500));
    return SPEC.withChanges(SPEC.changes().withBlanks(List.of(blank)));
  }

  @Property(tries = 12)
  void openings_and_mask_are_the_blanks_and_every_panel_is_held_by_common_ticks(@ForAll long seed) {
    Random random = new Random(seed);
    Region dots = Region.empty();
    for (int i = 0; i < 1 + random.nextInt(5); i++) {
      dots = dots.union(sun(150 + random.nextInt(2400), 150 + random.nextInt(1850)));
    }
    Region bar = box(300, 1100, 300 + random.nextInt(2200) + 200, 1160).minus(dots);
    holds(plan(SPEC, dots, bar, FRAME));
  }

  /** The same of many more. */
  @Tag("long")
  @Property(tries = 200)
  void openings_and_mask_are_the_blanks_and_every_panel_is_held_by_common_ticks_of_200(
      @ForAll long seed) {
    openings_and_mask_are_the_blanks_and_every_panel_is_held_by_common_ticks(seed);
  }

  /** What holds of every plan: film, masks, panels, ticks and paper. */
  private static void holds(InlayPlan plan) {
    PanelPlan panels = plan.panels().orElseThrow();
    Region open = plan.openings();
    for (Stencil s : plan.stencils().stencils()) {
      PanelPlan own = panels.of(s);
      Region film = Region.union(own.blanks().stream().map(Region::rectangle).toList());
      assertThat(film.area()).isCloseTo(plan.blankArea(s), within(1e-3));
      assertThat(s.openings().union(s.mask()).minus(film).area()).isLessThan(1e-3);
      assertThat(film.minus(s.openings().union(s.mask())).area()).isLessThan(1e-3);
      assertThat(s.openings().intersect(s.mask()).area()).isLessThan(1e-3);
      assertThat(plan.masking().orElseThrow().skirt(s).intersect(film).area()).isLessThan(1e-3);
      List<Region> boxes = own.panels().stream().map(p -> Region.rectangle(p.box())).toList();
      assertThat(film.minus(Region.union(boxes)).area()).isLessThan(1e-3);
      for (Panel p : panels.cut(s)) {
        assertThat(own.turn().across(p.box())).isLessThanOrEqualTo(SPEC.usableMm() + 1e-3);
        assertThat(panels.ticks(p)).as(p.name()).hasSizeGreaterThanOrEqualTo(3);
      }
    }
    for (RegistrationTick t : panels.ticks()) {
      assertThat(open.distanceTo(t.at())).isGreaterThanOrEqualTo(RegistrationTick.ARM + 10 - 1e-6);
    }
    assertThat(panels.all().stream().map(Panel::name)).doesNotHaveDuplicates();
  }

  @Test
  void cut_files_and_proof_page_of_local_blanks_read_back_are_right_and_a_missing_piece_is_told()
      throws IOException {
    InlayPlan plan = plan(SPEC, sun(200, 200).union(sun(2500, 1900)), sun(1500, 300), FRAME);
    PanelPlan panels = plan.panels().orElseThrow();
    CutFileParameters job = new CutFileParameters("Emblem", 1);
    List<CutFile> files = job.files(plan.stencils(), panels);
    for (CutFile f : files) {
      Stencil s = named(plan, f);
      Panel panel =
          panels.cut(s).stream().filter(p -> f.name().endsWith("-" + p.name())).findFirst().get();
      Vec corner = new Vec(panel.box().minX(), panel.box().minY());
      Region cut = f.openings().map(Affine.move(corner.x(), corner.y()));
      assertThat(cut.minus(s.openings()).area()).isLessThan(1);
    }
    ShopBundle bundle =
        new ShopBundle(
            job,
            plan.stencils(),
            panels,
            FilmOrder.onRoll(1220),
            UnitSystem.METRIC,
            Instant.parse("2026-11-27T08:00:00Z"),
            Words.english()::say);
    Map<String, byte[]> all = bundle.files();
    List<ReturnedPage> proof = pages(all, n -> n.endsWith("_proof.pdf"));
    assertThat(verdict(plan, proof)).isEqualTo(ProofVerdict.CUT);
    List<ReturnedPage> cut = pages(all, n -> n.endsWith(".svg"));
    assertThat(verdict(plan, cut)).isEqualTo(ProofVerdict.CUT);
    List<ReturnedPage> less =
        pages(all, n -> n.endsWith(".svg") && !n.contains("stencil-3_panel-A"));
    assertThat(verdict(plan, less)).isEqualTo(ProofVerdict.DO_NOT_CUT);
  }

  private static Stencil named(InlayPlan plan, CutFile f) {
    return plan.stencils().stencils().stream()
        .filter(s -> f.name().contains("_stencil-" + s.layer() + "_"))
        .findFirst()
        .orElseThrow();
  }

  private List<ReturnedPage> pages(
      Map<String, byte[]> all, java.util.function.Predicate<String> which) throws IOException {
    List<ReturnedPage> pages = new ArrayList<>();
    for (Map.Entry<String, byte[]> e : all.entrySet()) {
      if (which.test(e.getKey())) {
        Path file = folder.resolve(e.getKey());
        Files.write(file, e.getValue());
        pages.addAll(ReturnedFiles.read(List.of(file), OptionalInt.empty()).orThrow().pages());
      }
    }
    return pages;
  }

  private static ProofVerdict verdict(InlayPlan plan, List<ReturnedPage> pages) {
    List<ProofBatch.Wanted> wanted =
        plan.stencils().stencils().stream()
            .map(s -> new ProofBatch.Wanted(s.layer(), ProofPlan.of(plan, s.layer())))
            .toList();
    List<ProofBatch.Judged> judged =
        ProofBatch.run(wanted, pages, ShadingMeaning.PULLED_OUT, ProofLimits.USUAL);
    assertThat(judged).hasSize(wanted.size());
    return ProofVerdict.gravest(judged.stream().map(j -> j.report().verdict()).toList());
  }
}
