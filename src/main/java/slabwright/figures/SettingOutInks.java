package slabwright.figures;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Symbol;
import slabwright.inlay.settingout.SnappedLines;
import slabwright.inlay.settingout.SquareCheck;
import slabwright.shape.Line;
import slabwright.shape.Ring;

/** How an inlay is set out, over a plan in the site's frame: what is measured and snapped. */
public final class SettingOutInks {
  /** Blue is what one does. */
  private static final Pen MEASURED = Pen.of(0.5, Palette.BLUE);

  private static final Pen SNAPPED = Pen.of(0.35, Palette.BLUE).dashed(6, 1.5);
  private static final Pen SQUARE = Pen.of(0.25, Palette.BLUE);
  private static final double SIGN = 4;

  private SettingOutInks() {}

  /** The ways of the tape, the right angles and the two lines. */
  public static List<Ink> of(SnappedLines lines) {
    List<Ink> inks = new ArrayList<>();
    inks.add(Stroke.lines(SNAPPED, List.of(lines.up(), lines.level())));
    inks.add(square(lines.square()));
    if (lines.aside() > 0) {
      inks.add(square(lines.crossSquare()));
    }
    List<Line> ways = new ArrayList<>(List.of(Line.of(lines.origin().at(), lines.station())));
    if (lines.aside() > 0) {
      ways.add(Line.of(lines.station(), lines.cross()));
    }
    inks.add(Stroke.lines(MEASURED, ways));
    inks.add(Symbol.of(Symbol.Kind.POINT, lines.origin().at(), SIGN, Palette.BLUE));
    inks.add(Symbol.of(Symbol.Kind.POINT, lines.cross(), SIGN, Palette.BLUE));
    return inks;
  }

  /** A right angle with the length across. */
  public static Ink square(SquareCheck s) {
    return Stroke.rings(SQUARE, List.of(new Ring(List.of(s.corner(), s.onLine(), s.onSquare()))));
  }

  /** How a measured length is drawn. */
  public static Pen measured() {
    return MEASURED;
  }

  /** How a snapped line is drawn. */
  public static Pen snapped() {
    return SNAPPED;
  }
}
