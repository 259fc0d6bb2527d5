package slabwright.desk.tool.select;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.desk.tool.OverlayInks;
import slabwright.desk.tool.OverlayScale;
import slabwright.desk.tool.Tool.Drag;
import slabwright.desk.tool.Touch;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.shape.Vec;
import slabwright.site.edit.Edit;

/**
 * A place of something picked that can be held, and what holding it does.
 *
 * @param at mm on the site
 * @param round shown as a dot: it bends a side or changes one width; a square moves a point
 */
record Grip(Vec at, boolean round, Drag drag) {
  static Grip square(Vec at, Drag drag) {
    return new Grip(at, false, drag);
  }

  static Grip dot(Vec at, Drag drag) {
    return new Grip(at, true, drag);
  }

  /** Site millimetres to one millimetre of screen paper, as the touch was made. */
  static double mm(Touch t) {
    return t.reach() / 9 * (96 / 25.4);
  }

  /** What holding it does once the pointer has moved; a click alone changes nothing. */
  Drag heldFrom(Touch start) {
    return new Drag() {
      @Override
      public Optional<Edit> to(Touch t) {
        return t.raw().distanceTo(start.raw()) < t.reach() / 3 ? Optional.empty() : drag.to(t);
      }

      @Override
      public Optional<Vec> anchor() {
        return drag.anchor();
      }
    };
  }

  /** The nearest grip that the touch reaches, held. */
  static Optional<Drag> held(List<Grip> grips, Touch t) {
    return grips.stream()
        .filter(g -> g.at().distanceTo(t.raw()) <= 1.2 * t.reach())
        .min(Comparator.comparingDouble(g -> g.at().distanceTo(t.raw())))
        .map(g -> g.heldFrom(t));
  }

  List<Ink> inks(OverlayScale paper) {
    return round
        ? List.of(
            OverlayInks.dot(at, 2.4, OverlayInks.LIVE), OverlayInks.dot(at, 1.2, Palette.WHITE))
        : OverlayInks.handle(at, paper);
  }
}
