package slabwright.desk.tool;

import java.util.List;
import java.util.Optional;
import slabwright.desk.model.Bench;
import slabwright.desk.model.FloorPicture;
import slabwright.desk.model.Pick;
import slabwright.desk.model.Segments;
import slabwright.drawing.Ink;
import slabwright.shape.Vec;
import slabwright.site.OutlineEdit;
import slabwright.site.Spot;

/** Adds a corner on a wall, to be dragged out at once. */
public final class CornerTool implements Tool {
  private final Bench bench;
  private final Shown shown;
  private Optional<Vec> tip = Optional.empty();
  private Optional<Drag> drag = Optional.empty();

  public CornerTool(Bench bench, Shown shown) {
    this.bench = bench;
    this.shown = shown;
  }

  @Override
  public String prompt() {
    return "Click on a wall to add a corner; drag it where it belongs.";
  }

  @Override
  public void hover(Touch t) {
    tip = shown.picture().flatMap(p -> on(p, t));
  }

  private static Optional<Vec> on(FloorPicture p, Touch t) {
    for (int i = 0; i < p.shape().pieces().size(); i++) {
      if (Segments.distance(p.shape().pieces().get(i), t.at()) <= t.reach()) {
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
      if (Segments.distance(p.shape().pieces().get(i), t.at()) <= t.reach()) {
        Spot at = Spot.of(t.at());
        if (bench.desk().push(new OutlineEdit.AddCorner(p.area().id(), i, at)).isDone()) {
          int corner = i + 1;
          bench.focus().pick(new Pick.OfCorner(corner));
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
  public List<Ink> over(Paper paper) {
    return tip.map(v -> Overlays.handle(v, paper)).orElse(List.of());
  }
}
