package slabwright.inlay.stencil;

import java.util.Optional;
import slabwright.shape.Affine;
import slabwright.shape.Vec;
import slabwright.units.Message;

/**
 * Something a person should know about an inlay.
 *
 * @param message becomes one sentence where it is read
 * @param at the place on the blank, where there is one
 * @param fix what would mend it, where something does
 * @param seen what was measured, when a check of one stencil found it
 */
public record Finding(
    Weight weight,
    Message message,
    Optional<Vec> at,
    Optional<FixKind> fix,
    Optional<FindingMeasurement> seen) {
  /** How serious a finding is. */
  public enum Weight {
    /** Worth a look; the work can go on. */
    LOOK,
    /** The work cannot be done as asked. */
    CANNOT
  }

  /** A finding about one place, in the blank's frame. */
  public static Finding look(Message message, Vec at) {
    return new Finding(Weight.LOOK, message, Optional.of(at), Optional.empty(), Optional.empty());
  }

  /** A finding about the whole. */
  public static Finding look(Message message) {
    return new Finding(Weight.LOOK, message, Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** The same finding with an offer to mend it. */
  Finding offering(FixKind offered) {
    return new Finding(weight, message, at, Optional.of(offered), seen);
  }

  /** The same finding with what was measured. */
  Finding measured(FindingMeasurement measure) {
    return new Finding(weight, message, at, fix, Optional.of(measure));
  }

  /** Whether it speaks of this stencil and no other. */
  public boolean isOf(Stencil stencil) {
    return seen.filter(s -> s.layer() == stencil.layer()).isPresent();
  }

  /** The same finding with its place in another frame. */
  public Finding moved(Affine to) {
    return new Finding(weight, message, at.map(to::apply), fix, seen);
  }

  /** What stops the work. */
  public static Finding cannot(Message message) {
    return new Finding(
        Weight.CANNOT, message, Optional.empty(), Optional.empty(), Optional.empty());
  }
}
