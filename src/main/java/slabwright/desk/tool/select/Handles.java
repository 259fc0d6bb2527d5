package slabwright.desk.tool.select;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.edit.SelectionEdits;
import slabwright.desk.model.scene.FloorPicture;
import slabwright.desk.model.scene.PlanItemShape;
import slabwright.desk.tool.OverlayInks;
import slabwright.desk.tool.OverlayScale;
import slabwright.desk.tool.Tool.Drag;
import slabwright.desk.tool.Touch;
import slabwright.drawing.Ink;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Mark;
import slabwright.site.Move;
import slabwright.site.Spot;
import slabwright.site.edit.Edit;
import slabwright.site.edit.OutlineEdit;

/** What can be held of things that are picked, and what holding it does. */
final class Handles {
  private Handles() {}

  /** What is held under the touch, if there is something. */
  static Optional<Drag> at(DeskContext bench, FloorPicture p, Touch t) {
    return Grip.held(grips(bench, p, Grip.mm(t)), t);
  }

  /** Where the grips of what is picked lie. */
  static List<Vec> places(DeskContext bench, FloorPicture p, OverlayScale paper) {
    return grips(bench, p, paper.mm()).stream().map(Grip::at).toList();
  }

  /** The grips of the one thing picked. */
  private static List<Grip> grips(DeskContext bench, FloorPicture p, double mm) {
    Optional<PlanItem> one = bench.focus().single();
    if (one.isPresent() && one.get() instanceof PlanItem.OfWall w) {
      return WallGrips.wall(p, w.index(), mm);
    }
    if (one.isPresent() && one.get() instanceof PlanItem.OfDoorway d) {
      return WallGrips.doorway(p, d.id());
    }
    return singleMark(bench).map(m -> new MarkGrips(p.area(), m, mm).all()).orElse(List.of());
  }

  private static Optional<Mark> singleMark(DeskContext bench) {
    Optional<FloorArea> area = bench.focus().area();
    return bench
        .focus()
        .single()
        .filter(PlanItem.OfMark.class::isInstance)
        .flatMap(pick -> area.flatMap(a -> a.mark(((PlanItem.OfMark) pick).id())));
  }

  /** Moving what was hit, with all else that is picked. */
  static Optional<Drag> move(DeskContext bench, FloorPicture p, PlanItem hit, Touch start) {
    FloorArea area = p.area();
    if (hit instanceof PlanItem.OfCorner c) {
      return Optional.of(corner(area, c.index()));
    }
    if (hit instanceof PlanItem.OfDoorway d) {
      return Optional.of(new DoorwayDrag(p, d.id(), start.raw()));
    }
    if (hit instanceof PlanItem.OfWall w) {
      return Optional.of(new WallDrag(area, w.index(), start.raw()));
    }
    return Optional.of(
        t -> {
          Vec by = t.at().minus(start.raw());
          Vec held = t.shift() ? squared(by) : by;
          return held.length() < start.reach() / 2
              ? Optional.empty()
              : SelectionEdits.moveSelected(area, bench.focus(), Move.by(held.x(), held.y()));
        });
  }

  private static Vec squared(Vec by) {
    return Math.abs(by.x()) >= Math.abs(by.y()) ? new Vec(by.x(), 0) : new Vec(0, by.y());
  }

  private static Drag corner(FloorArea area, int index) {
    int n = area.outline().size();
    Vec before = area.outline().get((index + n - 1) % n).from().vec();
    Vec was = area.outline().get(index).from().vec();
    return new Drag() {
      @Override
      public Optional<Edit> to(Touch t) {
        return was.distanceTo(t.at()) < t.reach() / 3
            ? Optional.empty()
            : Optional.of(new OutlineEdit.MoveCorner(area.id(), index, Spot.of(t.at())));
      }

      @Override
      public Optional<Vec> anchor() {
        return Optional.of(before);
      }
    };
  }

  static List<Ink> over(DeskContext bench, FloorPicture p, OverlayScale paper) {
    List<Ink> inks = new ArrayList<>();
    for (PlanItem pick : bench.focus().selected()) {
      p.thing(pick).ifPresent(t -> inks.addAll(around(t, paper)));
      if (pick instanceof PlanItem.OfCorner c && c.index() < p.area().outline().size()) {
        inks.addAll(OverlayInks.handle(p.area().outline().get(c.index()).from().vec(), paper));
      }
      if (pick instanceof PlanItem.OfWall w && w.index() < p.shape().pieces().size()) {
        inks.add(
            Stroke.lines(
                Pen.of(1.4, OverlayInks.LIVE), List.of(p.shape().pieces().get(w.index()))));
      }
    }
    grips(bench, p, paper.mm()).forEach(g -> inks.addAll(g.inks(paper)));
    return inks;
  }

  private static List<Ink> around(PlanItemShape t, OverlayScale paper) {
    if (!t.region().isEmpty()) {
      return List.of(Stroke.outline(Pen.of(0.7, OverlayInks.LIVE), t.region()));
    }
    if (t.path().size() > 1) {
      return List.of(OverlayInks.line(t.path()));
    }
    Bounds b = t.bounds().grown(3 * paper.mm());
    return List.of(
        Stroke.rings(
            Pen.of(0.5, OverlayInks.LIVE),
            List.of(slabwright.shape.Ring.rectangle(b.minX(), b.minY(), b.maxX(), b.maxY()))));
  }
}
