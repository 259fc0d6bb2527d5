package slabwright.inlay.panel;

/** A, B, … Z, AA, AB… */
final class Names {
  private Names() {}

  static String strip(int index) {
    String last = String.valueOf((char) ('A' + index % 26));
    return index < 26 ? last : strip(index / 26 - 1) + last;
  }
}
