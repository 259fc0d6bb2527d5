package slabwright.site.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.site.AdviceId;
import slabwright.site.Declined;
import slabwright.site.FloorArea;
import slabwright.site.FloorUse;
import slabwright.site.OutlinePiece;
import slabwright.site.Site;
import slabwright.site.Spot;
import slabwright.site.rules.SiteValidator;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.units.UnitSystem;

class DeclinedTest {
  private static final Declined GRIT = Declined.of(AdviceId.GRIT);

  private static Site square() {
    FloorArea area =
        FloorArea.of(
            "a",
            "A",
            List.of(
                OutlinePiece.wall(Spot.mm(0, 0)),
                OutlinePiece.wall(Spot.mm(9000, 0)),
                OutlinePiece.wall(Spot.mm(9000, 6000))));
    return Site.empty("S", UnitSystem.METRIC).withAreas(List.of(area));
  }

  private static Site done(Edit edit, Site site) {
    return edit.apply(site).orThrow();
  }

  private static List<Declined> declined(Site site) {
    return site.areas().get(0).declined();
  }

  @Test
  void who_and_when_are_added_to_what_was_declined() {
    Site once = done(new AreaEdit.DeclineAdvice("a", GRIT), square());
    Declined full = GRIT.withBy("K. R.").withOn(Optional.of(LocalDate.of(2026, 11, 20)));
    assertThat(declined(done(new AreaEdit.DeclineAdvice("a", full), once))).containsExactly(full);
  }

  @Test
  void declined_advice_is_taken_up_again() {
    Site once = done(new AreaEdit.DeclineAdvice("a", GRIT), square());
    assertThat(done(new AreaEdit.ReinstateAdvice("a", AdviceId.GRIT), once)).isEqualTo(square());
  }

  @Test
  void what_was_not_declined_cannot_be_taken_up() {
    assertThat(new AreaEdit.ReinstateAdvice("a", AdviceId.GRIT).apply(square()).isOk()).isFalse();
  }

  @Test
  void the_same_advice_twice_is_refused_by_name() {
    FloorArea twice = square().areas().get(0).withDeclined(List.of(GRIT, GRIT.withBy("K. R.")));
    assertThat(SiteValidator.validate(square().withAreas(List.of(twice))))
        .singleElement()
        .extracting(Refusal::message)
        .isEqualTo(Message.of("site.detail-rules.advice-is-declined-twice-for", "grit", "A"));
  }

  @Test
  void a_bare_floor_was_asked_nothing() {
    assertThat(square().areas().get(0).use()).isEqualTo(FloorUse.NOT_ASKED);
    assertThat(FloorUse.NOT_ASKED.withWet(Optional.of(false))).isNotEqualTo(FloorUse.NOT_ASKED);
  }
}
