package slabwright.desk.model.edit;

import java.util.List;
import java.util.Optional;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.Selection;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.Mark;
import slabwright.site.edit.Edit;
import slabwright.units.Message;

/**
 * Marks, doorways and inlays that were copied, to be pasted as often as wanted; each paste lies a
 * little further on. On another floor area they lie from its first corner as they lay from theirs.
 */
public final class Clipboard {
  private Copied copied = Copied.NOTHING;
  private int pasted;

  /**
   * What was copied.
   *
   * @param areaId the area it came from
   * @param corner that area's first corner, mm
   */
  record Copied(
      String areaId, Vec corner, List<Mark> marks, List<Doorway> doorways, List<Inlay> inlays) {
    static final Copied NOTHING = new Copied("", Vec.ZERO, List.of(), List.of(), List.of());

    static Copied of(FloorArea area, Selection focus) {
      return new Copied(
          area.id(),
          firstCorner(area),
          area.marks().stream()
              .filter(m -> focus.selected().contains(new PlanItem.OfMark(m.id())))
              .toList(),
          area.doorways().stream()
              .filter(d -> focus.selected().contains(new PlanItem.OfDoorway(d.id())))
              .toList(),
          area.inlays().stream()
              .filter(i -> focus.selected().contains(new PlanItem.OfInlay(i.id())))
              .toList());
    }

    boolean isEmpty() {
      return marks.isEmpty() && doorways.isEmpty() && inlays.isEmpty();
    }
  }

  private static Vec firstCorner(FloorArea area) {
    return area.outline().isEmpty() ? Vec.ZERO : area.outline().get(0).from().vec();
  }

  /** Remembers what is picked; false when nothing of it can be copied. */
  public boolean copy(FloorArea area, Selection focus) {
    Copied now = Copied.of(area, focus);
    if (now.isEmpty()) {
      return false;
    }
    copied = now;
    pasted = 0;
    return true;
  }

  /** What pasting would do: an edit and the picks of what is new. */
  public record Paste(Edit edit, List<PlanItem> picks) {}

  /** The copies as one step; a doorway goes into the picked wall, else on along its own. */
  public Optional<Paste> paste(FloorArea area, Selection focus) {
    if (copied.isEmpty()) {
      return Optional.empty();
    }
    pasted++;
    return Optional.of(
        new PasteOp(area, focus).of(copied, shift(area), Message.of("desk.model.clipboard.paste")));
  }

  private Vec shift(FloorArea area) {
    boolean here = area.id().equals(copied.areaId());
    Vec on = new Vec(PasteOp.STEP, -PasteOp.STEP).times(here ? pasted : pasted - 1);
    return here ? on : on.plus(firstCorner(area)).minus(copied.corner());
  }

  /** What is picked once more, a little further on. */
  public static Optional<Paste> duplicate(FloorArea area, Selection focus) {
    Copied now = Copied.of(area, focus);
    return now.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new PasteOp(area, focus)
                .of(
                    now,
                    new Vec(PasteOp.STEP, -PasteOp.STEP),
                    Message.of("desk.model.clipboard.duplicate")));
  }

  /**
   * Marks and graphics that are picked, repeated at a distance; empty when none is.
   *
   * @param times how many copies
   * @param by from one to the next, mm
   */
  public static Optional<Paste> repeat(FloorArea area, Selection focus, int times, Vec by) {
    Copied now = Copied.of(area, focus);
    return now.marks().isEmpty() && now.inlays().isEmpty()
        ? Optional.empty()
        : Optional.of(
            new PasteOp(area, focus)
                .repeated(now, times, by, Message.of("desk.model.clipboard.repeat")));
  }
}
