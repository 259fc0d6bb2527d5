package slabwright.work.days;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import slabwright.work.step.StepKind;

/**
 * A step with its place in time.
 *
 * @param spans one, or one a day when it pauses overnight
 * @param heldBy why it does not start earlier
 * @param abradesFor the id of the coat whose missed window made this step necessary, or empty
 * @param who does it, and with which tools
 */
@RecordBuilder
public record ScheduledStep(
    WorkStep task, List<TimeSpan> spans, BindingConstraint heldBy, String abradesFor, Assigned who)
    implements ScheduledStepBuilder.With {
  public ScheduledStep {
    spans = List.copyOf(spans);
  }

  public LocalDateTime start() {
    return spans.get(0).start();
  }

  public LocalDateTime end() {
    return spans.get(spans.size() - 1).end();
  }

  public boolean isAbrading() {
    return task.type().kind() == StepKind.ABRADE;
  }

  public Duration worked() {
    return spans.stream().map(TimeSpan::length).reduce(Duration.ZERO, Duration::plus);
  }
}
