package slabwright.cli;

import java.util.List;

/** How a command ends: the one table of the program's exit codes, also in {@code docs/json.md}. */
enum ExitCode {
  /** Done; for the proof check: cut. */
  DONE(0),
  OWN_FAULT(1),
  /** Wrong use of the command line; the command-line library ends with this one by itself. */
  USAGE(2),
  /** Input refused, said why. */
  REFUSED(3),
  /** Something is asked that only a person can answer. */
  QUESTION_OPEN(4),
  /** The proof check found a fault. */
  DO_NOT_CUT(5),
  /** The proof check found no fault but could not judge everything. */
  CANNOT_TELL(6);

  /** What an end with several things to say ends with: the gravest of them. */
  private static final List<ExitCode> GRAVEST = List.of(OWN_FAULT, REFUSED, QUESTION_OPEN, DONE);

  private final int code;

  ExitCode(int code) {
    this.code = code;
  }

  /** Of two ends of parts of one command the graver one. */
  static ExitCode graver(ExitCode one, ExitCode other) {
    return GRAVEST.indexOf(one) <= GRAVEST.indexOf(other) ? one : other;
  }

  int code() {
    return code;
  }
}
