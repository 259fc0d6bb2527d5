package slabwright.figures;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Text;
import slabwright.drawing.TextStyle;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.tape.AdjustedRoom;
import slabwright.tape.TapedOutline;
import slabwright.units.UnitSystem;

/** What the Measure stage lays over a taped room: ellipses, lines across, residuals, corners. */
public final class TapedRoomInks {
  /** How far words stand off what they speak of, as a share of the room's size. */
  private static final double OFF = 0.022;

  private static final TextStyle CORNER = TextStyle.bold(3.2);
  private static final TextStyle RESIDUAL = TextStyle.plain(2.5);

  private TapedRoomInks() {}

  /** The inks in the site's frame. */
  public static List<Ink> of(AdjustedRoom room, FloorArea area, UnitSystem units) {
    TapeInks tape = new TapeInks(room, TapedOutline.placing(area));
    List<Ink> inks = new ArrayList<>(tape.inks());
    Bounds b = Bounds.of(area.outline().stream().map(p -> p.from().vec()).toList());
    double off = OFF * Math.hypot(b.width(), b.height());
    for (TapeInks.TapeLabel w : tape.labels(units)) {
      Vec in = w.inwards().length() == 0 ? Vec.ZERO : w.inwards().unit();
      double away = w.corner() ? 1.6 * off : off * (1 + 1.2 * Math.abs(in.x()));
      Vec at = w.at().plus(in.times(away));
      TextStyle style = w.corner() ? CORNER : w.doubted() ? RESIDUAL.in(Palette.RED) : RESIDUAL;
      inks.add(Text.middle(at, w.words(), style));
    }
    return inks;
  }
}
