package slabwright.work.handover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import slabwright.site.Site;
import slabwright.work.WorkPlan;
import slabwright.work.WorkSamples;
import slabwright.work.step.StepKind;

/** By when things are wanted on the invented library, read off its day plan step by step. */
class OrderLineTest {
  private static final Site SITE = WorkSamples.tramHall();
  private static final WorkPlan PLAN = WorkSamples.plan(SITE);

  private static LocalDate first(String area, StepKind kind) {
    return PLAN.days().maybe().orElseThrow().steps().stream()
        .filter(s -> s.task().type().isOn(area) && s.task().type().kind() == kind)
        .map(s -> s.start().toLocalDate())
        .findFirst()
        .orElseThrow();
  }

  /**
   * The terrace is filled days before the hall and has neither dye nor topcoat; the hall's products
   * are wanted for its sample panel, the terrace's sealer not before the terrace is coated.
   */
  @Test
  void each_product_is_wanted_on_the_first_day_of_a_step_that_uses_it() {
    LocalDate sample = first("reading-hall", StepKind.SAMPLE_PANEL);
    LocalDate filled = first("terrace", StepKind.FILL_GAPS);
    LocalDate sealed = first("terrace", StepKind.COAT);
    assertThat(filled).isBefore(sample);
    assertThat(first("reading-hall", StepKind.FILL_GAPS)).isBefore(sealed);
    assertThat(sample).isBefore(sealed);
    Map<String, LocalDate> wanted = new TreeMap<>();
    OrderLine.of(PLAN).forEach(o -> wanted.put(o.buy().product(), o.neededOn().orElseThrow()));
    assertThat(wanted)
        .containsOnly(
            entry("water-dye", sample),
            entry("inlay-dye", sample),
            entry("sealer", sample),
            entry("topcoat", sample),
            entry("filler", filled),
            entry("outdoor-sealer", sealed));
  }

  @Test
  void what_is_wanted_first_is_on_top_and_nothing_that_is_bought_is_left_out() {
    List<OrderLine> lines = OrderLine.of(PLAN);
    assertThat(lines.get(0).buy().product()).isEqualTo("filler");
    assertThat(lines.get(lines.size() - 1).buy().product()).isEqualTo("outdoor-sealer");
    assertThat(lines)
        .isSortedAccordingTo(
            (a, b) -> a.neededOn().orElseThrow().compareTo(b.neededOn().orElseThrow()));
    assertThat(lines)
        .extracting(OrderLine::buy)
        .containsExactlyInAnyOrderElementsOf(BuyList.of(PLAN));
  }

  @Test
  void a_job_without_dates_wants_nothing_by_a_day() {
    WorkPlan undated = WorkSamples.plan(SITE.withStart(Optional.empty()));
    assertThat(OrderLine.of(undated)).isNotEmpty().allMatch(o -> o.neededOn().isEmpty());
  }
}
