package slabwright.floor;

import java.util.ArrayList;
import java.util.List;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.Move;
import slabwright.site.Spot;
import slabwright.site.TrenchLevel;
import slabwright.units.Length;

/** Marks for invented halls, of all forms and kinds in turn, and what moves one of them. */
public final class HallMarks {
  private HallMarks() {}

  /** The mark of a number, its form and kind by that number. */
  public static Mark of(int i, Spot at, Length size) {
    return Mark.of("m" + i, "", kind(i), form(i, at, size));
  }

  private static Form form(int i, Spot at, Length size) {
    return switch (i % 3) {
      case 0 -> new Form.Circle(at, size);
      case 1 -> new Form.Rectangle(at, size, Length.mm(700), Length.mm(0), 17 * i);
      default -> new Form.RoundEnded(at, Length.mm(1_900), size, 31 * i);
    };
  }

  private static MarkKind kind(int i) {
    return switch (i % 7) {
      case 0 -> new MarkKind.Patch();
      case 1 -> new MarkKind.Island();
      case 2 -> new MarkKind.Trench(TrenchLevel.FLUSH, false);
      case 3 -> new MarkKind.Booth();
      case 4 -> new MarkKind.DrainOrBox();
      default -> new MarkKind.Column();
    };
  }

  /** The floor with the mark at one place of its list moved, mm. */
  public static FloorArea moved(FloorArea area, int mark, double x, double y) {
    List<Mark> marks = new ArrayList<>(area.marks());
    Mark m = marks.get(mark);
    marks.set(mark, m.withForm(m.form().map(Move.by(x, y))));
    return area.withMarks(marks);
  }
}
