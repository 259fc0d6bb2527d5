package slabwright.work.air;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a gas meter has to tell before anybody goes in, of the strictest solvent on the floor. Its
 * shares are of the air.
 *
 * @param entry nobody without breathing protection goes in at this or above
 * @param entryOfLel the same as a share of the lower explosive limit: too little for a meter that
 *     shows whole percents of it
 * @param out nobody at all is in at this or above
 */
record GasMeter(Solvent strictest, double entry, double entryOfLel, double out) {

  /** For the solvents of a floor; empty where there are none. */
  public static Optional<GasMeter> of(List<Solvent> solvents) {
    return solvents.stream()
        .map(GasMeter::of)
        .min(Comparator.comparingDouble(GasMeter::entry))
        .map(
            m ->
                new GasMeter(
                    m.strictest(),
                    m.entry(),
                    m.entryOfLel(),
                    solvents.stream().mapToDouble(s -> of(s).out()).min().orElseThrow()));
  }

  private static GasMeter of(Solvent s) {
    double entry =
        s.strictest(ExposureLimit.AveragingPeriod.FIFTEEN_MINUTES)
            .or(() -> s.strictest(ExposureLimit.AveragingPeriod.EIGHT_HOURS))
            .map(ExposureLimit::share)
            .orElse(AirFigures.HAZARDOUS_SHARE * s.lel());
    double danger =
        s.strictest(ExposureLimit.AveragingPeriod.DANGER)
            .map(ExposureLimit::share)
            .orElse(Double.POSITIVE_INFINITY);
    double out = Math.min(AirFigures.HAZARDOUS_SHARE * s.lel(), danger);
    return new GasMeter(s, entry, entry / s.lel(), out);
  }

  public double entryPpm() {
    return entry * 1e6;
  }

  public double outPpm() {
    return out * 1e6;
  }
}
