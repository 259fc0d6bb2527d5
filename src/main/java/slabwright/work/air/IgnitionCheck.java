package slabwright.work.air;

import java.util.ArrayList;
import java.util.List;
import slabwright.units.Message;

/**
 * What has to be seen to before the first can is opened.
 *
 * @param before to tick off before solvent work
 * @param after to put back once the air is clear
 */
public record IgnitionCheck(List<Message> before, List<Message> after) {
  private static final List<Message> ALWAYS =
      List.of(
          Message.of("work.ignition-check.gas-valve"),
          Message.of("work.ignition-check.pilot-lights"),
          Message.of("work.ignition-check.switches"),
          Message.of("work.ignition-check.neighbours"),
          Message.of("work.ignition-check.no-hot-work"),
          Message.of("work.ignition-check.static"),
          Message.of("work.ignition-check.cans-and-rags"));

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
    List<Message> before = new ArrayList<>();
    sources.forEach(s -> before.add(Message.of("work.ignition-check.on-the-plan", s)));
    before.addAll(ALWAYS);
    before.add(
        detectors > 0
            ? Message.of("work.ignition-check.detectors", detectors)
            : Message.of("work.ignition-check.detectors-if-any"));
    return new IgnitionCheck(
        before,
        List.of(
            Message.of("work.ignition-check.air-measured"),
            Message.of("work.ignition-check.detectors-restored"),
            Message.of("work.ignition-check.gas-opened")));
  }
}
