package slabwright.inlay.settingout;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Vec;
import slabwright.site.OutlinePiece;
import slabwright.units.Message;

/**
 * A corner that can be found on the site, such as one of the room's.
 *
 * @param number from 1, in the order of the outline
 */
public record KnownCorner(int number, Vec at) {
  /** As read: "corner 1". */
  public Message name() {
    return Message.of("inlay.known-corner.name", number);
  }

  /** The corners of an outline in order. */
  public static List<KnownCorner> of(List<OutlinePiece> outline) {
    List<KnownCorner> corners = new ArrayList<>();
    for (OutlinePiece piece : outline) {
      corners.add(new KnownCorner(corners.size() + 1, piece.from().vec()));
    }
    return corners;
  }
}
