package slabwright.work.air;

/**
 * One published limit and what the air gets to.
 *
 * @param reached the worst mean over the limit's time, or the peak for one that holds at any time;
 *     a share of the air
 * @param ratio how many times the limit that is
 */
public record LimitComparison(Solvent solvent, ExposureLimit limit, double reached, double ratio) {
  static LimitComparison of(Solvent solvent, ExposureLimit limit, ConcentrationCurve curve) {
    int minutes = limit.span().minutes();
    double reached = minutes == 0 ? curve.peak().share() : curve.worstAverage(minutes);
    return new LimitComparison(solvent, limit, reached, reached / limit.share());
  }

  public boolean isPassed() {
    return reached > limit.share();
  }

  public double reachedPpm() {
    return reached * 1e6;
  }
}
