package slabwright.desk.model;

import slabwright.drawing.Colour;
import slabwright.drawing.Look;
import slabwright.drawing.Palette;
import slabwright.drawing.Pattern;
import slabwright.site.MarkType;

/** How each kind of mark looks on the plan: colour and pattern together, never colour alone. */
public final class MarkLooks {
  private static final Colour STANDING = Colour.hex("c3c8ca");

  private MarkLooks() {}

  public static Look of(MarkType type) {
    return switch (type) {
      case TRENCH -> Look.of(Pattern.DOTS, Palette.GREEN);
      case PATCH -> Look.of(Pattern.LEVEL, Palette.PURPLE);
      case RESIDUE -> Look.of(Pattern.CROSSES, Palette.RED);
      case ISLAND -> Look.plain(STANDING, Palette.INK).outlined(0.45);
      case BOOTH -> Look.plain(STANDING.mixed(Palette.WHITE, 0.3), Palette.INK).outlined(0.35);
      case COLUMN -> Look.plain(Palette.SOFT, Palette.INK).outlined(0.45);
      case TOP_OR_STEP -> Look.of(Pattern.UPRIGHT, Palette.TEAL);
      case SPALL -> Look.of(Pattern.DASHES, Palette.PLUM);
      case DRAIN_OR_BOX -> Look.plain(Palette.WHITE, Palette.TEAL);
      case MASKED_TRIM -> Look.of(Pattern.NET, Palette.BLUE);
      default -> Look.plain(Palette.FIELD, Palette.SOFT);
    };
  }
}
