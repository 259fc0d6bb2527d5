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

  static List<WellMixedRoom.VapourSource> sources(
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
