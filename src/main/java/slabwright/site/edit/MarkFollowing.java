package slabwright.site.edit;

import java.util.List;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Mark;
import slabwright.site.Move;
import slabwright.site.OutlinePiece;

/** Marks that were measured from a wall keep their offsets to it when the wall moves. */
final class MarkFollowing {
  private MarkFollowing() {}

  static FloorArea withOutline(FloorArea area, List<OutlinePiece> next) {
    if (next.size() != area.outline().size()) {
      return area.withOutline(next);
    }
    List<Mark> marks = area.marks().stream().map(m -> follow(m, area.outline(), next)).toList();
    return area.withOutline(next).withMarks(marks);
  }

  private static Mark follow(Mark m, List<OutlinePiece> old, List<OutlinePiece> next) {
    int i = m.follows().orElse(-1);
    if (i < 0 || i >= old.size() || (same(old, next, i) && same(old, next, i + 1))) {
      return m;
    }
    Move move = Move.between(at(old, i), at(old, i + 1), at(next, i), at(next, i + 1));
    return m.withForm(m.form().map(move));
  }

  private static boolean same(List<OutlinePiece> a, List<OutlinePiece> b, int i) {
    return at(a, i).equals(at(b, i));
  }

  private static Vec at(List<OutlinePiece> outline, int i) {
    return outline.get(i % outline.size()).from().vec();
  }
}
