package slabwright.work.days;

import java.util.OptionalDouble;
import slabwright.units.Message;
import slabwright.work.step.ToolKind;

/**
 * One tool that is on the job; two of a kind are two.
 *
 * @param name no two on a job have the same
 * @param airflow m³/min: what a vacuum pulls, or what a grinder asks of its vacuum
 */
public record JobTool(String name, ToolKind kind, OptionalDouble airflow) {
  /**
   * Its name for who loads and holds it; one that is named by its kind and a number is told in the
   * reader's language, and what only the shop can say is told as the shop says it.
   */
  public Message called() {
    String word = kind.word();
    if (name.equals(word)) {
      return kind.label();
    }
    String rest = name.startsWith(word + " ") ? name.substring(word.length() + 1) : "";
    return !rest.isEmpty() && rest.chars().allMatch(Character::isDigit)
        ? Message.of("work.job-tool.numbered", kind.label(), rest)
        : Message.of("work.job-tool.named", name);
  }

  /** Its kind, for a reader whose word for it does not stand in the name. */
  public Message kindAndName() {
    return Message.of("work.job-tool.kind-and-name", kind.label(), name);
  }
}
