package slabwright.work.rule;

import java.util.ArrayList;
import java.util.List;
import slabwright.units.Message;

/**
 * What protects the crew while concrete is ground, beyond Table 1. Rules and numbers from memory; a
 * state's own plan may ask for more.
 */
public final class CrewSafety {
  /** Carbon monoxide, 8-hour mean, ppm: 29 CFR 1926.55, from memory. */
  public static final int CARBON_MONOXIDE_PPM = 50;

  /** Noise, 8-hour mean, dBA: 29 CFR 1926.52 and 1926.101, from memory. */
  public static final int NOISE_DBA = 90;

  private CrewSafety() {}

  /**
   * What holds where concrete is ground.
   *
   * @param indoors whether inside a building
   */
  public static List<RuleNote> grinding(boolean indoors) {
    List<RuleNote> notes = new ArrayList<>();
    notes.add(
        look(
            Message.of("work.crew-safety.silica-plan"),
            Message.of("work.crew-safety.silica-plan-rule"),
            Message.of("work.crew-safety.silica-plan-number"),
            Message.of("work.crew-safety.concrete-is-ground"),
            Message.of("work.crew-safety.silica-plan-todo")));
    notes.add(
        look(
            Message.of("work.crew-safety.waste"),
            Message.of("work.crew-safety.waste-rule"),
            Message.of("work.crew-safety.waste-number"),
            Message.of("work.crew-safety.concrete-is-ground"),
            Message.of("work.crew-safety.waste-todo")));
    notes.add(
        look(
            Message.of("work.crew-safety.noise"),
            Message.of("work.crew-safety.noise-rule"),
            Message.of("work.crew-safety.noise-number", NOISE_DBA),
            Message.of("work.crew-safety.grinders-run"),
            Message.of("work.crew-safety.noise-todo")));
    notes.add(
        look(
            Message.of("work.crew-safety.ground-fault"),
            Message.of("work.crew-safety.ground-fault-rule"),
            Message.of("work.crew-safety.ground-fault-number"),
            Message.of("work.crew-safety.grinders-run"),
            Message.of("work.crew-safety.ground-fault-todo")));
    if (indoors) {
      notes.add(
          look(
              Message.of("work.crew-safety.carbon-monoxide"),
              Message.of("work.crew-safety.carbon-monoxide-rule"),
              Message.of("work.crew-safety.carbon-monoxide-number", CARBON_MONOXIDE_PPM),
              Message.of("work.crew-safety.indoors"),
              Message.of("work.crew-safety.carbon-monoxide-todo")));
    }
    return List.copyOf(notes);
  }

  private static RuleNote look(
      Message subject, Message rule, Message number, Message finding, Message todo) {
    return new RuleNote(subject, RuleNote.Verdict.LOOK, rule, number, finding, todo);
  }
}
