package slabwright.inlay.artwork;

import slabwright.inlay.artwork.ArtworkRefusal.Reason;

/** Carries a refusal out of a parser's callbacks to the one place that turns it into a value. */
public final class RefusedArtworkException extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final Reason reason;

  public RefusedArtworkException(Reason reason, String sentence) {
    super(sentence);
    this.reason = reason;
  }

  /** Nothing that would be dyed is in the graphic. */
  public static RefusedArtworkException nothingPainted() {
    return new RefusedArtworkException(
        Reason.NOTHING_PAINTED,
        "nothing in it is painted; give its shapes a fill or a stroke and save again.");
  }

  /**
   * As the value a reader gives.
   *
   * @param name what to call the graphic
   */
  public ArtworkRefusal refusal(String name) {
    return new ArtworkRefusal(reason, name + ": " + getMessage());
  }
}
