package slabwright.inlay.stencil;

import static org.assertj.core.api.Assertions.assertThat;
import static slabwright.inlay.Graphics.box;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slabwright.inlay.Graphics;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.units.Message;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

class FindingGroupsTest {
  private static final StencilLimits LIMITS = StencilLimits.forFilm(3);

  @Test
  void a_single_finding_keeps_its_own_words() {
    List<Finding> one = check(box(0, 0, 200, 2));
    assertThat(sentences(one)).containsExactly(Words.english().say(one.get(0).message()));
  }

  @Test
  void needles_of_two_sizes_become_one_sentence_with_both_ends_of_the_range() {
    Region blunt = Region.of(Ring.of(0, 0, 200, -30, 200, 30));
    Region sharp = Region.of(Ring.of(0, 100, 200, 85, 200, 115));
    var groups = FindingGroups.of(check(blunt.union(sharp)), UnitSystem.METRIC);
    assertThat(groups).hasSize(1);
    assertThat(Words.english().say(groups.get(0).sentence()))
        .isEqualTo(
            "2 needle points of opening, 9° to 17° sharp: narrower than 3 mm for 10 mm to 20 mm"
                + " from the tip.");
    assertThat(groups.get(0).places()).hasSize(2);
    assertThat(groups.get(0).fix()).contains(FixKind.ROUND_NEEDLES);
  }

  @Test
  void those_beyond_the_dozen_with_a_place_are_counted_and_measured() {
    List<Region> slots =
        IntStream.range(0, 15).mapToObj(i -> box(0, 30 * i, 200, 30 * i + 1 + i * 0.1)).toList();
    var groups = FindingGroups.of(check(Region.union(slots)), UnitSystem.METRIC);
    assertThat(groups).hasSize(1);
    assertThat(groups.get(0).count()).isEqualTo(15);
    assertThat(groups.get(0).places()).hasSize(12);
    assertThat(Words.english().say(groups.get(0).sentence()))
        .startsWith("15 places where an opening is 1 mm to 2.4 mm narrow;");
  }

  @Test
  void figures_written_alike_are_written_once() {
    assertThat(sentences(check(box(0, 0, 200, 2).union(box(0, 50, 200, 52)))))
        .containsExactly(
            "2 places where an opening is 2 mm narrow; the least that weeds clean is 3 mm.");
  }

  @Test
  void kinds_stay_apart_and_unmeasured_findings_are_told_by_their_words() {
    Finding said = Finding.look(Message.of("inlay.tie-plan.piece-not-tied"), Vec.ZERO);
    List<Finding> all =
        Stream.concat(Stream.of(said, said), check(box(0, 0, 200, 2)).stream()).toList();
    assertThat(sentences(all))
        .containsExactly(
            "A loose piece could not be tied. (2 places)",
            "Opening 2 mm narrow; the least that weeds clean is 3 mm.");
  }

  @Test
  void a_measured_finding_is_of_its_own_stencil_only() {
    Stencil first = Graphics.one(box(0, 0, 200, 2)).stencils().get(0);
    Stencil second =
        new Stencil(
            2,
            "other",
            first.artwork(),
            first.wanted(),
            first.openings(),
            first.mask(),
            first.loosePieces());
    assertThat(new StencilCheck(LIMITS, UnitSystem.METRIC).of(second))
        .allMatch(f -> f.isOf(second) && !f.isOf(first));
  }

  private static List<String> sentences(List<Finding> findings) {
    return FindingGroups.of(findings, UnitSystem.METRIC).stream()
        .map(g -> Words.english().say(g.sentence()))
        .toList();
  }

  private static List<Finding> check(Region artwork) {
    return new StencilCheck(LIMITS, UnitSystem.METRIC).of(Graphics.one(artwork).stencils().get(0));
  }
}
