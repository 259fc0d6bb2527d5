package slabwright.work.rule;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

  private static final String TABLE = "29 CFR 1926.1153 Table 1 ";
  private static final Duration FOUR_HOURS = Duration.ofHours(4);

  private SilicaRule() {}

  /** Airflow in m³/min for a shroud over a wheel: 25 cfm for each inch of diameter, row (xii). */
  public static double shroudAirflow(double wheelMm) {
    return 25 * wheelMm / 25.4 * RateFormat.CUBIC_FOOT_M3;
  }

  /** The protection factor row (xii) asks for; empty for none. */
  public static Optional<Integer> respirator(boolean indoors, Duration handGrindingAShift) {
    boolean asked = indoors && handGrindingAShift.compareTo(FOUR_HOURS) > 0;
    return asked ? Optional.of(APF) : Optional.empty();
  }

  /** A hand grinder with the airflow in m³/min of the vacuum on it, if known. */
  public static RuleNote handGrinder(String name, double wheelMm, Optional<Double> vacuum) {
    double needed = shroudAirflow(wheelMm);
    double cfm = needed / RateFormat.CUBIC_FOOT_M3;
    String number = "%s cfm (25 cfm an inch of wheel)".formatted(QuantityFormat.number(cfm, 1));
    RuleNote.Verdict verdict =
        vacuum
            .map(v -> v < needed ? RuleNote.Verdict.NOT_MET : RuleNote.Verdict.FINE)
            .orElse(RuleNote.Verdict.UNKNOWN);
    String has =
        vacuum
            .map(v -> "the vacuum pulls %.0f cfm".formatted(v / RateFormat.CUBIC_FOOT_M3))
            .orElse("the vacuum's airflow is not in the shop book");
    return new RuleNote(
        "Silica, " + name,
        verdict,
        TABLE + "(xii)",
        number,
        "%.1f in wheel; %s".formatted(wheelMm / 25.4, has),
        "Shroud and collector, filter of at least 99 %, cyclonic pre-separator or filter cleaning.");
  }

  /** Respirators for hand grinding. */
  public static RuleNote handHours(boolean indoors, Optional<Duration> aShift) {
    if (aShift.isEmpty()) {
      return hours(RuleNote.Verdict.UNKNOWN, "hours a shift are not known", "Count them.");
    }
    String finding =
        "%s, %.1f h of hand grinding a shift"
            .formatted(indoors ? "indoors" : "outdoors", aShift.get().toMinutes() / 60.0);
    return respirator(indoors, aShift.get())
        .map(
            apf ->
                hours(
                    RuleNote.Verdict.LOOK,
                    finding,
                    "Respirators with APF %d for everyone at it.".formatted(apf)))
        .orElse(hours(RuleNote.Verdict.FINE, finding, ""));
  }

  private static RuleNote hours(RuleNote.Verdict verdict, String finding, String todo) {
    return new RuleNote(
        "Silica, respirators",
        verdict,
        TABLE + "(xii)",
        "indoors over 4 h a shift: APF 10",
        finding,
        todo);
  }

  /** The floor grinder: water, or the collector its maker asks for. */
  public static RuleNote floorGrinder(boolean indoors, Optional<Double> makersAirflow) {
    List<String> todo = new ArrayList<>();
    todo.add("Collector with at least 99 % filter and filter cleaning.");
    if (indoors) {
      todo.add("Vacuum loose dust with a HEPA vacuum between passes.");
    }
    return new RuleNote(
        "Silica, floor grinder",
        makersAirflow.isPresent() ? RuleNote.Verdict.LOOK : RuleNote.Verdict.UNKNOWN,
        TABLE + "(xiii)",
        "the maker's airflow, no respirator",
        makersAirflow
            .map(a -> "the maker asks for %.0f cfm".formatted(a / RateFormat.CUBIC_FOOT_M3))
            .orElse("the maker's airflow is not in the shop book"),
        String.join(" ", todo));
  }
}
