package slabwright.work.rule;

import slabwright.units.Message;

/**
 * A published rule held against this job.
 *
 * @param subject in a word or two
 * @param rule the rule and its row
 * @param number the rule's own number, with its unit
 * @param finding what holds here
 * @param todo what follows
 */
public record RuleNote(
    Message subject, Verdict verdict, Message rule, Message number, Message finding, Message todo) {
  /** What is said where nothing follows: an empty sentence. */
  static final Message NOTHING = Message.of("work.rule-note.nothing");

  /** How the job stands against the rule. */
  public enum Verdict {
    FINE,
    /** Something to do or to watch. */
    LOOK,
    NOT_MET,
    /** A reading is missing. */
    UNKNOWN
  }

  /** Whether something follows for the crew. */
  public boolean hasTodo() {
    return !todo.equals(NOTHING);
  }
}
