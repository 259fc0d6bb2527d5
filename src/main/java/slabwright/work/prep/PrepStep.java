package slabwright.work.prep;

import java.time.Duration;
import slabwright.units.Message;
import slabwright.work.book.Figure;
import slabwright.work.step.StepSubject;

/**
 * One step of preparing the floor.
 *
 * @param id within its floor area, such as {@code grit.2}
 * @param subject what is worked on, for the steps of the plan
 * @param machine mm² by machine
 * @param hand mm² by hand
 * @param machineTime of the machine and the one person at it
 * @param handTime hours of one person with a hand tool
 * @param dust kg taken off
 */
public record PrepStep(
    String id,
    Message name,
    Kind kind,
    StepSubject subject,
    double machine,
    double hand,
    Figure<Duration> machineTime,
    Figure<Duration> handTime,
    Figure<Double> dust) {
  /** The order of preparing. */
  public enum Kind {
    LEVEL,
    RESIDUE,
    METAL_PASS,
    FILL,
    FINE_PASS,
    CLEAN
  }
}
