package slabwright.desk.tool.select;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.edit.SelectionEdits;
import slabwright.desk.model.scene.PlanItemShape;
import slabwright.desk.tool.OverlayInks;
import slabwright.desk.tool.OverlayScale;
import slabwright.desk.tool.PlanLookup;
import slabwright.desk.tool.Tool.Drag;
import slabwright.desk.tool.Touch;
import slabwright.drawing.Ink;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.edit.Edit;

/**
 * A knob beside what is picked: dragging it turns all of it about its middle, in steps of 15°
 * unless Shift is held. It stands above where that is free floor, else on another side: beyond a
 * wall it would lie on the wall's dimension, on another thing it would be taken for that one.
 */
final class TurnHandle {
  private static final double AWAY = 8;

  /** So far from its middle, mm on the screen, nothing else should lie. */
  private static final double FREE = 2;

  private TurnHandle() {}

  /** What the picked marks and inlays cover; empty when nothing that can turn is picked. */
  private static Optional<Bounds> box(DeskContext bench, PlanLookup shown) {
    Bounds all = Bounds.EMPTY;
    for (PlanItem p : bench.focus().selected()) {
      if (p instanceof PlanItem.OfInlay i) {
        all = all.including(shown.inlayBounds(i.id()).orElse(Bounds.EMPTY));
      } else if (p instanceof PlanItem.OfMark) {
        all =
            all.including(
                shown
                    .picture()
                    .flatMap(x -> x.thing(p))
                    .map(PlanItemShape::bounds)
                    .orElse(Bounds.EMPTY));
      }
    }
    return all.isEmpty() || all.width() + all.height() < 1 ? Optional.empty() : Optional.of(all);
  }

  private static Stalk stalk(Bounds b, PlanLookup shown, double mm) {
    Vec m = b.middle();
    List<Stalk> sides =
        List.of(
            Stalk.of(new Vec(m.x(), b.maxY()), new Vec(0, AWAY * mm)),
            Stalk.of(new Vec(m.x(), b.minY()), new Vec(0, -AWAY * mm)),
            Stalk.of(new Vec(b.maxX(), m.y()), new Vec(AWAY * mm, 0)),
            Stalk.of(new Vec(b.minX(), m.y()), new Vec(-AWAY * mm, 0)));
    List<Stalk> onFloor =
        sides.stream()
            .filter(s -> shown.picture().filter(p -> p.floor().contains(s.knob())).isPresent())
            .toList();
    return onFloor.stream()
        .filter(s -> isFree(s.knob(), shown, FREE * mm))
        .findFirst()
        .orElseGet(() -> onFloor.isEmpty() ? sides.get(0) : onFloor.get(0));
  }

  /** Whether nothing else lies there that a touch may be meant for. */
  private static boolean isFree(Vec knob, PlanLookup shown, double around) {
    return shown.picture().stream()
        .flatMap(p -> p.things().stream())
        .noneMatch(thing -> thing.isAt(knob, around));
  }

  /** Where it stands and where it is taken hold of. */
  private record Stalk(Vec foot, Vec knob) {
    static Stalk of(Vec foot, Vec away) {
      return new Stalk(foot, foot.plus(away));
    }
  }

  /** Where it is taken hold of. */
  static Optional<Vec> knob(DeskContext bench, PlanLookup shown, OverlayScale paper) {
    return box(bench, shown).map(b -> stalk(b, shown, paper.mm()).knob());
  }

  static Optional<Drag> at(DeskContext bench, PlanLookup shown, Touch t) {
    double mm = Grip.mm(t);
    return box(bench, shown)
        .filter(b -> stalk(b, shown, mm).knob().distanceTo(t.raw()) <= 1.2 * t.reach())
        .flatMap(b -> bench.focus().area().map(a -> turning(bench, a, b.middle(), t.raw())))
        .or(() -> InlayGrips.at(bench, shown, t));
  }

  private static Drag turning(DeskContext bench, FloorArea area, Vec about, Vec from) {
    double start = Math.toDegrees(from.minus(about).angle());
    return new Drag() {
      @Override
      public Optional<Edit> to(Touch t) {
        double by = Math.toDegrees(t.raw().minus(about).angle()) - start;
        double degrees = t.shift() ? Math.round(by * 10) / 10.0 : Math.round(by / 15) * 15.0;
        return degrees == 0
            ? Optional.empty()
            : SelectionEdits.turnSelected(area, bench.focus(), about, degrees);
      }
    };
  }

  static List<Ink> over(DeskContext bench, PlanLookup shown, OverlayScale paper) {
    List<Ink> inks = new ArrayList<>();
    for (PlanItem p : bench.focus().selected()) {
      if (p instanceof PlanItem.OfInlay i) {
        List<Vec> corners = shown.inlayCorners(i.id());
        if (!corners.isEmpty()) {
          inks.add(Stroke.rings(Pen.of(0.8, OverlayInks.LIVE), List.of(new Ring(corners))));
        }
      }
    }
    InlayGrips.of(bench, shown).forEach(g -> inks.addAll(g.inks(paper)));
    box(bench, shown)
        .ifPresent(
            b -> {
              Stalk s = stalk(b, shown, paper.mm());
              inks.add(OverlayInks.guide(s.foot(), s.knob()));
              inks.add(OverlayInks.dot(s.knob(), 3.2, OverlayInks.LIVE));
              inks.add(OverlayInks.dot(s.knob(), 1.6, slabwright.drawing.Palette.WHITE));
            });
    return inks;
  }
}
