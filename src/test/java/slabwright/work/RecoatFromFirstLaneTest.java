package slabwright.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Map;
import org.junit.jupiter.api.Test;
import slabwright.units.Message;
import slabwright.words.Words;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.StepWait;

/**
 * The longest recoat time runs from when a spot was laid, the first lane's first (common practice,
 * no source); the times are read off the example book by hand.
 */
class RecoatFromFirstLaneTest {
  private static final Map<String, Duration> UNTIL =
      Map.of(".sealer.", Duration.ofHours(48), ".topcoat.", Duration.ofHours(24));

  @Test
  void the_latest_next_coat_counts_from_the_first_stroke_of_the_one_before() {
    DayPlan days = WorkSamples.plan(WorkSamples.tramHall()).days().maybe().orElseThrow();
    int checked = 0;
    for (ScheduledStep s : days.steps()) {
      for (StepWait w : s.task().waits()) {
        ScheduledStep before = days.step(w.after()).orElseThrow();
        for (Map.Entry<String, Duration> until : UNTIL.entrySet()) {
          if (w.after().contains(until.getKey()) && w.atMost().isPresent()) {
            LocalDateTime latest = before.end().plus(w.atMost().orElseThrow());
            assertThat(latest).isEqualTo(before.start().plus(until.getValue()));
            assertThat(s.start()).isBeforeOrEqualTo(latest);
            checked++;
          }
        }
      }
    }
    assertThat(checked).isEqualTo(2);
  }

  /** It dries 10 h at 61 °F and takes over 2 h to lay: 12 h are over on its first lane by then. */
  @Test
  void a_coat_that_outlasts_its_own_window_is_refused_with_what_helps() {
    Message why =
        WorkSamples.plan(
                WorkSamples.tramHall(),
                WorkSamples.bookWith("product", "topcoat", "recoat until", "12 h"))
            .days()
            .text(d -> "");
    assertThat(Words.english().say(why)).contains("lay it in sections");
  }
}
