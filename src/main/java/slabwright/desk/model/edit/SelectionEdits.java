package slabwright.desk.model.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.Selection;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.Move;
import slabwright.site.Spot;
import slabwright.site.edit.AreaEdit;
import slabwright.site.edit.Edit;
import slabwright.site.edit.MarkEdit;
import slabwright.site.edit.OutlineEdit;
import slabwright.units.Message;

/** Edits that move or remove whatever is picked, as one step. */
public final class SelectionEdits {
  /** Below this nothing moves, mm. */
  private static final double STILL = 1e-6;

  private SelectionEdits() {}

  /** Moves or turns all that is picked; empty when nothing of it can move. */
  public static Optional<Edit> moveSelected(FloorArea area, Selection focus, Move how) {
    List<Edit> edits = new ArrayList<>();
    Set<String> marks = focus.selectedMarks();
    if (!marks.isEmpty()) {
      edits.add(new MarkEdit.MoveAll(area.id(), marks, how));
    }
    for (PlanItem p : focus.selected()) {
      if (p instanceof PlanItem.OfInlay i) {
        area.inlay(i.id()).ifPresent(in -> edits.add(moved(area, in, how)));
      } else if (p instanceof PlanItem.OfCorner c && how.turn() == 0) {
        Spot to = how.spot(area.outline().get(c.index()).from());
        edits.add(new OutlineEdit.MoveCorner(area.id(), c.index(), to));
      } else if (p instanceof PlanItem.OfDoorway d && how.turn() == 0) {
        area.doorways().stream()
            .filter(x -> x.id().equals(d.id()))
            .forEach(x -> edits.add(slid(area, x, how.shift())));
      }
    }
    return oneStep(
        how.turn() == 0
            ? Message.of("desk.model.selection-edits.move")
            : Message.of("desk.model.selection-edits.turn"),
        edits);
  }

  private static Edit slid(FloorArea area, Doorway d, Vec shift) {
    Vec way = Walls.end(area, d.piece()).minus(Walls.start(area, d.piece())).unit();
    return new OutlineEdit.PutDoorway(area.id(), Walls.slid(area, d, shift.dot(way)));
  }

  private static Edit moved(FloorArea area, Inlay i, Move how) {
    double turn = normalAngle(i.turn() + how.turn());
    return new AreaEdit.PutInlay(area.id(), InlayChange.placed(i, how.spot(i.middle()), turn));
  }

  public static double normalAngle(double degrees) {
    double d = degrees % 360;
    return d > 180 ? d - 360 : d <= -180 ? d + 360 : d;
  }

  /** Moves each thing by its own way, as one step; empty when none of it goes anywhere. */
  public static Optional<Edit> moveEach(FloorArea area, Map<PlanItem, Vec> shifts, Message name) {
    List<Edit> edits = new ArrayList<>();
    shifts.forEach(
        (item, by) -> {
          Move how = Move.by(by.x(), by.y());
          boolean goes = by.length() > STILL;
          if (goes && item instanceof PlanItem.OfMark m) {
            edits.add(new MarkEdit.MoveAll(area.id(), Set.of(m.id()), how));
          } else if (goes && item instanceof PlanItem.OfInlay i) {
            area.inlay(i.id()).ifPresent(in -> edits.add(moved(area, in, how)));
          }
        });
    return edits.isEmpty() ? Optional.empty() : Optional.of(new Edit.Several(name, edits));
  }

  /** Takes away all that is picked; walls stay. */
  public static Optional<Edit> removeSelected(FloorArea area, Selection focus) {
    List<Edit> edits = new ArrayList<>();
    if (!focus.selectedMarks().isEmpty()) {
      edits.add(new MarkEdit.Remove(area.id(), focus.selectedMarks()));
    }
    for (PlanItem p : focus.selected()) {
      if (p instanceof PlanItem.OfInlay i) {
        edits.add(new AreaEdit.RemoveInlay(area.id(), i.id()));
      } else if (p instanceof PlanItem.OfDoorway d) {
        edits.add(new OutlineEdit.RemoveDoorway(area.id(), d.id()));
      } else if (p instanceof PlanItem.OfCorner c) {
        edits.add(new OutlineEdit.RemoveCorner(area.id(), c.index()));
      }
    }
    return oneStep(Message.of("desk.model.selection-edits.remove"), edits);
  }

  /** Turns all picked things about the middle of what they cover. */
  public static Optional<Edit> turnSelected(
      FloorArea area, Selection focus, Vec about, double degrees) {
    return moveSelected(area, focus, Move.turnAbout(about, degrees));
  }

  private static Optional<Edit> oneStep(Message name, List<Edit> edits) {
    return switch (edits.size()) {
      case 0 -> Optional.empty();
      case 1 -> Optional.of(edits.get(0));
      default -> Optional.of(new Edit.Several(name, edits));
    };
  }
}
