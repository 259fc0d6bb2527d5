package slabwright.tape.leastsquares;

/**
 * One row of the design matrix: how much one reading changes for each millimetre that a coordinate
 * moves. Coordinate {@code 2 i} is the x of corner i, {@code 2 i + 1} its y. No reading touches
 * more than four corners. A coordinate may stand here twice; its entries then add.
 */
public final class DesignRow {
  private final int[] coordinate = new int[8];
  private final double[] slope = new double[8];
  private int size;

  void clear() {
    size = 0;
  }

  void add(int corner, double dx, double dy) {
    put(2 * corner, dx);
    put(2 * corner + 1, dy);
  }

  private void put(int c, double d) {
    coordinate[size] = c;
    slope[size] = d;
    size++;
  }

  int size() {
    return size;
  }

  int coordinate(int k) {
    return coordinate[k];
  }

  double slope(int k) {
    return slope[k];
  }
}
