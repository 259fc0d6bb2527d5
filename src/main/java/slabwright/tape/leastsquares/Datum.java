package slabwright.tape.leastsquares;

/** Which coordinates are held and which are to be found. */
public final class Datum {
  private final int[] unknown;
  private final int count;

  private Datum(boolean[] held) {
    unknown = new int[held.length];
    int next = 0;
    for (int c = 0; c < held.length; c++) {
      unknown[c] = held[c] ? -1 : next++;
    }
    count = next;
  }

  /** Holds the first corner and the direction of the first wall, which runs along x. */
  public static Datum firstWall(int corners) {
    boolean[] held = new boolean[2 * corners];
    held[0] = true;
    held[1] = true;
    held[3] = true;
    return new Datum(held);
  }

  static Datum holding(boolean... held) {
    return new Datum(held.clone());
  }

  int count() {
    return count;
  }

  /** The place of a coordinate among the unknowns, or -1 when it is held. */
  int unknown(int coordinate) {
    return unknown[coordinate];
  }
}
