package slabwright.work.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import net.jqwik.api.Example;
import slabwright.work.WorkPlan;
import slabwright.work.WorkSamples;
import slabwright.work.days.ScheduledStep;
import slabwright.work.step.StepKind;

/** By when a product is wanted on site. */
class OrderLineTest {

  /** Filling a joint counted as the first use of each coat that another floor gets. */
  @Example
  void solvent_is_not_wanted_on_site_before_the_day_that_uses_it() {
    WorkPlan plan = WorkSamples.plan(WorkSamples.tramHall());
    List<ScheduledStep> steps = plan.days().maybe().orElseThrow().steps();
    LocalDate panel =
        steps.stream()
            .filter(s -> s.task().type().kind() == StepKind.SAMPLE_PANEL)
            .map(s -> s.start().toLocalDate())
            .findFirst()
            .orElseThrow();
    LocalDate terrace =
        steps.stream()
            .filter(s -> s.task().type().isOn("terrace"))
            .filter(s -> s.task().type().kind() == StepKind.COAT)
            .map(s -> s.start().toLocalDate())
            .findFirst()
            .orElseThrow();
    assertThat(terrace).isAfter(panel);
    assertThat(neededOn(plan, "inlay-dye")).isNotEmpty().containsOnly(panel);
    assertThat(neededOn(plan, "outdoor-sealer")).containsExactly(terrace);
    LocalDate filled =
        steps.stream()
            .filter(s -> s.task().type().kind() == StepKind.FILL_GAPS)
            .map(s -> s.start().toLocalDate())
            .findFirst()
            .orElseThrow();
    assertThat(neededOn(plan, "filler")).containsExactly(filled);
  }

  private static List<LocalDate> neededOn(WorkPlan plan, String product) {
    return OrderLine.of(plan).stream()
        .filter(o -> o.buy().product().equals(product))
        .map(o -> o.neededOn().orElseThrow())
        .toList();
  }
}
