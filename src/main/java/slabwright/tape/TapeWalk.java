package slabwright.tape;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Vec;
import slabwright.units.Length;

/**
 * Walls typed one after the other, as they are taped walking along them. Immutable.
 *
 * @param start the first corner, mm on the site
 * @param walls in order; the first wall's turn is its heading from the x axis
 */
public record TapeWalk(Vec start, List<Wall> walls) {
  /**
   * One wall.
   *
   * @param turn degrees from the wall before, to the left; a right turn is −90
   */
  public record Wall(Length length, double turn) {}

  public TapeWalk {
    walls = List.copyOf(walls);
  }

  public static TapeWalk from(Vec start) {
    return new TapeWalk(start, List.of());
  }

  public TapeWalk with(Wall wall) {
    List<Wall> next = new ArrayList<>(walls);
    next.add(wall);
    return new TapeWalk(start, next);
  }

  public TapeWalk withoutLast() {
    return walls.isEmpty() ? this : new TapeWalk(start, walls.subList(0, walls.size() - 1));
  }

  /** The corners walked to, the start first: one more than walls. */
  public List<Vec> corners() {
    List<Vec> out = new ArrayList<>();
    out.add(start);
    double heading = 0;
    for (Wall w : walls) {
      heading += w.turn();
      double a = Math.toRadians(heading);
      Vec step = new Vec(exact(Math.cos(a)), exact(Math.sin(a))).times(w.length().mm());
      out.add(out.get(out.size() - 1).plus(step));
    }
    return out;
  }

  /** Quarter turns leave no dust behind. */
  private static double exact(double v) {
    double round = Math.rint(v);
    return Math.abs(v - round) < 1e-12 ? round : v;
  }

  /** The heading that a next wall with the turn would take, degrees from the x axis. */
  public double heading(double turn) {
    return walls.stream().mapToDouble(Wall::turn).sum() + turn;
  }

  public Vec end() {
    List<Vec> all = corners();
    return all.get(all.size() - 1);
  }

  public double walked() {
    return walls.stream().mapToDouble(w -> w.length().mm()).sum();
  }

  /** Distance from where we are to the first corner, mm. */
  public double gap() {
    return end().distanceTo(start);
  }

  /** Whether the walk has come back so far that the gap can only be error of the tape. */
  public boolean hasComeBack() {
    return walls.size() >= 3 && gap() <= Math.max(walked() / 100, 30);
  }

  /**
   * The corners of the closed room. A walk that came back has its gap spread along the walls by
   * their length (compass rule); another is closed by one straight wall.
   */
  public List<Vec> closed() {
    List<Vec> all = corners();
    if (!hasComeBack()) {
      return all;
    }
    Vec miss = start.minus(end());
    List<Vec> out = new ArrayList<>();
    double along = 0;
    for (int i = 0; i < walls.size(); i++) {
      out.add(all.get(i).plus(miss.times(along / walked())));
      along += walls.get(i).length().mm();
    }
    return out;
  }
}
