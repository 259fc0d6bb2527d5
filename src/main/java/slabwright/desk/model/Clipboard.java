package slabwright.desk.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.site.Edit;
import slabwright.site.FloorArea;
import slabwright.site.Mark;
import slabwright.site.MarkEdit;
import slabwright.site.Move;

/** Marks that were copied, to be pasted as often as wanted; each paste lies a little further on. */
public final class Clipboard {
  /** How far a pasted copy lies from the one before, mm. */
  private static final double STEP = 305;

  private List<Mark> marks = List.of();
  private int pasted;

  /** Remembers the picked marks; false when none is picked. */
  public boolean copy(FloorArea area, Focus focus) {
    List<Mark> found = area.marks().stream().filter(m -> focus.marks().contains(m.id())).toList();
    if (found.isEmpty()) {
      return false;
    }
    marks = found;
    pasted = 0;
    return true;
  }

  /** What pasting would do: an edit and the picks of the new marks. */
  public record Paste(Edit edit, List<Pick> picks) {}

  public Optional<Paste> paste(FloorArea area) {
    if (marks.isEmpty()) {
      return Optional.empty();
    }
    pasted++;
    return Optional.of(copies(area, marks, Move.by(STEP * pasted, -STEP * pasted), "paste"));
  }

  /** The picked marks once more, a little further on. */
  public static Optional<Paste> duplicate(FloorArea area, Focus focus) {
    List<Mark> found = area.marks().stream().filter(m -> focus.marks().contains(m.id())).toList();
    return found.isEmpty()
        ? Optional.empty()
        : Optional.of(copies(area, found, Move.by(STEP, -STEP), "duplicate"));
  }

  private static Paste copies(FloorArea area, List<Mark> from, Move by, String name) {
    List<String> taken = new ArrayList<>(area.marks().stream().map(Mark::id).toList());
    List<Edit> edits = new ArrayList<>();
    List<Pick> picks = new ArrayList<>();
    for (Mark m : from) {
      String id = NewIds.next("m", taken);
      taken.add(id);
      Mark copy = Mark.of(id, m.name(), m.kind(), m.form().map(by));
      edits.add(new MarkEdit.Put(area.id(), copy));
      picks.add(new Pick.OfMark(id));
    }
    return new Paste(new Edit.Several(name, edits), picks);
  }
}
