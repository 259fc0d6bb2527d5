package slabwright.desk.model.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.Selection;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.Mark;
import slabwright.site.Move;
import slabwright.site.edit.AreaEdit;
import slabwright.site.edit.Edit;
import slabwright.site.edit.MarkEdit;
import slabwright.site.edit.OutlineEdit;
import slabwright.units.Message;

/** Lays copies of marks, doorways and inlays into a floor area, under ids of their own. */
final class PasteOp {
  /** How far a copy lies from the one before, mm. */
  static final double STEP = 305;

  private final FloorArea area;
  private final Selection focus;
  private final List<Edit> edits = new ArrayList<>();
  private final List<PlanItem> picks = new ArrayList<>();
  private final List<String> markIds;
  private final List<String> inlayIds;

  PasteOp(FloorArea area, Selection focus) {
    this.area = area;
    this.focus = focus;
    markIds = new ArrayList<>(area.marks().stream().map(Mark::id).toList());
    inlayIds = new ArrayList<>(area.inlays().stream().map(Inlay::id).toList());
  }

  Clipboard.Paste of(Clipboard.Copied copied, Vec by, Message name) {
    Move move = Move.by(by.x(), by.y());
    boolean here = area.id().equals(copied.areaId());
    marks(copied.marks(), move, here);
    doorways(copied.doorways(), here);
    inlays(copied.inlays(), move);
    return new Clipboard.Paste(new Edit.Several(name, edits), picks);
  }

  /** So many copies of marks and graphics, each as far from the one before. */
  Clipboard.Paste repeated(Clipboard.Copied copied, int times, Vec by, Message name) {
    for (int k = 1; k <= times; k++) {
      Move move = Move.by(k * by.x(), k * by.y());
      marks(copied.marks(), move, true);
      inlays(copied.inlays(), move);
    }
    return new Clipboard.Paste(new Edit.Several(name, edits), picks);
  }

  private void marks(List<Mark> from, Move by, boolean here) {
    for (Mark m : from) {
      String id = NewIds.next("m", markIds);
      markIds.add(id);
      OptionalInt follows = here ? m.follows() : OptionalInt.empty();
      Mark copy = new Mark(id, m.name(), m.kind(), m.form().map(by), follows);
      edits.add(new MarkEdit.Put(area.id(), copy));
      picks.add(new PlanItem.OfMark(id));
    }
  }

  private void inlays(List<Inlay> from, Move by) {
    for (Inlay i : from) {
      String id = NewIds.next("i", inlayIds);
      inlayIds.add(id);
      edits.add(new AreaEdit.PutInlay(area.id(), i.withId(id).withMiddle(by.spot(i.middle()))));
      picks.add(new PlanItem.OfInlay(id));
    }
  }

  private void doorways(List<Doorway> from, boolean here) {
    List<Doorway> all = new ArrayList<>(area.doorways());
    for (Doorway d : from) {
      String id = NewIds.next("d", all.stream().map(Doorway::id).toList());
      int wall = wall(d, here);
      Doorway copy = Walls.fitted(area, all, d, id, wall);
      all.add(copy);
      edits.add(new OutlineEdit.PutDoorway(area.id(), copy));
      picks.add(new PlanItem.OfDoorway(id));
    }
  }

  private int wall(Doorway d, boolean here) {
    int own = here || d.piece() < area.outline().size() ? d.piece() : 0;
    return focus
        .single()
        .filter(PlanItem.OfWall.class::isInstance)
        .map(p -> ((PlanItem.OfWall) p).index())
        .orElse(own);
  }
}
