package slabwright.desk.tool.mark;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import slabwright.desk.tool.LineTaker;
import slabwright.desk.tool.OverlayScale;
import slabwright.desk.tool.Touch;
import slabwright.drawing.Ink;
import slabwright.shape.Vec;
import slabwright.site.Form;
import slabwright.site.Spot;
import slabwright.units.Message;
import slabwright.units.Result;

/** Draws the form of one mark, or of a row of them, by touches and typed lines. */
interface Shaper extends LineTaker {

  /** Forms that are finished by this touch; empty while there is more to do. */
  List<Form> press(Touch t);

  default List<Form> release(Touch t) {
    return List.of();
  }

  /** Why the last touch made nothing, when that has to be said. */
  default Optional<Message> why() {
    return Optional.empty();
  }

  /** The wall that the last finished forms were set against, counted from 0. */
  default OptionalInt wall() {
    return OptionalInt.empty();
  }

  /** A typed line that was taken, or why not. */
  Typed type(String line);

  boolean stepBack();

  boolean clear();

  default List<Vec> corners() {
    return List.of();
  }

  List<Ink> over(OverlayScale paper);

  /** What a typed line led to. */
  record Typed(List<Form> forms, Optional<Message> why) {
    static Typed taken() {
      return new Typed(List.of(), Optional.empty());
    }

    static Typed done(Form form) {
      return new Typed(List.of(form), Optional.empty());
    }

    static Typed refused(Message why) {
      return new Typed(List.of(), Optional.of(why));
    }

    /** Goes on to the forms unless the line was not understood. */
    static Typed of(Result<Spot> at, Function<Spot, List<Form>> then) {
      return at instanceof Result.Refused<Spot> refused
          ? refused(refused.message())
          : new Typed(then.apply(at.orThrow()), Optional.empty());
    }

    static Typed of(Optional<Message> why) {
      return new Typed(List.of(), why);
    }
  }
}
