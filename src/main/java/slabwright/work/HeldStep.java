package slabwright.work;

import java.util.List;
import slabwright.units.Message;

/**
 * A step that is not done as the plan stands.
 *
 * @param area id of its floor area
 * @param step id of the step
 * @param why in one sentence
 * @param frees what would free it, any one of these; empty where it waits for another held step
 */
public record HeldStep(String area, String step, Message why, List<Message> frees) {
  public HeldStep {
    frees = List.copyOf(frees);
  }
}
