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
    Colour lines = own.contrast(Palette.WHITE) < 3 ? own.mixed(Palette.INK, 0.55) : own;
    Pattern pattern = PATTERNS.get(place % PATTERNS.size());
    return new Look(own.mixed(Palette.WHITE, 0.6), pattern, lines, 1.5, 0.25);
  }

  private static Colour colour(String name) {
    return name.matches("#[0-9a-fA-F]{6}") ? Colour.hex(name.substring(1)) : Palette.BLUE;
  }
}
