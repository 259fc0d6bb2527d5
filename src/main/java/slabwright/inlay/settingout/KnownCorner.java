package slabwright.inlay.settingout;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Vec;
import slabwright.site.OutlinePiece;

/** A corner that can be found on the site, such as one of the room's. */
public record KnownCorner(String name, Vec at) {
  /** The corners of an outline in order, named "corner 1", "corner 2"… */
  public static List<KnownCorner> of(List<OutlinePiece> outline) {
    List<KnownCorner> corners = new ArrayList<>();
    for (OutlinePiece piece : outline) {
      corners.add(new KnownCorner("corner " + (corners.size() + 1), piece.from().vec()));
    }
    return corners;
  }
}
