package slabwright.desk.tool.select;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.scene.FloorPicture;
import slabwright.desk.tool.OverlayInks;
import slabwright.desk.tool.OverlayScale;
import slabwright.desk.tool.PlanLookup;
import slabwright.desk.tool.Tool;
import slabwright.desk.tool.Touch;
import slabwright.drawing.Ink;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.site.edit.Edit;
import slabwright.units.Message;

/** Picks things, several with Shift or a box, and moves what is picked. */
public final class SelectTool implements Tool {
  private final DeskContext bench;
  private final PlanLookup shown;
  private Optional<Drag> drag = Optional.empty();
  private Optional<Vec> boxFrom = Optional.empty();
  private Optional<FloorHand> floor = Optional.empty();
  private Optional<PlanItem> oneOfSeveral = Optional.empty();
  private Vec boxTo = Vec.ZERO;

  public SelectTool(DeskContext bench, PlanLookup shown) {
    this.bench = bench;
    this.shown = shown;
  }

  @Override
  public Message prompt() {
    if (FloorHand.doorway(bench).isPresent()) {
      return Message.of("desk.tool.select.door-leads");
    }
    return bench.focus().selected().isEmpty()
        ? Message.of("desk.tool.select.click-something")
        : Message.of("desk.tool.select.drag-or-arrows");
  }

  @Override
  public Optional<Message> standing() {
    return SeamNudge.standing(bench, shown);
  }

  @Override
  public boolean snaps() {
    return drag.isPresent() || floor.isPresent();
  }

  @Override
  public boolean crosshair() {
    return false;
  }

  @Override
  public void press(Touch t) {
    Optional<FloorPicture> picture = shown.picture();
    if (picture.isEmpty()) {
      return;
    }
    drag =
        TurnHandle.at(bench, shown, t)
            .or(() -> Handles.at(bench, picture.get(), t))
            .or(() -> seam(t));
    if (drag.isPresent()) {
      return;
    }
    Optional<PlanItem> hit = picture.get().at(t.raw(), t.reach()).or(() -> shown.inlayAt(t.raw()));
    if (hit.isEmpty() && isBeside(picture.get(), t)) {
      return;
    }
    if (hit.isEmpty()) {
      boxFrom = Optional.of(t.raw());
      boxTo = t.raw();
      if (!t.shift()) {
        bench.focus().select();
      }
      return;
    }
    choose(hit.get(), t);
    drag = Handles.move(bench, picture.get(), hit.get(), t);
  }

  /** Whether the touch is meant for a floor area beside this one. */
  private boolean isBeside(FloorPicture picture, Touch t) {
    if (picture.floor().contains(t.raw())) {
      return false;
    }
    if (FloorHand.led(bench, shown.others(), t)) {
      return true;
    }
    floor = FloorHand.at(bench, shown.others(), t);
    return floor.isPresent();
  }

  /** A touched seam is picked too, so that the arrow keys move it. */
  private Optional<Drag> seam(Touch t) {
    Optional<SeamDrag> held = SeamDrag.at(bench, shown, t);
    held.ifPresent(s -> bench.focus().select(new PlanItem.OfSeam(s.inlay().id(), s.seam())));
    return held.map(s -> s);
  }

  private void choose(PlanItem hit, Touch t) {
    Set<PlanItem> picked = bench.focus().selected();
    if (t.shift() || t.more()) {
      bench.focus().toggle(hit);
    } else if (!picked.contains(hit)) {
      bench.focus().select(hit);
    } else if (picked.size() > 1) {
      oneOfSeveral = Optional.of(hit);
    }
  }

  @Override
  public void drag(Touch t) {
    drag.ifPresent(d -> d.to(t).ifPresent(bench.desk()::preview));
    floor.ifPresent(f -> f.drag(t));
    boxTo = t.raw();
  }

  @Override
  public void release(Touch t) {
    if (floor.isPresent()) {
      FloorHand held = floor.get();
      floor = Optional.empty();
      held.release(t);
      return;
    }
    Optional<Edit> moved = drag.flatMap(d -> d.to(t));
    moved.ifPresent(bench.desk()::push);
    bench.desk().endPreview();
    drag = Optional.empty();
    oneOfSeveral.filter(p -> moved.isEmpty()).ifPresent(bench.focus()::select);
    oneOfSeveral = Optional.empty();
    boxFrom.ifPresent(
        from -> {
          if (from.distanceTo(t.raw()) > t.reach()) {
            shown.picture().ifPresent(p -> bench.focus().select(p.within(box(from))));
          }
        });
    boxFrom = Optional.empty();
  }

  @Override
  public boolean escape() {
    if (drag.isPresent() || boxFrom.isPresent() || floor.isPresent()) {
      letGo();
      return true;
    }
    boolean had = !bench.focus().selected().isEmpty();
    if (had) {
      bench.focus().select();
    }
    return had;
  }

  @Override
  public void letGo() {
    drag = Optional.empty();
    boxFrom = Optional.empty();
    floor = Optional.empty();
    bench.desk().endPreview();
  }

  @Override
  public void deactivate() {
    letGo();
    if (!bench.focus().selected().isEmpty()) {
      bench.focus().select();
    }
  }

  private Bounds box(Vec from) {
    return Bounds.of(List.of(from, boxTo));
  }

  @Override
  public Optional<Vec> from() {
    return drag.flatMap(Drag::anchor);
  }

  @Override
  public List<Vec> handles(OverlayScale paper) {
    List<Vec> all = new ArrayList<>();
    shown.picture().ifPresent(p -> all.addAll(Handles.places(bench, p, paper)));
    TurnHandle.knob(bench, shown, paper).ifPresent(all::add);
    return all;
  }

  @Override
  public List<Ink> over(OverlayScale paper) {
    List<Ink> inks = new ArrayList<>();
    shown.picture().ifPresent(p -> inks.addAll(Handles.over(bench, p, paper)));
    inks.addAll(TurnHandle.over(bench, shown, paper));
    SeamNudge.grip(bench, shown)
        .ifPresent(
            g ->
                inks.add(
                    Stroke.lines(
                        Pen.of(1.1, OverlayInks.LIVE), List.of(g.line(SeamNudge.index(bench))))));
    boxFrom.ifPresent(
        f -> {
          Bounds b = box(f);
          Ring ring = Ring.rectangle(b.minX(), b.minY(), b.maxX(), b.maxY());
          inks.add(Stroke.rings(Pen.of(0.3, OverlayInks.LIVE).dashed(1.2, 0.8), List.of(ring)));
        });
    return inks;
  }
}
