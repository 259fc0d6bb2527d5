package slabwright.inlay.settingout;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Vec;
import slabwright.site.OutlinePiece;
import slabwright.units.LetterNumbering;
import slabwright.units.Message;

/**
 * A corner that can be found on the site: where two walls of the outline meet.
 *
 * @param number from 1, in the order of the outline: the wall of this number starts here
 * @param of how many walls there are
 */
public record KnownCorner(int number, int of, Vec at) {
  /** As read by the letters of its walls: "corner F/A". */
  public Message name() {
    return Message.of(
        "inlay.known-corner.name",
        LetterNumbering.of((number - 2 + of) % of),
        LetterNumbering.of(number - 1));
  }

  /** The corners of an outline in order. */
  public static List<KnownCorner> of(List<OutlinePiece> outline) {
    List<KnownCorner> corners = new ArrayList<>();
    for (OutlinePiece piece : outline) {
      corners.add(new KnownCorner(corners.size() + 1, outline.size(), piece.from().vec()));
    }
    return corners;
  }
}
