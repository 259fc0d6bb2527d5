package slabwright.drawing;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * How one kind of floor looks: a pale field, a pattern over it and a thin outline. The same look
 * serves the plan and the key beside it.
 *
 * @param outline width of the outline in millimetres of paper; 0 for none
 */
public record FillStyle(
    Colour field, HatchPattern pattern, Colour colour, double pitch, double outline) {
  private static final double HATCH_WIDTH = 0.28;

  /** A field tinted with the pattern's colour. */
  public static FillStyle of(HatchPattern pattern, Colour colour) {
    return new FillStyle(Palette.tint(colour), pattern, colour, 2.2, 0.25);
  }

  /** A plain field with an outline. */
  public static FillStyle plain(Colour field, Colour outline) {
    return new FillStyle(field, HatchPattern.NONE, outline, 2.2, 0.3);
  }

  public FillStyle outlined(double width) {
    return new FillStyle(field, pattern, colour, pitch, width);
  }

  /** The inks that give the region this look. */
  public List<Ink> on(Region region) {
    return on(region.rings());
  }

  /** The inks that give what the rings enclose (even-odd) this look. */
  public List<Ink> on(List<Ring> rings) {
    List<Ink> inks = new ArrayList<>();
    if (rings.isEmpty()) {
      return inks;
    }
    inks.add(new Fill(rings, field));
    if (pattern != HatchPattern.NONE) {
      inks.add(new Hatch(rings, pattern, Pen.of(HATCH_WIDTH, colour), pitch, Vec.ZERO));
    }
    if (outline > 0) {
      inks.add(Stroke.rings(Pen.of(outline, colour), rings));
    }
    return inks;
  }
}
