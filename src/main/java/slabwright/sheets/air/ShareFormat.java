package slabwright.sheets.air;

import slabwright.units.QuantityFormat;

/** Shares as sheets show them. */
final class ShareFormat {
  private ShareFormat() {}

  /** A share of the air in parts per million. */
  static String ppm(double share) {
    return QuantityFormat.number(share * 1e6, 0) + " ppm";
  }

  static String percent(double share) {
    return QuantityFormat.number(share * 100, share < 0.1 ? 1 : 0) + " %";
  }
}
