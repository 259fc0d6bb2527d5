package slabwright.inlay.stencil;

import java.util.Optional;
import slabwright.shape.Affine;
import slabwright.shape.Vec;

/**
 * Something a person should know about an inlay, with the place on the blank where there is one,
 * and the fix that would mend it where one does.
 */
public record Finding(Weight weight, String text, Optional<Vec> at, Optional<Fix> fix) {
  /** How serious a finding is. */
  public enum Weight {
    /** Worth a look; the work can go on. */
    LOOK,
    /** The work cannot be done as asked. */
    CANNOT
  }

  /** A finding about one place, in the blank's frame. */
  public static Finding look(String text, Vec at) {
    return new Finding(Weight.LOOK, text, Optional.of(at), Optional.empty());
  }

  /** A finding about the whole. */
  public static Finding look(String text) {
    return new Finding(Weight.LOOK, text, Optional.empty(), Optional.empty());
  }

  /** The same finding with an offer to mend it. */
  Finding offering(Fix offered) {
    return new Finding(weight, text, at, Optional.of(offered));
  }

  /** The same finding with its place in another frame. */
  public Finding moved(Affine to) {
    return new Finding(weight, text, at.map(to::apply), fix);
  }

  /** What stops the work. */
  public static Finding cannot(String text) {
    return new Finding(Weight.CANNOT, text, Optional.empty(), Optional.empty());
  }
}
