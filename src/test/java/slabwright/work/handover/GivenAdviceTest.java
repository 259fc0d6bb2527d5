package slabwright.work.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.site.AdviceId;
import slabwright.units.Message;
import slabwright.work.Said;
import slabwright.work.book.Figure;
import slabwright.work.coat.ClientAdvice;
import slabwright.work.handover.Scope.GivenAdvice;

class GivenAdviceTest {
  private static final Message WORDS = Message.of("work.held.protection");
  private static final Cost NO_COST =
      new Cost("USD", List.of(), Figure.known(BigDecimal.ZERO), BigDecimal.ZERO);
  private static final LocalDate DAY = LocalDate.of(2026, 11, 20);

  private static GivenAdvice advice(
      AdviceId id,
      boolean declined,
      String by,
      Optional<LocalDate> on,
      Optional<Message> followed) {
    return new GivenAdvice(
        "hall/" + id.word(),
        "Hall",
        new ClientAdvice(id, WORDS, WORDS),
        declined,
        Optional.of(by).filter(b -> !b.isEmpty()),
        on,
        followed);
  }

  private static GivenAdvice declined(String by, Optional<LocalDate> on) {
    return advice(AdviceId.GRIT, true, by, on, Optional.empty());
  }

  private static GivenAdvice open(AdviceId id) {
    return advice(id, false, "", Optional.empty(), Optional.empty());
  }

  @Test
  void advice_is_open_until_it_is_declined_or_followed() {
    assertThat(open(AdviceId.GRIT).isOpen()).isTrue();
    assertThat(declined("", Optional.empty()).isOpen()).isFalse();
    GivenAdvice followed = advice(AdviceId.GRIT, false, "", Optional.empty(), Optional.of(WORDS));
    assertThat(followed.isOpen()).isFalse();
    assertThat(followed.status()).isEqualTo(WORDS);
    assertThat(open(AdviceId.GRIT).status()).isEqualTo(Message.of("work.scope.open"));
  }

  @Test
  void who_declined_and_when_are_said_as_far_as_they_are_known() {
    assertThat(Said.of(declined("", Optional.empty()).status())).isEqualTo("declined");
    assertThat(Said.of(declined("A. B.", Optional.empty()).status())).contains("A. B.");
    assertThat(Said.of(declined("", Optional.of(DAY)).status()))
        .contains("2026")
        .doesNotContain("A. B.");
    assertThat(Said.of(declined("A. B.", Optional.of(DAY)).status())).contains("A. B.", "2026");
  }

  /** A film on a slab that reads damp may come off. */
  @Test
  void of_what_is_open_only_advice_by_readings_of_moisture_is_warned_of() {
    GivenAdvice damp = open(AdviceId.BREATHING_DAMP);
    GivenAdvice humid = open(AdviceId.BREATHING_HUMID);
    GivenAdvice signed =
        advice(AdviceId.BREATHING_DAMP, true, "A. B.", Optional.of(DAY), Optional.empty());
    Scope scope =
        new Scope(List.of(), List.of(), List.of(damp, open(AdviceId.GRIT), humid, signed), NO_COST);
    assertThat(scope.unmetMoisture()).containsExactly(damp, humid);
    assertThat(scope.declined()).containsExactly(signed);
  }
}
