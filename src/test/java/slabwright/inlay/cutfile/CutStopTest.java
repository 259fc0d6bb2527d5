package slabwright.inlay.cutfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import slabwright.inlay.DyedGraphic;
import slabwright.inlay.Graphics;
import slabwright.inlay.InlayContext;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkQuestion;
import slabwright.inlay.artwork.ArtworkWarning;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.inlay.stencil.Finding;
import slabwright.shape.Bounds;
import slabwright.site.StencilSpec;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.words.Words;

/** A ring of 400 mm that can be cut, and what may stand against it. */
class CutStopTest {
  private static final StencilSpec SPEC = StencilSpec.forRoll(Length.mm(1220));
  private static final Bounds PAINTED = new Bounds(0, 0, 400, 400);
  private static final InlayPlan RING = plan(SPEC);

  private static InlayPlan plan(StencilSpec spec) {
    DyedGraphic ring =
        new DyedGraphic(
            PAINTED, List.of(new DyeLayer("#000000", 0, Graphics.squareRing())), List.of());
    return InlayPlan.of(ring, spec, InlayContext.graphicAlone());
  }

  private static Artwork artwork(List<ArtworkWarning> warnings, List<ArtworkQuestion> questions) {
    return new Artwork(
        "ring",
        1,
        PAINTED,
        List.of(),
        Optional.empty(),
        warnings,
        questions,
        Map.of(),
        OptionalDouble.empty());
  }

  private static ArtworkWarning warning(ArtworkWarning.Kind kind) {
    return new ArtworkWarning(kind, Message.of("test", kind.name()), Optional.empty());
  }

  private static List<CutStop> stops(Artwork artwork, InlayPlan plan) {
    return CutStop.of("heron", artwork, plan, SPEC);
  }

  private static List<CutStop.Kind> kinds(List<CutStop> stops) {
    return stops.stream().map(CutStop::kind).toList();
  }

  @Test
  void nothing_stands_against_a_graphic_that_can_be_cut_and_asks_nothing() {
    assertThat(stops(artwork(List.of(), List.of()), RING)).isEmpty();
  }

  @Test
  void a_worth_a_look_does_not_stop_it_and_what_cannot_be_done_does_once_each() {
    InlayPlan looked = withFindings(RING, Finding.look(Message.of("a")));
    assertThat(stops(artwork(List.of(), List.of()), looked)).isEmpty();
    InlayPlan narrow = plan(StencilSpec.forRoll(Length.mm(60)));
    assertThat(narrow.panels()).isEmpty();
    List<CutStop> stops = stops(artwork(List.of(), List.of()), narrow);
    assertThat(kinds(stops)).containsExactly(CutStop.Kind.BLOCKED);
    assertThat(stops.get(0).sentence().key()).isEqualTo("inlay.cut-stop.no-cut-file");
  }

  @Test
  void without_panels_it_is_stopped_even_when_no_check_says_why() {
    InlayPlan none = withFindings(plan(StencilSpec.forRoll(Length.mm(60))));
    List<CutStop> stops = stops(artwork(List.of(), List.of()), none);
    assertThat(kinds(stops)).containsExactly(CutStop.Kind.BLOCKED);
    assertThat(Words.english().say(stops.get(0).sentence())).contains("heron");
    assertThat(stops.get(0).sentence().key()).isEqualTo("inlay.cut-stop.no-panel-fits");
  }

  private static InlayPlan withFindings(InlayPlan p, Finding... findings) {
    return new InlayPlan(
        p.stencils(),
        p.openings(),
        p.panels(),
        p.bestSeams(),
        p.masking(),
        p.toSite(),
        List.of(findings));
  }

  @Test
  void letters_drawn_otherwise_stop_it_and_other_warnings_do_not() {
    for (ArtworkWarning.Kind kind : ArtworkWarning.Kind.values()) {
      List<CutStop> stops = stops(artwork(List.of(warning(kind)), List.of()), RING);
      boolean letters =
          List.of("FONT_SUBSTITUTED", "CHARACTER_MISSING", "TEXT_SET_OTHERWISE")
              .contains(kind.name());
      assertThat(kinds(stops))
          .as(kind.name())
          .isEqualTo(letters ? List.of(CutStop.Kind.LETTERS) : List.of());
    }
  }

  @Test
  void a_question_that_nobody_answered_stops_it_before_its_letters_do() {
    ArtworkQuestion white =
        new ArtworkQuestion(
            ArtworkQuestion.Kind.WHITE, Message.of("w"), List.of("#ffffff"), Optional.empty());
    Artwork asking =
        artwork(List.of(warning(ArtworkWarning.Kind.CHARACTER_MISSING)), List.of(white));
    assertThat(kinds(stops(asking, RING)))
        .containsExactly(CutStop.Kind.QUESTION, CutStop.Kind.LETTERS);
  }

  @Test
  void a_graphic_that_changed_on_disk_is_named() {
    CutStop stop = CutStop.changedOnDisk("heron");
    assertThat(stop.kind()).isEqualTo(CutStop.Kind.CHANGED_ON_DISK);
    assertThat(Words.english().say(stop.sentence())).contains("heron");
  }
}
