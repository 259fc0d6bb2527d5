package slabwright.work.rule;

import java.util.List;
import java.util.Optional;
import slabwright.units.Message;

/**
 * Breathing protection by name and class, for dust and for vapour. Classes of filters: 42 CFR 84;
 * assigned factors: 29 CFR 1910.134(d)(3)(i), both from memory. Which kind a person wears is the
 * choice of a competent person, with a fit test; limits of a state's own plan may be lower.
 */
public final class BreathingRule {
  private BreathingRule() {}

  /**
   * For dust of concrete: by the row of Table 1 when it asks for a factor, else free to wear.
   *
   * @param known whether the hours that it goes by are known; else nothing says that none is asked
   */
  public static RuleNote dust(Optional<Integer> factor, boolean known) {
    return new RuleNote(
        Message.of("work.breathing-rule.dust"),
        RuleNote.Verdict.LOOK,
        Message.of("work.breathing-rule.rule"),
        Message.of("work.breathing-rule.dust-number"),
        factor
            .map(f -> Message.of("work.breathing-rule.dust-asked", f))
            .orElse(
                known
                    ? Message.of("work.breathing-rule.dust-free")
                    : Message.of("work.breathing-rule.dust-hours-unknown")),
        factor.isPresent() || !known
            ? Message.of("work.breathing-rule.dust-todo")
            : Message.of("work.breathing-rule.dust-emptying"));
  }

  /**
   * For vapour: what is named for the crew, or else supplied air.
   *
   * @param named protection for vapour, as it was written
   * @param solvents by name
   */
  public static RuleNote vapour(List<String> named, Object solvents) {
    Message finding =
        named.isEmpty()
            ? Message.of("work.breathing-rule.vapour-none-named", solvents)
            : Message.of("work.breathing-rule.vapour-named", solvents, String.join("; ", named));
    return new RuleNote(
        Message.of("work.breathing-rule.vapour"),
        named.isEmpty() ? RuleNote.Verdict.UNKNOWN : RuleNote.Verdict.LOOK,
        Message.of("work.breathing-rule.rule"),
        Message.of("work.breathing-rule.vapour-number"),
        finding,
        named.isEmpty()
            ? Message.of("work.breathing-rule.vapour-supplied-air")
            : Message.of("work.breathing-rule.vapour-cartridges"));
  }
}
