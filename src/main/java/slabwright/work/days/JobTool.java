package slabwright.work.days;

import java.util.OptionalDouble;
import slabwright.work.step.ToolKind;

/**
 * One tool that is on the job; two of a kind are two.
 *
 * @param name no two on a job have the same
 * @param airflow m³/min: what a vacuum pulls, or what a grinder asks of its vacuum
 */
public record JobTool(String name, ToolKind kind, OptionalDouble airflow) {}
