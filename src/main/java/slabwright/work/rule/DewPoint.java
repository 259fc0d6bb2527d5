package slabwright.work.rule;

import java.util.ArrayList;
import java.util.List;
import slabwright.site.Slab;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;

/**
 * Dew point by the Magnus formula with a = 17.62 and b = 243.12 °C, and the rules that keep a
 * coating off a surface that is about to sweat.
 */
public final class DewPoint {
  private static final double A = 17.62;
  private static final double B = 243.12;

  /** Humidity of the air above which coatings are commonly not laid, in %. */
  public static final double HIGHEST_HUMIDITY = 85;

  private DewPoint() {}

  /** In °C, for air in °C and a relative humidity in % above 0. */
  public static double of(double celsius, double humidity) {
    double g = Math.log(humidity / 100) + A * celsius / (B + celsius);
    return B * g / (A - g);
  }

  /** The coldest surface in °C by the 3 °C rule (ISO 8502-4). */
  public static double coldestSurface(double celsius, double humidity) {
    return of(celsius, humidity) + 3;
  }

  /** The coldest surface in °C by the 5 °F rule (MIL-HDBK-1110 9.6.6), 2.78 °C. */
  public static double coldestSurfaceFahrenheitRule(double celsius, double humidity) {
    return of(celsius, humidity) + 5 * 5 / 9.0;
  }

  /** Both rules and the humidity against the slab's readings. */
  public static List<RuleNote> notes(Slab slab, UnitSystem units) {
    boolean humid = slab.humidity().orElse(0) > 0;
    if (slab.airC().isEmpty() || !humid || slab.surfaceC().isEmpty()) {
      return List.of(missing());
    }
    double air = slab.airC().getAsDouble();
    double humidity = slab.humidity().getAsDouble();
    double surface = slab.surfaceC().getAsDouble();
    double dew = of(air, humidity);
    Message finding =
        Message.of(
            "work.dew-point.dew-point-surface",
            QuantityFormat.temperature(dew, units),
            QuantityFormat.temperature(surface, units));
    List<RuleNote> notes = new ArrayList<>();
    notes.add(
        note(
            Message.of("work.dew-point.iso"),
            Message.of("work.dew-point.surface-at-least-c-above"),
            surface - dew >= 3,
            finding));
    boolean fiveFahrenheit = surface - dew >= 25 / 9.0;
    notes.add(
        note(
            Message.of("work.dew-point.mil"),
            Message.of("work.dew-point.at-least-f-above-it"),
            fiveFahrenheit,
            finding));
    if (humidity > HIGHEST_HUMIDITY) {
      notes.add(tooHumid(humidity));
    }
    return List.copyOf(notes);
  }

  private static RuleNote note(Message rule, Message number, boolean fine, Message finding) {
    return new RuleNote(
        Message.of("work.dew-point.dew-point"),
        fine ? RuleNote.Verdict.FINE : RuleNote.Verdict.NOT_MET,
        rule,
        number,
        finding,
        fine
            ? Message.of("work.dew-point.measure-again-about-every-h")
            : Message.of("work.dew-point.do-not-coat-warm-the"));
  }

  private static RuleNote tooHumid(double humidity) {
    return new RuleNote(
        Message.of("work.dew-point.humidity"),
        RuleNote.Verdict.NOT_MET,
        Message.of("work.dew-point.common-upper-limit-rh"),
        Message.of("work.dew-point.highest-humidity"),
        Message.of("work.dew-point.humidity-found", humidity),
        Message.of("work.dew-point.do-not-coat-before-the"));
  }

  private static RuleNote missing() {
    return new RuleNote(
        Message.of("work.dew-point.dew-point"),
        RuleNote.Verdict.UNKNOWN,
        Message.of("work.dew-point.iso-mil-hdbk"),
        Message.of("work.dew-point.surface-at-least-c-above-2"),
        Message.of("work.dew-point.air-humidity-or-surface-temperature"),
        Message.of("work.dew-point.measure-all-three-just-before"));
  }
}
