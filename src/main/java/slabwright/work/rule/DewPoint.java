package slabwright.work.rule;

import java.util.ArrayList;
import java.util.List;
import slabwright.site.Slab;
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
    String finding =
        "dew point %s, surface %s"
            .formatted(
                QuantityFormat.temperature(dew, units), QuantityFormat.temperature(surface, units));
    List<RuleNote> notes = new ArrayList<>();
    notes.add(note("ISO 8502-4", "surface at least 3 °C above it", surface - dew >= 3, finding));
    boolean fiveFahrenheit = surface - dew >= 25 / 9.0;
    notes.add(
        note("MIL-HDBK-1110 9.6.6", "at least 5 °F above it and rising", fiveFahrenheit, finding));
    if (humidity > HIGHEST_HUMIDITY) {
      notes.add(tooHumid(humidity));
    }
    return List.copyOf(notes);
  }

  private static RuleNote note(String rule, String number, boolean fine, String finding) {
    return new RuleNote(
        "Dew point",
        fine ? RuleNote.Verdict.FINE : RuleNote.Verdict.NOT_MET,
        rule,
        number,
        finding,
        fine ? "Measure again about every 4 h." : "Do not coat: warm the slab or dry the air.");
  }

  private static RuleNote tooHumid(double humidity) {
    return new RuleNote(
        "Humidity",
        RuleNote.Verdict.NOT_MET,
        "common upper limit, 85 % RH",
        "85 %",
        "%.0f %%".formatted(humidity),
        "Do not coat before the air is drier.");
  }

  private static RuleNote missing() {
    return new RuleNote(
        "Dew point",
        RuleNote.Verdict.UNKNOWN,
        "ISO 8502-4; MIL-HDBK-1110 9.6.6",
        "surface at least 3 °C above it; at least 5 °F and rising",
        "air, humidity or surface temperature not measured",
        "Measure all three just before coating.");
  }
}
