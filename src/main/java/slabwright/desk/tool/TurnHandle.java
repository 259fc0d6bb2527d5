package slabwright.desk.tool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.Bench;
import slabwright.desk.model.Moves;
import slabwright.desk.model.Pick;
import slabwright.desk.model.Thing;
import slabwright.drawing.Ink;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.site.Edit;
import slabwright.site.FloorArea;

/**
 * A knob above what is picked: dragging it turns all of it about its middle, in steps of 15° unless
 * Shift is held.
 */
final class TurnHandle {
  private static final double AWAY = 8;

  private TurnHandle() {}

  /** What the picked marks and inlays cover; empty when nothing that can turn is picked. */
  private static Optional<Bounds> box(Bench bench, Shown shown) {
    Bounds all = Bounds.EMPTY;
    for (Pick p : bench.focus().picked()) {
      if (p instanceof Pick.OfInlay i) {
        all = all.including(shown.inlayBounds(i.id()).orElse(Bounds.EMPTY));
      } else if (p instanceof Pick.OfMark) {
        all =
            all.including(
                shown.picture().flatMap(x -> x.thing(p)).map(Thing::bounds).orElse(Bounds.EMPTY));
      }
    }
    return all.isEmpty() || all.width() + all.height() < 1 ? Optional.empty() : Optional.of(all);
  }

  private static Vec knob(Bounds b, double mm) {
    return new Vec(b.middle().x(), b.maxY() + AWAY * mm);
  }

  static Optional<Drag> at(Bench bench, Shown shown, Touch t) {
    double mm = Grip.mm(t);
    return box(bench, shown)
        .filter(b -> knob(b, mm).distanceTo(t.raw()) <= 1.2 * t.reach())
        .flatMap(b -> bench.focus().area().map(a -> turning(bench, a, b.middle(), t.raw())))
        .or(() -> InlayGrips.at(bench, shown, t));
  }

  private static Drag turning(Bench bench, FloorArea area, Vec about, Vec from) {
    double start = Math.toDegrees(from.minus(about).angle());
    return new Drag() {
      @Override
      public Optional<Edit> to(Touch t) {
        double by = Math.toDegrees(t.raw().minus(about).angle()) - start;
        double degrees = t.shift() ? Math.round(by * 10) / 10.0 : Math.round(by / 15) * 15.0;
        return degrees == 0 ? Optional.empty() : Moves.turned(area, bench.focus(), about, degrees);
      }
    };
  }

  static List<Ink> over(Bench bench, Shown shown, Paper paper) {
    List<Ink> inks = new ArrayList<>();
    for (Pick p : bench.focus().picked()) {
      if (p instanceof Pick.OfInlay i) {
        List<Vec> corners = shown.inlayCorners(i.id());
        if (!corners.isEmpty()) {
          inks.add(Stroke.rings(Pen.of(0.8, Overlays.LIVE), List.of(new Ring(corners))));
        }
      }
    }
    InlayGrips.of(bench, shown).forEach(g -> inks.addAll(g.inks(paper)));
    box(bench, shown)
        .ifPresent(
            b -> {
              Vec knob = knob(b, paper.mm());
              inks.add(Overlays.guide(new Vec(b.middle().x(), b.maxY()), knob));
              inks.add(Overlays.dot(knob, 3.2, Overlays.LIVE));
              inks.add(Overlays.dot(knob, 1.6, slabwright.drawing.Palette.WHITE));
            });
    return inks;
  }
}
