package slabwright.sheets;

import java.util.List;
import slabwright.drawing.Colour;
import slabwright.drawing.Look;
import slabwright.drawing.Palette;
import slabwright.drawing.Pattern;

/** How dyed colours look on a sheet: near their own colour, each with a pattern of its own. */
final class DyeLook {
  private static final List<Pattern> PATTERNS =
      List.of(
          Pattern.RISING,
          Pattern.DOTS,
          Pattern.LEVEL,
          Pattern.NET,
          Pattern.FALLING,
          Pattern.CROSSES,
          Pattern.UPRIGHT,
          Pattern.DASHES);

  private DyeLook() {}

  /** The look of the dye at this place of the laying order, counted from 0. */
  static Look of(String colour, int place) {
    Colour own = colour(colour);
    Pattern pattern = PATTERNS.get(place % PATTERNS.size());
    return new Look(own.mixed(Palette.WHITE, 0.6), pattern, lines(own), 1.5, 0.25);
  }

  /** The dye's own colour without a pattern, finely outlined so that a pale one is seen too. */
  static Look flat(String colour) {
    Colour own = colour(colour);
    return new Look(own, Pattern.NONE, lines(own), 1, 0.1);
  }

  private static Colour lines(Colour own) {
    return own.contrast(Palette.WHITE) < 3 ? own.mixed(Palette.INK, 0.55) : own;
  }

  private static Colour colour(String name) {
    return name.matches("#[0-9a-fA-F]{6}") ? Colour.hex(name.substring(1)) : Palette.BLUE;
  }
}
