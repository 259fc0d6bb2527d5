package slabwright.work.days;

import java.util.OptionalDouble;
import slabwright.units.Message;
import slabwright.work.step.ToolKind;

/**
 * One tool that is on the job; two of a kind are two.
 *
 * @param name no two on a job have the same
 * @param called its name for who loads and holds it
 * @param airflow m³/min: what a vacuum pulls, or what a grinder asks of its vacuum
 */
public record JobTool(String name, ToolKind kind, Message called, OptionalDouble airflow) {
  /** Its kind, for a reader whose word for it does not stand in the name. */
  public Message kindAndName() {
    return kindAndName(kind, name);
  }

  /** The same of a tool that is on the plan only by its name. */
  public static Message kindAndName(ToolKind kind, String name) {
    return Message.of("work.job-tool.kind-and-name", kind.label(), name);
  }
}
