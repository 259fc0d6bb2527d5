package slabwright.inlay.proof;

import java.util.Collection;
import slabwright.units.Message;

/** What the proof check says first. */
public enum ProofVerdict {
  /** Everything was judged and nothing is wrong. */
  CUT,
  /** Something is wrong. */
  DO_NOT_CUT,
  /** Nothing is known to be wrong, but something that matters could not be judged. */
  CANNOT_TELL;

  /** As it stands in JSON. */
  public String key() {
    return switch (this) {
      case CUT -> "cut";
      case DO_NOT_CUT -> "do-not-cut";
      case CANNOT_TELL -> "cannot-tell";
    };
  }

  /** For people. */
  public Message message() {
    return switch (this) {
      case CUT -> Message.of("inlay.proof-verdict.cut");
      case DO_NOT_CUT -> Message.of("inlay.proof-verdict.do-not-cut");
      case CANNOT_TELL -> Message.of("inlay.proof-verdict.cannot-tell");
    };
  }

  /** The gravest of several; without any, nothing could be told. */
  public static ProofVerdict gravest(Collection<ProofVerdict> all) {
    if (all.contains(DO_NOT_CUT)) {
      return DO_NOT_CUT;
    }
    return all.isEmpty() || all.contains(CANNOT_TELL) ? CANNOT_TELL : CUT;
  }
}
