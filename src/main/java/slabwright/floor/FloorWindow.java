package slabwright.floor;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Bounds;
import slabwright.site.Machine;

/**
 * The part of a floor that a change can reach, as four boxes one inside the other.
 *
 * @param places outside of it no place for a machine's middle comes or goes
 * @param figures outside of it no figure changes
 * @param access inside of it places for a machine's middle must be right, so that figures are
 * @param input what is noded: all that has a say about the places
 */
record FloorWindow(Bounds places, Bounds figures, Bounds access, Bounds input) {
  /** Off any round dimension, so that no edge of a floor runs along a side. */
  private static final double ODD = 0.137;

  /**
   * Sides move by so much at once, mm, so that a mark that is dragged stays in one window a while.
   */
  private static final double STEP = 500;

  /** The window about what a change covers before and after it. */
  static FloorWindow about(Bounds changed, List<Machine> machines, double tolerance) {
    double stands = 0;
    double sweeps = 0;
    for (Machine m : machines) {
      double half = MachineReach.half(m);
      double room = Math.max(half, m.passage() / 2) + 1;
      double head = m.grinding().mm() / 2 + MachineReach.hug(m) + 4 * tolerance + 1;
      stands = Math.max(stands, room);
      sweeps = Math.max(sweeps, head);
    }
    Bounds places = odd(stepped(changed.grown(stands)));
    Bounds figures = odd(places.grown(sweeps));
    Bounds access = odd(figures.grown(sweeps));
    return new FloorWindow(places, figures, access, odd(access.grown(stands)));
  }

  private static Bounds stepped(Bounds b) {
    return new Bounds(
        STEP * Math.floor(b.minX() / STEP),
        STEP * Math.floor(b.minY() / STEP),
        STEP * Math.ceil(b.maxX() / STEP),
        STEP * Math.ceil(b.maxY() / STEP));
  }

  private static Bounds odd(Bounds b) {
    return new Bounds(
        Math.floor(b.minX()) - ODD,
        Math.floor(b.minY()) - ODD,
        Math.ceil(b.maxX()) + ODD,
        Math.ceil(b.maxY()) + ODD);
  }

  /** Windows about several changes; what comes near to one another shares one. */
  static List<FloorWindow> about(List<Bounds> changes, List<Machine> machines, double tolerance) {
    List<Bounds> apart = new ArrayList<>();
    for (Bounds change : changes) {
      Bounds all = change;
      boolean grew = true;
      while (grew) {
        grew = false;
        Bounds access = about(all, machines, tolerance).access;
        for (int i = apart.size() - 1; i >= 0; i--) {
          if (about(apart.get(i), machines, tolerance).access.meets(access)) {
            all = all.including(apart.remove(i));
            grew = true;
          }
        }
      }
      apart.add(all);
    }
    return apart.stream().map(b -> about(b, machines, tolerance)).toList();
  }
}
