package slabwright.inlay.artwork;

/**
 * Why a graphic can't be used.
 *
 * @param reason the kind of refusal
 * @param sentence one sentence that says what, where and what to do
 */
public record ArtworkRefusal(Reason reason, String sentence)
    implements ArtworkResult, OutlinesResult {
  /** The kinds of refusal. */
  public enum Reason {
    NOT_XML,
    NOT_SVG,
    ENTITY_DECLARED,
    TOO_DEEP,
    TOO_LARGE,
    USE_LOOP,
    USE_TOO_MANY,
    EXTERNAL_RESOURCE,
    PICTURE,
    NOTHING_PAINTED,
    ABSURD_SIZE,
    NOT_UNDERSTOOD
  }
}
