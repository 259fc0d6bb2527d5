package slabwright.work.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.Site;
import slabwright.site.Spot;
import slabwright.site.StencilSpec;
import slabwright.units.Length;
import slabwright.units.UnitSystem;
import slabwright.work.Said;

class PlacementApprovalTest {
  private static final Site SITE = Site.empty("Tram Hall Library", UnitSystem.METRIC);

  @ParameterizedTest
  @CsvSource({
    "0, none: its top is at the top of the plan",
    "-0.01, none: its top is at the top of the plan",
    "12.5, 12.5° counter-clockwise",
    "-90, 90.0° clockwise"
  })
  void the_turn_is_said_with_its_sense(double degrees, String words) {
    assertThat(fact("Turn", degrees)).isEqualTo(words);
  }

  @Test
  void before_the_first_release_it_is_a_draft() {
    assertThat(fact("Release", 0)).isEqualTo("draft");
  }

  @Test
  void a_site_without_a_note_stands_by_its_name() {
    assertThat(Said.of(paper(0).intro().get(0))).isEqualTo("Tram Hall Library");
  }

  private static String fact(String label, double turn) {
    return paper(turn).sections().get(0).rows().stream()
        .filter(r -> Said.of(r.label()).equals(label))
        .findFirst()
        .map(r -> Said.of(r.value()))
        .orElseThrow();
  }

  private static HandoverDocument paper(double turn) {
    FloorArea hall = FloorArea.of("hall", "Reading hall", List.of());
    return PlacementApproval.of(SITE, hall, inlay(turn));
  }

  private static Inlay inlay(double turn) {
    Spot middle = new Spot(Length.feet(29.7), Length.feet(7));
    StencilSpec spec = StencilSpec.forRoll(Length.inches(48));
    return new Inlay("heron", "Heron", "heron-ring.svg", "", middle, Length.feet(8), turn, spec);
  }
}
