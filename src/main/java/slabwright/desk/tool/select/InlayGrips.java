package slabwright.desk.tool.select;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.edit.InlayChange;
import slabwright.desk.tool.PlanLookup;
import slabwright.desk.tool.Tool.Drag;
import slabwright.desk.tool.Touch;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.edit.AreaEdit;
import slabwright.site.edit.Edit;
import slabwright.units.Length;

/** The corners of a picked inlay's blank: dragging one makes it wider about its middle. */
final class InlayGrips {
  private static final double NARROWEST = 10;

  private InlayGrips() {}

  static Optional<Drag> at(DeskContext bench, PlanLookup shown, Touch t) {
    return Grip.held(of(bench, shown), t);
  }

  static List<Grip> of(DeskContext bench, PlanLookup shown) {
    Optional<FloorArea> area = bench.focus().area();
    return bench
        .focus()
        .single()
        .filter(PlanItem.OfInlay.class::isInstance)
        .flatMap(p -> area.flatMap(a -> a.inlay(((PlanItem.OfInlay) p).id())))
        .map(i -> grips(area.orElseThrow(), i, shown.inlayCorners(i.id())))
        .orElse(List.of());
  }

  private static List<Grip> grips(FloorArea area, Inlay inlay, List<Vec> corners) {
    List<Grip> grips = new ArrayList<>();
    for (Vec c : corners) {
      grips.add(Grip.square(c, t -> wider(area, inlay, c, t)));
    }
    return grips;
  }

  private static Optional<Edit> wider(FloorArea area, Inlay inlay, Vec corner, Touch t) {
    Vec middle = inlay.middle().vec();
    double k = middle.distanceTo(t.raw()) / Math.max(1, middle.distanceTo(corner));
    double width = Math.max(NARROWEST, Bulge.round(inlay.width().mm() * k));
    return Optional.of(new AreaEdit.PutInlay(area.id(), InlayChange.wide(inlay, Length.mm(width))));
  }
}
