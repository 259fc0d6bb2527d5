package slabwright.work.air;

import java.util.List;
import slabwright.units.Message;
import slabwright.work.step.StepType;

/**
 * One laying step that sets vapour free, evenly over its time.
 *
 * @param type which step of the plan it is
 * @param from minutes from the job's start
 * @param minutes how long it is laid
 */
public record VapourStep(
    StepType type, Message name, double from, double minutes, List<Liquid> liquids) {
  public VapourStep {
    liquids = List.copyOf(liquids);
    if (!(minutes > 0)) {
      throw new IllegalArgumentException("a step takes time: " + name);
    }
  }

  /** A volume of a solvent in mm³. */
  public record Liquid(Solvent solvent, double mm3) {}

  /** One solvent's vapour in m³ a minute while the step lasts. */
  double rate(Solvent solvent, double celsius) {
    double mm3 =
        liquids.stream().filter(l -> l.solvent().equals(solvent)).mapToDouble(Liquid::mm3).sum();
    return solvent.vapour(mm3, celsius) / minutes;
  }
}
