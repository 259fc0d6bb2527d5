package slabwright.work.air;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.RateFormat;

/**
 * A solvent's published properties.
 *
 * @param specificGravity against water
 * @param molarMass g/mol
 * @param lel lower explosive limit as a share of the air
 * @param flashCelsius flash point
 */
public record Solvent(
    String name,
    double specificGravity,
    double molarMass,
    double lel,
    double flashCelsius,
    List<ExposureLimit> limits) {
  /**
   * Cubic feet of vapour from a pint of liquid at 70 °F for SG/MW = 1, as printed in industrial
   * ventilation texts (403; 359.05 ft³/lb-mol at 32 °F gives 403.13).
   */
  private static final double CUBIC_FEET_PER_PINT = 403;

  private static final double PINT_MM3 = QuantityFormat.US_GALLON_MM3 / 8;

  /** 70 °F in kelvin. */
  private static final double PRINTED_AT_KELVIN = 21.0 + 1.0 / 9 + 273.15;

  /**
   * Acetone, CAS 67-64-1. Molar mass and limits: NTP chemical repository, OSHA chemical sampling
   * page, Haz-Map; specific gravity 0.79 and the lower explosive limit 2.5 % (the lower of the
   * published 2.5 and 2.6) from the NIOSH Pocket Guide, from memory.
   */
  public static final Solvent ACETONE =
      new Solvent(
          "acetone",
          0.79,
          58.08,
          0.025,
          -18,
          List.of(
              ExposureLimit.ppm(
                  Message.of("work.solvent.osha-pel"),
                  ExposureLimit.AveragingPeriod.EIGHT_HOURS,
                  1000),
              ExposureLimit.ppm(
                  Message.of("work.solvent.niosh-rel"),
                  ExposureLimit.AveragingPeriod.EIGHT_HOURS,
                  250),
              ExposureLimit.ppm(
                  Message.of("work.solvent.acgih-tlv"),
                  ExposureLimit.AveragingPeriod.EIGHT_HOURS,
                  250),
              ExposureLimit.ppm(
                  Message.of("work.solvent.acgih-stel"),
                  ExposureLimit.AveragingPeriod.FIFTEEN_MINUTES,
                  500),
              ExposureLimit.ppm(
                  Message.of("work.solvent.idlh"), ExposureLimit.AveragingPeriod.DANGER, 2500)));

  /** Its name to say: a message for a solvent that is known here, so that it is translated. */
  public Object said() {
    return name.equals(ACETONE.name()) ? Message.of("work.solvent.acetone") : name;
  }

  /** The names of several to say in one sentence, each once; empty for none. */
  public static Optional<Object> said(Stream<Solvent> solvents) {
    return solvents
        .map(Solvent::said)
        .distinct()
        .reduce((a, b) -> Message.of("work.solvent.and-another", a, b));
  }

  public Solvent {
    limits = List.copyOf(limits);
    if (specificGravity <= 0 || molarMass <= 0 || lel <= 0 || lel >= 1) {
      throw new IllegalArgumentException("a solvent needs gravity, molar mass and LEL: " + name);
    }
  }

  /**
   * A solvent as its data sheet gives it.
   *
   * @param ppm8h the 8-hour limit
   * @param ppm15min the 15-minute limit, if there is one
   */
  public static Solvent fromDataSheet(
      String name,
      double gravity,
      double molarMass,
      double lel,
      double flashCelsius,
      double ppm8h,
      Optional<Double> ppm15min) {
    List<ExposureLimit> limits = new ArrayList<>();
    limits.add(
        ExposureLimit.ppm(
            Message.of("work.solvent.eight-hours"),
            ExposureLimit.AveragingPeriod.EIGHT_HOURS,
            ppm8h));
    ppm15min.ifPresent(
        p ->
            limits.add(
                ExposureLimit.ppm(
                    Message.of("work.solvent.fifteen-minutes"),
                    ExposureLimit.AveragingPeriod.FIFTEEN_MINUTES,
                    p)));
    return new Solvent(name, gravity, molarMass, lel, flashCelsius, limits);
  }

  /** How much vapour in m³ a volume of the liquid in mm³ gives in air of a temperature in °C. */
  public double vapour(double mm3, double celsius) {
    double atSeventyFahrenheit =
        CUBIC_FEET_PER_PINT
            * RateFormat.CUBIC_FOOT_M3
            * specificGravity
            / molarMass
            * (mm3 / PINT_MM3);
    return atSeventyFahrenheit * (celsius + 273.15) / PRINTED_AT_KELVIN;
  }

  /** The strictest limit of a span, if one is published. */
  public Optional<ExposureLimit> strictest(ExposureLimit.AveragingPeriod span) {
    return limits.stream()
        .filter(l -> l.span() == span)
        .min((a, b) -> Double.compare(a.share(), b.share()));
  }

  /** Milligrams a cubic metre for a share of the air, at 25 °C (24.45 L/mol). */
  public double milligramsPerCubicMetre(double share) {
    return share * 1e6 * molarMass / 24.45;
  }

  /** Flash point under 100 °F: a Class I liquid (NFPA 30). */
  public boolean isClassOne() {
    return flashCelsius < (100 - 32) * 5 / 9.0;
  }

  /** Flash point from 100 to under 140 °F: a Class II liquid (NFPA 30). */
  public boolean isClassTwo() {
    return !isClassOne() && flashCelsius < 60;
  }
}
