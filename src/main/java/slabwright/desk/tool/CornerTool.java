package slabwright.desk.tool;

import java.util.List;
import java.util.Optional;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.scene.FloorPicture;
import slabwright.drawing.Ink;
import slabwright.shape.SegmentGeometry;
import slabwright.shape.Vec;
import slabwright.site.Spot;
import slabwright.site.edit.OutlineEdit;
import slabwright.units.Message;

/** Adds a corner on a wall, to be dragged out at once. */
public final class CornerTool implements Tool {
  private final DeskContext bench;
  private final PlanLookup shown;
  private Optional<Vec> tip = Optional.empty();
  private Optional<Drag> drag = Optional.empty();

  public CornerTool(DeskContext bench, PlanLookup shown) {
    this.bench = bench;
    this.shown = shown;
  }

  @Override
  public Message prompt() {
    return Message.of("desk.tool.corner.click-on-a-wall");
  }

  @Override
  public void hover(Touch t) {
    tip = shown.picture().flatMap(p -> on(p, t));
  }

  private static Optional<Vec> on(FloorPicture p, Touch t) {
    for (int i = 0; i < p.shape().pieces().size(); i++) {
      if (SegmentGeometry.distance(p.shape().pieces().get(i), t.at()) <= t.reach()) {
        return Optional.of(t.at());
      }
    }
    return Optional.empty();
  }

  @Override
  public void press(Touch t) {
    shown.picture().ifPresent(p -> add(p, t));
  }

  private void add(FloorPicture p, Touch t) {
    for (int i = 0; i < p.shape().pieces().size(); i++) {
      if (SegmentGeometry.distance(p.shape().pieces().get(i), t.at()) <= t.reach()) {
        Spot at = Spot.of(t.at());
        if (bench.desk().push(new OutlineEdit.AddCorner(p.area().id(), i, at)).isOk()) {
          int corner = i + 1;
          bench.focus().select(new PlanItem.OfCorner(corner));
          drag =
              Optional.of(
                  d ->
                      d.at().distanceTo(at.vec()) < d.reach()
                          ? Optional.empty()
                          : Optional.of(
                              new OutlineEdit.MoveCorner(p.area().id(), corner, Spot.of(d.at()))));
        }
        return;
      }
    }
  }

  @Override
  public void drag(Touch t) {
    drag.flatMap(d -> d.to(t)).ifPresent(bench.desk()::preview);
  }

  @Override
  public void release(Touch t) {
    drag.flatMap(d -> d.to(t)).ifPresent(bench.desk()::push);
    bench.desk().endPreview();
    drag = Optional.empty();
  }

  @Override
  public List<Ink> over(OverlayScale paper) {
    return tip.map(v -> OverlayInks.handle(v, paper)).orElse(List.of());
  }
}
