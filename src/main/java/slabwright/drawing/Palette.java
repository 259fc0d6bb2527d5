package slabwright.drawing;

import java.util.List;

/**
 * Our colours. They start from the Okabe-Ito set, which colour-blind eyes tell apart, and are
 * darkened until each reads on white paper; every meaning has a pattern as well, so that a
 * black-and-white print says the same.
 */
public final class Palette {
  /** The published set: M. Okabe and K. Ito, Color Universal Design (2002, revised 2008). */
  static final List<Colour> OKABE_ITO =
      List.of(
          Colour.hex("e69f00"),
          Colour.hex("56b4e9"),
          Colour.hex("009e73"),
          Colour.hex("f0e442"),
          Colour.hex("0072b2"),
          Colour.hex("d55e00"),
          Colour.hex("cc79a7"),
          Colour.hex("000000"));

  public static final Colour WHITE = new Colour(255, 255, 255);

  /** Words and walls. */
  public static final Colour INK = Colour.hex("1d2326");

  /** Words of less weight. */
  public static final Colour SOFT = Colour.hex("4a5559");

  /** Fine rules between rows. */
  public static final Colour RULE = Colour.hex("a9b2b5");

  /** What stands on the floor. */
  public static final Colour GREY = Colour.hex("c9cfd1");

  /** A quiet field behind a note or a table's head. */
  public static final Colour FIELD = Colour.hex("f4f2ec");

  public static final Colour AMBER = Colour.hex("8f5f00");
  public static final Colour GREEN = Colour.hex("00664e");
  public static final Colour BLUE = Colour.hex("1b5e8c");
  public static final Colour RED = Colour.hex("b03a26");
  public static final Colour PURPLE = Colour.hex("5b4a9e");
  public static final Colour PLUM = Colour.hex("8c4570");
  public static final Colour TEAL = Colour.hex("1f6f86");
  public static final Colour OLIVE = Colour.hex("6b6614");

  /** Every colour that words or pattern lines are drawn in. */
  static final List<Colour> PRINT =
      List.of(INK, SOFT, AMBER, GREEN, BLUE, RED, PURPLE, PLUM, TEAL, OLIVE);

  private Palette() {}

  /** A pale field of the colour, light enough for dark words on it. */
  public static Colour tint(Colour colour) {
    return colour.mixed(WHITE, 0.88);
  }
}
