package slabwright.work.step;

import java.util.Optional;

/**
 * What is worked on and how.
 *
 * @param grit name of the grinding pass in the shop book, for a pass
 */
public record StepSubject(StepKind kind, StepPlace place, Optional<String> grit) {
  /** Work that is no grinding pass. */
  public static StepSubject of(StepKind kind, StepPlace place) {
    return new StepSubject(kind, place, Optional.empty());
  }

  /** A grinding pass over the whole floor. */
  public static StepSubject pass(StepKind kind, String grit) {
    return new StepSubject(kind, StepPlace.WHOLE_FLOOR, Optional.of(grit));
  }
}
