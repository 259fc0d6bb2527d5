package slabwright.inlay.artwork;

import slabwright.inlay.artwork.ArtworkRefusal.Reason;
import slabwright.units.Message;

/** Carries a refusal out of a parser's callbacks to the one place that turns it into a value. */
public final class RefusedArtworkException extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final Reason reason;

  // not kept when an exception is written out, which nobody does
  private final transient Message why;

  public RefusedArtworkException(Reason reason, Message why) {
    super(why.toString());
    this.why = why;
    this.reason = reason;
  }

  /** Nothing that would be dyed is in the graphic. */
  public static RefusedArtworkException nothingPainted() {
    return new RefusedArtworkException(
        Reason.NOTHING_PAINTED, Message.of("inlay.artwork.nothing-painted"));
  }

  /** The reason, without a name of the graphic. */
  Message why() {
    return why;
  }

  /**
   * As the value a reader gives.
   *
   * @param name what to call the graphic
   */
  public ArtworkRefusal refusal(String name) {
    return new ArtworkRefusal(reason, Message.of("inlay.artwork.refused", name, why));
  }
}
