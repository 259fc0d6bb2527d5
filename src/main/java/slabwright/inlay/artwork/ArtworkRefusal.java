package slabwright.inlay.artwork;

import slabwright.units.Message;

/**
 * Why a graphic can't be used.
 *
 * @param reason the kind of refusal
 * @param message becomes one sentence that says what, where and what to do
 */
public record ArtworkRefusal(Reason reason, Message message)
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
