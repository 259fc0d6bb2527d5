package slabwright.work.air;

/**
 * How high vapour stands, all solvents added together, each over its own limit.
 *
 * @param lel share of the lower explosive limit
 * @param shortTerm times the lowest 15-minute limit, of a solvent that has none its 8-hour limit
 * @param eightHour times the strictest 8-hour limit
 * @param danger times what is immediately dangerous, 0 where nothing is published
 */
public record AirLevel(double lel, double shortTerm, double eightHour, double danger) {
  public static final AirLevel CLEAN = new AirLevel(0, 0, 0, 0);

  /** A share of the air of one solvent. */
  public static AirLevel of(Solvent solvent, double share) {
    double eight = over(solvent, ExposureLimit.AveragingPeriod.EIGHT_HOURS, share);
    double quarter = over(solvent, ExposureLimit.AveragingPeriod.FIFTEEN_MINUTES, share);
    boolean none = solvent.strictest(ExposureLimit.AveragingPeriod.FIFTEEN_MINUTES).isEmpty();
    return new AirLevel(
        share / solvent.lel(),
        none ? eight : quarter,
        eight,
        over(solvent, ExposureLimit.AveragingPeriod.DANGER, share));
  }

  private static double over(Solvent solvent, ExposureLimit.AveragingPeriod period, double share) {
    return solvent.strictest(period).map(l -> share / l.share()).orElse(0.0);
  }

  public AirLevel plus(AirLevel o) {
    return new AirLevel(
        lel + o.lel, shortTerm + o.shortTerm, eightHour + o.eightHour, danger + o.danger);
  }

  public AirLevel times(double factor) {
    return new AirLevel(lel * factor, shortTerm * factor, eightHour * factor, danger * factor);
  }

  /** The higher of both in everything. */
  public AirLevel worse(AirLevel o) {
    return new AirLevel(
        Math.max(lel, o.lel),
        Math.max(shortTerm, o.shortTerm),
        Math.max(eightHour, o.eightHour),
        Math.max(danger, o.danger));
  }
}
