package slabwright.desk.tool;

import java.util.Optional;
import slabwright.shape.Vec;
import slabwright.site.edit.Edit;

/** Something held with the pointer: what the site becomes where the pointer now is. */
public interface Drag {
  /** The edit for the touch; empty while it has not moved. */
  Optional<Edit> to(Touch t);

  /** The point that square and parallel snapping starts from. */
  default Optional<Vec> anchor() {
    return Optional.empty();
  }
}
