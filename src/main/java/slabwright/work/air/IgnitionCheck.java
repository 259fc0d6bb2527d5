package slabwright.work.air;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.units.Message;

/**
 * What has to be seen to around solvent; nothing where there is none. The fire code's section on
 * floor finishing (permit, power and ventilation off, four hours after): International Fire Code
 * 105 and 2410, from memory. How often the meter is read is common practice, no source.
 *
 * @param before to tick off before the first can is opened
 * @param during to keep to while vapour is about
 * @param after to put back once the air is clear
 * @param meter what whoever holds the gas meter has to know; empty where there is no solvent
 */
public record IgnitionCheck(
    List<Message> before, List<Message> during, List<Message> after, Optional<MeterRule> meter) {
  /** Hours that heating, ventilation and air conditioning stay off after the last coat. */
  public static final int HVAC_OFF_HOURS = 4;

  private static final IgnitionCheck NOTHING =
      new IgnitionCheck(List.of(), List.of(), List.of(), Optional.empty());

  public IgnitionCheck {
    before = List.copyOf(before);
    during = List.copyOf(during);
    after = List.copyOf(after);
  }

  /** The list for a place; empty where nothing with solvent is laid. */
  public static IgnitionCheck of(IgnitionParameters p) {
    Optional<GasMeter> meter = GasMeter.of(p.solvents());
    return meter
        .map(
            m ->
                new IgnitionCheck(
                    before(p), during(p, m), after(p, m), Optional.of(MeterRule.of(m))))
        .orElse(NOTHING);
  }

  /**
   * What is ticked off before the first can for several places together, each line once: who is out
   * of the building and kept off outdoors is one line.
   */
  public static List<Message> beforeAll(List<IgnitionCheck> places) {
    Message out = Message.of("work.ignition-check.public-out");
    Message away = Message.of("work.ignition-check.public-away");
    List<Message> all = places.stream().flatMap(p -> p.before().stream()).distinct().toList();
    if (!all.contains(out) || !all.contains(away)) {
      return all;
    }
    return all.stream()
        .filter(m -> !m.equals(away))
        .map(m -> m.equals(out) ? Message.of("work.ignition-check.public-out-and-away") : m)
        .toList();
  }

  private static List<Message> before(IgnitionParameters p) {
    List<Message> all = new ArrayList<>();
    p.sources().forEach(s -> all.add(Message.of("work.ignition-check.on-the-plan", s)));
    if (p.permit()) {
      all.add(Message.of("work.ignition-check.permit"));
    }
    if (p.sprayed()) {
      all.add(Message.of("work.ignition-check.spraying"));
    }
    if (p.indoors()) {
      all.add(Message.of("work.ignition-check.public-out"));
      all.add(Message.of("work.ignition-check.power-off"));
      all.add(Message.of("work.ignition-check.gas-valve"));
      all.add(Message.of("work.ignition-check.pilot-lights"));
      all.add(Message.of("work.ignition-check.switches"));
      all.add(Message.of("work.ignition-check.hvac-off", HVAC_OFF_HOURS));
      all.add(Message.of("work.ignition-check.exhaust"));
      all.add(
          p.sprayed()
              ? Message.of("work.ignition-check.fan-cord-compressor")
              : Message.of("work.ignition-check.fan-and-cord"));
    } else {
      all.add(Message.of("work.ignition-check.public-away"));
      all.add(Message.of("work.ignition-check.intakes-shut"));
    }
    all.add(Message.of("work.ignition-check.neighbours"));
    all.add(Message.of("work.ignition-check.static"));
    all.add(Message.of("work.ignition-check.extinguisher"));
    if (p.indoors()) {
      all.add(
          p.detectors() > 0
              ? Message.of("work.ignition-check.detectors", p.detectors())
              : Message.of("work.ignition-check.detectors-if-any"));
    }
    return all;
  }

  private static List<Message> during(IgnitionParameters p, GasMeter m) {
    List<Message> all = new ArrayList<>();
    if (p.unwatched()) {
      all.add(Message.of("work.ignition-check.meter-by-nobody", MeterRule.USUAL_MINUTES));
    }
    if (!p.reader().isBlank()) {
      all.add(Message.of("work.ignition-check.meter-by", p.reader(), MeterRule.USUAL_MINUTES));
    } else if (!p.unwatched()) {
      all.add(Message.of("work.ignition-check.meter-by-the-lead", MeterRule.USUAL_MINUTES));
    }
    all.add(
        Message.of(
            "work.ignition-check.meter-stops",
            m.entryPpm(),
            m.entryOfLel() * 100,
            m.outPpm(),
            m.strictest().said()));
    all.add(Message.of("work.ignition-check.cans-and-rags"));
    all.add(Message.of("work.ignition-check.meter-corrected", m.strictest().said()));
    all.add(Message.of("work.ignition-check.no-hot-work"));
    if (p.filmPulled()) {
      all.add(Message.of("work.ignition-check.film-static", m.entryPpm()));
    }
    return all;
  }

  private static List<Message> after(IgnitionParameters p, GasMeter m) {
    List<Message> all = new ArrayList<>();
    all.add(Message.of("work.ignition-check.air-measured", m.entryPpm()));
    if (p.indoors()) {
      all.add(Message.of("work.ignition-check.hvac-on", HVAC_OFF_HOURS));
      all.add(Message.of("work.ignition-check.detectors-restored"));
      all.add(Message.of("work.ignition-check.gas-opened"));
    }
    all.add(Message.of("work.ignition-check.waste-off-site"));
    return all;
  }
}
