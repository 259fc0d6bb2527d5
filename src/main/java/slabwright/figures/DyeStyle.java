package slabwright.figures;

import java.util.List;
import slabwright.drawing.Colour;
import slabwright.drawing.FillStyle;
import slabwright.drawing.HatchPattern;
import slabwright.drawing.Palette;

/** How dyed colours look on a sheet: near their own colour, each with a pattern of its own. */
public final class DyeStyle {
  private static final List<HatchPattern> PATTERNS =
      List.of(
          HatchPattern.RISING,
          HatchPattern.DOTS,
          HatchPattern.LEVEL,
          HatchPattern.NET,
          HatchPattern.FALLING,
          HatchPattern.CROSSES,
          HatchPattern.UPRIGHT,
          HatchPattern.DASHES);

  private DyeStyle() {}

  /** The look of the dye at this place of the laying order, counted from 0. */
  public static FillStyle of(String colour, int place) {
    Colour own = colour(colour);
    HatchPattern pattern = PATTERNS.get(place % PATTERNS.size());
    return new FillStyle(own.mixed(Palette.WHITE, 0.6), pattern, lines(own), 1.5, 0.25);
  }

  /** The dye's own colour without a pattern, finely outlined so that a pale one is seen too. */
  public static FillStyle flat(String colour) {
    Colour own = colour(colour);
    return new FillStyle(own, HatchPattern.NONE, lines(own), 1, 0.1);
  }

  private static Colour lines(Colour own) {
    return own.contrast(Palette.WHITE) < 3 ? own.mixed(Palette.INK, 0.55) : own;
  }

  private static Colour colour(String name) {
    return name.matches("#[0-9a-fA-F]{6}") ? Colour.hex(name.substring(1)) : Palette.BLUE;
  }
}
