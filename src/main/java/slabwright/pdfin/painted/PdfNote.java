package slabwright.pdfin.painted;

import slabwright.shape.Vec;

/**
 * Something on a page that is not read as it is drawn.
 *
 * @param about the font, the character or the colour it is about; empty when there is none
 * @param place in the page's pixels
 */
public record PdfNote(Kind kind, String about, Vec place) {
  /** The kinds of note. */
  public enum Kind {
    /** A picture is left out. */
    PICTURE,
    /** A mesh of colours is left out. */
    MESH,
    /** A fade counts as one colour, {@code about}. */
    FADE,
    /** A pattern counts as one colour, {@code about}. */
    PATTERN,
    /** A mask is cut at half brightness. */
    MASK,
    /** Colours are mixed with those under them, which dye does otherwise. */
    BLEND,
    /** A line without width is left out. */
    HAIRLINE,
    /** The font {@code about} is not in the file; another draws its letters. */
    FONT,
    /** A character has no outline in its font, {@code about}. */
    CHARACTER,
    /** A layer that is switched off is left out. */
    HIDDEN_LAYER
  }
}
