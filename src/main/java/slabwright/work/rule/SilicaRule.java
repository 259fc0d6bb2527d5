package slabwright.work.rule;

import java.time.Duration;
import java.util.Optional;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.RateFormat;

/**
 * Respirable crystalline silica, 29 CFR 1926.1153 Table 1: row (xii), handheld grinders for other
 * than mortar removal, and row (xiii), walk-behind milling machines and floor grinders.
 */
public final class SilicaRule {
  /** Permissible exposure limit, 8-hour mean, µg/m³. */
  public static final double PEL = 50;

  /** Action level, 8-hour mean, µg/m³. */
  public static final double ACTION_LEVEL = 25;

  /** Assigned protection factor asked for by row (xii) indoors past four hours a shift. */
  public static final int APF = 10;

  private static final Message ROW_XII = Message.of("work.silica-rule.row-xii");
  private static final Message ROW_XIII = Message.of("work.silica-rule.row-xiii");

  /** Above so much of a shift at all tasks of Table 1 together its stricter column counts. */
  public static final Duration FOUR_HOURS = Duration.ofHours(4);

  private SilicaRule() {}

  /** Airflow in m³/min for a shroud over a wheel: 25 cfm for each inch of diameter, row (xii). */
  public static double shroudAirflow(double wheelMm) {
    return 25 * wheelMm / 25.4 * RateFormat.CUBIC_FOOT_M3;
  }

  /**
   * The protection factor row (xii) asks for; empty for none.
   *
   * @param aShift at all tasks of Table 1 by one person, 29 CFR 1926.1153(c)(3)
   */
  public static Optional<Integer> respirator(boolean indoors, Duration aShift) {
    return indoors && isOver(aShift) ? Optional.of(APF) : Optional.empty();
  }

  public static boolean isOver(Duration aShift) {
    return aShift.compareTo(FOUR_HOURS) > 0;
  }

  /** A hand grinder with the airflow in m³/min of the vacuum on it, if known. */
  public static RuleNote handGrinder(String name, double wheelMm, Optional<Double> vacuum) {
    double needed = shroudAirflow(wheelMm);
    double cfm = needed / RateFormat.CUBIC_FOOT_M3;
    Message number =
        Message.of(
            "work.silica-rule.cfm-cfm-an-inch-of", QuantityFormat.number(cfm, 1), needed * 60);
    RuleNote.Verdict verdict =
        vacuum
            .map(v -> v < needed ? RuleNote.Verdict.NOT_MET : RuleNote.Verdict.FINE)
            .orElse(RuleNote.Verdict.UNKNOWN);
    Message has =
        vacuum
            .map(
                v ->
                    Message.of(
                        "work.silica-rule.the-vacuum-pulls-cfm",
                        v / RateFormat.CUBIC_FOOT_M3,
                        v * 60))
            .orElse(Message.of("work.silica-rule.the-vacuums-airflow-is-not"));
    return new RuleNote(
        Message.of("work.silica-rule.silica", name),
        verdict,
        ROW_XII,
        number,
        Message.of("work.silica-rule.in-wheel", wheelMm / 25.4, wheelMm, has),
        Message.of("work.silica-rule.shroud-and-collector-filter"));
  }

  /** Respirators for hand grinding. */
  public static RuleNote handHours(boolean indoors, Optional<Duration> aShift) {
    if (aShift.isEmpty()) {
      return hours(
          RuleNote.Verdict.UNKNOWN,
          Message.of("work.silica-rule.hours-a-shift-are-not"),
          Message.of("work.silica-rule.count-them"));
    }
    double hours = aShift.get().toMinutes() / 60.0;
    Message finding =
        indoors
            ? Message.of("work.silica-rule.hand-grinding-indoors", hours)
            : Message.of("work.silica-rule.hand-grinding-outdoors", hours);
    return respirator(indoors, aShift.get())
        .map(
            apf ->
                hours(
                    RuleNote.Verdict.LOOK,
                    finding,
                    Message.of("work.silica-rule.respirators-with-apf-for-everyone", apf)))
        .orElse(hours(RuleNote.Verdict.FINE, finding, RuleNote.NOTHING));
  }

  private static RuleNote hours(RuleNote.Verdict verdict, Message finding, Message todo) {
    return new RuleNote(
        Message.of("work.silica-rule.silica-respirators"),
        verdict,
        ROW_XII,
        Message.of("work.silica-rule.indoors-over-h-a-shift"),
        finding,
        todo);
  }

  /** The floor grinder: water, or the collector its maker asks for. */
  public static RuleNote floorGrinder(boolean indoors, Optional<Double> makersAirflow) {
    Message collector = Message.of("work.silica-rule.collector-with-at-least-filter");
    Message todo =
        indoors ? Message.of("work.silica-rule.vacuum-loose-dust-with-a", collector) : collector;
    return new RuleNote(
        Message.of("work.silica-rule.silica-floor-grinder"),
        makersAirflow.isPresent() ? RuleNote.Verdict.LOOK : RuleNote.Verdict.UNKNOWN,
        ROW_XIII,
        Message.of("work.silica-rule.the-makers-airflow-no-respirator"),
        makersAirflow
            .map(
                a ->
                    Message.of(
                        "work.silica-rule.the-maker-asks-for-cfm",
                        a / RateFormat.CUBIC_FOOT_M3,
                        a * 60))
            .orElse(Message.of("work.silica-rule.the-makers-airflow-is-not")),
        todo);
  }
}
