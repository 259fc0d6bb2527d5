package slabwright.work.air;

/**
 * One published limit and what the air gets to.
 *
 * @param reached the worst mean over the limit's time, or the peak for one that holds at any time;
 *     a share of the air
 * @param ratio how many times the limit that is
 * @param layerReached the same in the lowest metre, which rules
 * @param layerRatio how many times the limit that is
 */
public record LimitComparison(
    Solvent solvent,
    ExposureLimit limit,
    double reached,
    double ratio,
    double layerReached,
    double layerRatio) {
  static LimitComparison of(
      Solvent solvent, ExposureLimit limit, ConcentrationCurve curve, double layer) {
    int minutes = limit.span().minutes();
    double reached = minutes == 0 ? curve.peak().share() : curve.worstAverage(minutes);
    double ratio = reached / limit.share();
    return new LimitComparison(solvent, limit, reached, ratio, reached * layer, ratio * layer);
  }

  public boolean isPassed() {
    return layerReached > limit.share();
  }

  public double reachedPpm() {
    return reached * 1e6;
  }
}
