package slabwright.work;

import slabwright.work.air.VapourStep;

/**
 * A step that sets vapour free with what it lays.
 *
 * @param mm2 floor that is laid; 0 for a filler
 * @param mm3 of the product
 */
record LaidVapour(VapourStep step, double mm2, double mm3) {
  /** Floor an hour at the fastest, mm². */
  double areaRate() {
    return mm2 / step.fastest() * 60;
  }

  /** Product an hour at the fastest, mm³. */
  double volumeRate() {
    return mm3 / step.fastest() * 60;
  }
}
