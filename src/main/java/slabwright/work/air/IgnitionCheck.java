package slabwright.work.air;

import java.util.ArrayList;
import java.util.List;

/**
 * What has to be seen to before the first can is opened.
 *
 * @param before to tick off before solvent work
 * @param after to put back once the air is clear
 */
public record IgnitionCheck(List<String> before, List<String> after) {
  private static final List<String> ALWAYS =
      List.of(
          "Gas valve closed by the owner or the gas company, and tagged.",
          "Pilot lights out: water heater, boiler, ovens, fireplaces, dryers.",
          "Switches, sockets, timers and thermostats left alone: no arc while vapour is about.",
          "Neighbouring kitchens, boiler rooms and workshops asked to keep flames out.",
          "No smoking, grinding, welding or hot work; no vacuum or fan that is not made for vapour.",
          "Static: cans bonded and earthed while pouring; cotton clothes.",
          "Cans closed, rags in a closed metal can, fire extinguisher at the way out.");

  public IgnitionCheck {
    before = List.copyOf(before);
    after = List.copyOf(after);
  }

  /**
   * The list for a place.
   *
   * @param sources ignition sources drawn on the plan, by name
   * @param detectors how many smoke detectors and sprinkler heads the plan shows
   */
  public static IgnitionCheck of(List<String> sources, int detectors) {
    List<String> before = new ArrayList<>();
    sources.forEach(s -> before.add("On the plan: " + s + " made safe."));
    before.addAll(ALWAYS);
    before.add(
        detectors > 0
            ? "The %d smoke detectors or heads on the plan isolated by the owner, fire watch named."
                .formatted(detectors)
            : "Smoke detectors, if any, isolated by the owner, fire watch named.");
    return new IgnitionCheck(
        before,
        List.of(
            "Air measured with a gas meter at floor level and found clear.",
            "Smoke detectors restored and tested by the owner.",
            "Gas opened and pilots lit by the owner or the gas company."));
  }
}
