package slabwright.desk.tool;

import java.util.List;
import java.util.Optional;
import slabwright.drawing.Ink;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.edit.Edit;
import slabwright.units.Message;

/** What the pointer and the entry line do on the slab. Knows no screen. */
public interface Tool extends LineTaker {

  default void press(Touch t) {}

  default void release(Touch t) {}

  /** Takes a typed line; says why when it can't be, else empty. */
  default Optional<Message> type(String line) {
    return Optional.empty();
  }

  /** Options that the entry line offers, the chosen one marked. */
  default List<Option> options() {
    return List.of();
  }

  /** Something that is always to be seen while the tool works, such as the closing gap. */
  default Optional<Message> standing() {
    return Optional.empty();
  }

  /** Whether a typed line can begin with a character, so that it is no tool's letter now. */
  default boolean begins(char c) {
    return entry().isPresent() && (Character.isDigit(c) || c == '.' || (c == '-' && takesPlaces()));
  }

  /** Takes back the last step of what is being drawn; false when nothing is. */
  default boolean stepBack() {
    return false;
  }

  /**
   * The step that undo takes back before it turns to the plan, such as the last wall of a walk;
   * empty when nothing worth a step is being drawn.
   */
  default Optional<Message> lastStep() {
    return Optional.empty();
  }

  /** One step back, never more than the thing in hand; false when nothing is in hand. */
  default boolean escape() {
    return stepBack();
  }

  /** Gives up what is being dragged; it stays as it was. */
  default void letGo() {}

  /** Another tool is taken up: what is being drawn is put away unless it is worth keeping. */
  default void deactivate() {}

  /** Points to snap to besides those of the plan. */
  default List<Vec> ownCorners() {
    return List.of();
  }

  /** What must stay in view while typing; empty for tools led by the pointer. */
  default Bounds keptInView() {
    return Bounds.EMPTY;
  }

  /** Whether touches are drawn to corners and edges. */
  default boolean snaps() {
    return true;
  }

  /** Where it can be held; no name is written there. Site frame. */
  default List<Vec> handles(OverlayScale paper) {
    return List.of();
  }

  /** Inks over the plan, site frame. */
  default List<Ink> over(OverlayScale paper) {
    return List.of();
  }

  /** The pointer's shape. */
  default boolean crosshair() {
    return true;
  }

  /** One choice, with the key that takes it. */
  record Option(Message words, boolean chosen, Runnable take) {}

  /** Something held with the pointer: what the site becomes where the pointer now is. */
  interface Drag {
    /** The edit for the touch; empty while it has not moved. */
    Optional<Edit> to(Touch t);

    /** The point that square and parallel snapping starts from. */
    default Optional<Vec> anchor() {
      return Optional.empty();
    }
  }
}
