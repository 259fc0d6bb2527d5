package slabwright.work.air;

import java.util.List;
import slabwright.units.Message;
import slabwright.work.step.StepType;

/**
 * One laying step that sets vapour free, evenly over its time; at the fastest in a part of it.
 *
 * @param type which step of the plan it is
 * @param from minutes from the job's start
 * @param minutes how long it is laid
 * @param fastest how long the fastest plausible laying takes, at most {@code minutes}
 */
public record VapourStep(
    StepType type,
    Message name,
    double from,
    double minutes,
    double fastest,
    List<Liquid> liquids) {
  public VapourStep {
    liquids = List.copyOf(liquids);
    if (!(minutes > 0 && fastest > 0 && fastest <= minutes)) {
      throw new IllegalArgumentException("a step takes time, at the fastest no more: " + name);
    }
  }

  /** A step that is never laid faster than usual. */
  public VapourStep(
      StepType type, Message name, double from, double minutes, List<Liquid> liquids) {
    this(type, name, from, minutes, minutes, liquids);
  }

  /** A volume of a solvent in mm³. */
  public record Liquid(Solvent solvent, double mm3) {}

  /** One solvent's vapour in m³ a minute while the step lasts, laid as usual. */
  double rate(Solvent solvent, double celsius) {
    return vapour(solvent, celsius) / minutes;
  }

  /** The same laid at the fastest. */
  double fastestRate(Solvent solvent, double celsius) {
    return vapour(solvent, celsius) / fastest;
  }

  private double vapour(Solvent solvent, double celsius) {
    double mm3 =
        liquids.stream().filter(l -> l.solvent().equals(solvent)).mapToDouble(Liquid::mm3).sum();
    return solvent.vapour(mm3, celsius);
  }
}
