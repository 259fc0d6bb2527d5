package slabwright.inlay.artwork;

import java.util.Optional;
import slabwright.shape.Vec;
import slabwright.units.Message;

/**
 * Something about a graphic that a person should see before vinyl is cut.
 *
 * @param message becomes one sentence
 * @param place where, in mm from the painted bounds' top-left, y down; empty when it concerns the
 *     whole graphic
 */
public record ArtworkWarning(Kind kind, Message message, Optional<Vec> place) {
  /** The kinds of warning. */
  public enum Kind {
    /** Letters are drawn in another font than the graphic asks for; stop until accepted. */
    FONT_SUBSTITUTED,
    /** A character that no font at hand can draw; stop until accepted. */
    CHARACTER_MISSING,
    /** Letters are set otherwise than the graphic asks; stop until accepted. */
    TEXT_SET_OTHERWISE,
    BACKGROUND,
    /** It was traced from a picture, and how far its edges may be off. */
    TRACED,
    /** Something reaches over the page's edge and is cut off there. */
    CUT_AT_PAGE,
    SEE_THROUGH,
    GRADIENT,
    PATTERN,
    MASK,
    EFFECT_LEFT_OUT,
    COLOURS_MERGED,
    /** The file gives a colour a name of its own. */
    SPOT_COLOUR,
    STYLE_LEFT_OUT,
    PART_LEFT_OUT;

    /** Whether the cut file should wait until a person has accepted this. */
    public boolean changesLetters() {
      return this == FONT_SUBSTITUTED || this == CHARACTER_MISSING || this == TEXT_SET_OTHERWISE;
    }
  }
}
