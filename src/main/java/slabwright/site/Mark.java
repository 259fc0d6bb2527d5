package slabwright.site;

import java.util.OptionalInt;

/**
 * Something drawn on the floor.
 *
 * @param follows index of the outline piece it was measured from; when that wall moves the mark
 *     moves with it, so that its typed offsets stay true
 */
public record Mark(String id, String name, MarkKind kind, Form form, OptionalInt follows) {
  public static Mark of(String id, String name, MarkKind kind, Form form) {
    return new Mark(id, name, kind, form, OptionalInt.empty());
  }

  public Mark withForm(Form form) {
    return new Mark(id, name, kind, form, follows);
  }
}
