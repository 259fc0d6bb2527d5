package slabwright.project;

import java.util.List;
import slabwright.units.Message;
import slabwright.units.Refusal;

/** Input that is refused: ends the command with exit 3, one sentence a line on the error stream. */
public final class RefusedInput extends Exception {
  private static final long serialVersionUID = 1;

  private final transient List<Refusal> refusals;

  private RefusedInput(List<Refusal> refusals) {
    super(refusals.toString());
    this.refusals = List.copyOf(refusals);
  }

  public static RefusedInput of(Message why) {
    return of(List.of(Refusal.of(why)));
  }

  public static RefusedInput of(List<Refusal> refusals) {
    return new RefusedInput(refusals);
  }

  public List<Refusal> refusals() {
    return refusals;
  }
}
