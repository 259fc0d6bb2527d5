package slabwright.work.rule;

/**
 * A published rule held against this job.
 *
 * @param subject in a word or two
 * @param rule the rule and its row
 * @param number the rule's own number, with its unit
 * @param finding what holds here
 * @param todo what follows; empty when nothing does
 */
public record RuleNote(
    String subject, Verdict verdict, String rule, String number, String finding, String todo) {
  /** How the job stands against the rule. */
  public enum Verdict {
    FINE,
    /** Something to do or to watch. */
    LOOK,
    NOT_MET,
    /** A reading is missing. */
    UNKNOWN
  }
}
