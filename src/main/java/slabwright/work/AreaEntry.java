package slabwright.work;

import java.util.List;
import slabwright.units.Message;
import slabwright.work.days.WorkStep;

/**
 * The steps of one floor area as the entry rule lets people do them.
 *
 * @param steps in the same order, each waiting for the air too
 * @param held steps whose own crew would break the rule
 * @param cannotStart why the job can't start with this air; empty when it can
 * @param closed when who stays out, without dates
 */
record AreaEntry(
    List<WorkStep> steps, List<HeldStep> held, List<Message> cannotStart, List<ClosedAir> closed) {
  AreaEntry {
    steps = List.copyOf(steps);
    held = List.copyOf(held);
    cannotStart = List.copyOf(cannotStart);
    closed = List.copyOf(closed);
  }

  /** The same with its steps in other air. */
  AreaEntry with(List<WorkStep> others) {
    return new AreaEntry(others, held, cannotStart, closed);
  }
}
