package slabwright.drawing;

import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

/**
 * A small sign of fixed size on paper.
 *
 * @param at its middle
 * @param size its width in millimetres of paper
 * @param turn degrees counter-clockwise as seen; at 0 arrows point up
 * @param words the number in a ring; empty for other kinds
 */
public record Symbol(Kind kind, Vec at, double size, double turn, Colour colour, String words)
    implements Ink {
  /** The closed set of signs. */
  public enum Kind {
    /** A number (or letter) in a ring. */
    NUMBER,
    /** The way in: an open arrow. */
    WAY_IN,
    /** Which way a graphic's up points, or north: a slim needle with a dark half. */
    NEEDLE,
    /** A cross cut on both sides of a seam. */
    WITNESS,
    /** Where tiled pages join: a cross in a ring. */
    JOIN,
    /** A point to set out. */
    POINT,
    /** A place to look at: an open ring. */
    LOOK,
    /** A box to tick. */
    TICK_BOX,
    DRAIN,
    DETECTOR,
    SPRINKLER,
    POWER,
    IGNITION,
    AIR_OUTLET,
    /** A step or change of level. */
    LEVEL_CHANGE,
    /** Broken-out concrete. */
    SPALL,
    /** A photo of this place is kept. */
    CAMERA
  }

  public static Symbol of(Kind kind, Vec at, double size, Colour colour) {
    return new Symbol(kind, at, size, 0, colour, "");
  }

  public static Symbol number(Vec at, String words, double size) {
    return new Symbol(Kind.NUMBER, at, size, 0, Palette.INK, words);
  }

  /** How wide a ring is in which the words print at this size, both in mm. */
  public static double ringFor(String words, double em) {
    return em / SymbolParts.figures(words.length());
  }

  public Symbol turned(double degrees) {
    return new Symbol(kind, at, size, degrees, colour, words);
  }

  /** The same sign at another point. */
  public Symbol movedTo(Vec there) {
    return new Symbol(kind, there, size, turn, colour, words);
  }

  @Override
  public Symbol placed(View view) {
    return new Symbol(kind, view.onPaper(at), size, turn + view.turnDegrees(), colour, words);
  }

  @Override
  public Bounds reach() {
    return Bounds.of(List.of(at));
  }

  @Override
  public List<PrimitiveInk> parts(Bounds window) {
    return SymbolParts.of(this);
  }
}
