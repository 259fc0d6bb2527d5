package slabwright.units;

/** Names that count in letters: A to Z, then AA, AB … */
public final class LetterNumbering {
  private LetterNumbering() {}

  /** The name with this index, 0 being A. */
  public static String of(int index) {
    String last = String.valueOf((char) ('A' + index % 26));
    return index < 26 ? last : of(index / 26 - 1) + last;
  }
}
