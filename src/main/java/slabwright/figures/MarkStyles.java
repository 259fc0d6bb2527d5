package slabwright.figures;

import slabwright.drawing.Colour;
import slabwright.drawing.FillStyle;
import slabwright.drawing.HatchPattern;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Symbol;
import slabwright.site.MarkType;

/**
 * How each kind of mark looks; patterns as well as colour, so that black and white says the same.
 */
public final class MarkStyles {
  /** Floor that is ground by hand. */
  public static final FillStyle HAND =
      FillStyle.of(HatchPattern.RISING, Palette.AMBER).outlined(0.15);

  /** Floor that the machine grinds. */
  public static final FillStyle MACHINE = FillStyle.plain(Palette.WHITE, Palette.INK);

  /** A floor area's outer line. */
  public static final Pen WALL = Pen.of(0.9, Palette.INK);

  /** A way in: green, as escape signs are (ISO 3864, from memory); red is kept for what stops. */
  public static final Pen WAY_IN = Pen.of(0.6, Palette.GREEN).dashed(2, 1.2);

  /** Across the narrowest pass to a pocket. */
  public static final Pen GAP = Pen.of(0.7, Palette.INK);

  private MarkStyles() {}

  /**
   * Floor of the second machine and those after it, in turn; the first has {@link #MACHINE}. None
   * is hatched: hatched floor is hand work.
   */
  public static FillStyle share(int machine) {
    return machine % 2 == 1
        ? new FillStyle(Palette.tint(Palette.BLUE), HatchPattern.DASHES, Palette.BLUE, 3.4, 0.15)
        : new FillStyle(
            Palette.tint(Palette.OLIVE), HatchPattern.CROSSES, Palette.OLIVE, 3.4, 0.15);
  }

  /** The look of a mark that covers an area. */
  public static FillStyle of(MarkType type) {
    return switch (type) {
      case TRENCH -> FillStyle.of(HatchPattern.DOTS, Palette.GREEN);
      case PATCH -> FillStyle.of(HatchPattern.LEVEL, Palette.PURPLE);
      case RESIDUE -> FillStyle.of(HatchPattern.CROSSES, Palette.PLUM);
      case ISLAND, BOOTH, COLUMN -> FillStyle.plain(Palette.GREY, Palette.INK);
      case TOP_OR_STEP -> FillStyle.of(HatchPattern.UPRIGHT, Palette.TEAL);
      case DRAIN_OR_BOX -> FillStyle.of(HatchPattern.NET, Palette.INK);
      case SPALL -> FillStyle.of(HatchPattern.NET, Palette.OLIVE);
      case JOINT,
          CRACK,
          LEVEL_CHANGE,
          MASKED_TRIM,
          POWER_POINT,
          DETECTOR,
          IGNITION_SOURCE,
          AIR_OUTLET ->
          FillStyle.of(HatchPattern.DASHES, colour(type));
    };
  }

  /** The pen of a mark that is a line. */
  public static Pen pen(MarkType type) {
    Pen pen = Pen.of(0.35, colour(type));
    return switch (type) {
      case CRACK -> pen.dashed(2.4, 0.9);
      case LEVEL_CHANGE -> Pen.of(0.5, colour(type)).dashed(5, 1.2);
      case MASKED_TRIM -> Pen.of(0.8, colour(type)).dashed(1.2, 1.2);
      default -> pen;
    };
  }

  /** The sign of a mark that is a place. */
  public static Symbol.Kind sign(MarkType type) {
    return switch (type) {
      case DRAIN_OR_BOX -> Symbol.Kind.DRAIN;
      case POWER_POINT -> Symbol.Kind.POWER;
      case DETECTOR -> Symbol.Kind.DETECTOR;
      case IGNITION_SOURCE -> Symbol.Kind.IGNITION;
      case AIR_OUTLET -> Symbol.Kind.AIR_OUTLET;
      case SPALL -> Symbol.Kind.SPALL;
      case LEVEL_CHANGE -> Symbol.Kind.LEVEL_CHANGE;
      case TRENCH, PATCH, RESIDUE, ISLAND, BOOTH, COLUMN, TOP_OR_STEP, JOINT, CRACK, MASKED_TRIM ->
          Symbol.Kind.POINT;
    };
  }

  /** The colour of a mark's lines and signs. */
  public static Colour colour(MarkType type) {
    return switch (type) {
      case TRENCH -> Palette.GREEN;
      case PATCH -> Palette.PURPLE;
      case RESIDUE -> Palette.PLUM;
      case TOP_OR_STEP, MASKED_TRIM -> Palette.TEAL;
      case CRACK, SPALL -> Palette.OLIVE;
      case IGNITION_SOURCE -> Palette.RED;
      case POWER_POINT, AIR_OUTLET, DETECTOR -> Palette.BLUE;
      case ISLAND, BOOTH, COLUMN, DRAIN_OR_BOX, LEVEL_CHANGE -> Palette.INK;
      case JOINT -> Palette.SOFT;
    };
  }
}
