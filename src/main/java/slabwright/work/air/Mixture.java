package slabwright.work.air;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Sources of several solvents as one: weighed by one over a limit they add up to the share of that
 * limit (Le Chatelier's rule for explosive limits, the additive rule for exposure limits).
 */
final class Mixture {
  private Mixture() {}

  static List<Solvent> solvents(List<VapourStep> steps) {
    return steps.stream()
        .flatMap(s -> s.liquids().stream())
        .map(VapourStep.Liquid::solvent)
        .distinct()
        .toList();
  }

  /** Each step as fast as is plausible and at the worst moment of its time. */
  static List<WellMixedRoom.VapourSource> fastest(
      List<VapourStep> steps,
      WellMixedRoom room,
      double celsius,
      ToDoubleFunction<Solvent> weight) {
    return steps.stream()
        .flatMap(
            step ->
                room
                    .atWorst(
                        step.from(),
                        step.from() + step.minutes(),
                        step.fastest(),
                        solvents(List.of(step)).stream()
                            .mapToDouble(
                                s -> step.fastestRate(s, celsius) * weight.applyAsDouble(s))
                            .sum())
                    .stream())
        .toList();
  }

  /** Each step as usual, evenly over its time. */
  static List<WellMixedRoom.VapourSource> usual(
      List<VapourStep> steps, double celsius, ToDoubleFunction<Solvent> weight) {
    return steps.stream()
        .map(
            step ->
                new WellMixedRoom.VapourSource(
                    step.from(),
                    step.from() + step.minutes(),
                    solvents(List.of(step)).stream()
                        .mapToDouble(s -> step.rate(s, celsius) * weight.applyAsDouble(s))
                        .sum()))
        .toList();
  }
}
