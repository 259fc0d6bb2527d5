package slabwright.desk.tool;

import java.util.List;
import java.util.Optional;
import slabwright.drawing.Ink;
import slabwright.shape.Vec;
import slabwright.site.Form;

/** Draws the form of one mark, or of a row of them, by touches and typed lines. */
interface Shaper {
  /** What to do next. */
  String prompt();

  /** Forms that are finished by this touch; empty while there is more to do. */
  List<Form> press(Touch t);

  default void drag(Touch t) {}

  default List<Form> release(Touch t) {
    return List.of();
  }

  void hover(Touch t);

  /** What a typed line is for now. */
  Optional<String> entry();

  /** A typed line that was taken, or why not. */
  Typed type(String line);

  boolean stepBack();

  boolean clear();

  default Optional<Vec> from() {
    return Optional.empty();
  }

  default List<Vec> corners() {
    return List.of();
  }

  List<Ink> over(Paper paper);

  /** What a typed line led to. */
  record Typed(List<Form> forms, Optional<String> why) {
    static Typed taken() {
      return new Typed(List.of(), Optional.empty());
    }

    static Typed done(Form form) {
      return new Typed(List.of(form), Optional.empty());
    }

    static Typed refused(String why) {
      return new Typed(List.of(), Optional.of(why));
    }

    static Typed of(Optional<String> why) {
      return new Typed(List.of(), why);
    }
  }
}
