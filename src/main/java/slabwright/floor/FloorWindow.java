package slabwright.floor;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import slabwright.shape.Bounds;
import slabwright.shape.BoxArea;
import slabwright.shape.ints.UnionFind;
import slabwright.site.Machine;

/**
 * The part of a floor that a change can reach, as areas one inside the other, each of upright
 * boxes. In all that is asked of it only {@code input} is noded, so that is kept small: what
 * machines pass over from beyond {@code works} is known from the floor as it was.
 *
 * @param places outside of it no place for a machine's middle comes or goes
 * @param works outside of it no place that a machine works from comes or goes
 * @param access inside of it places for a machine's middle must be right, so that those it works
 *     from are
 * @param figures outside of it no figure changes
 * @param heads inside of it a machine's middle passes over some of {@code figures}
 * @param input what is noded: all that has a say about {@code access} and {@code figures}
 */
record FloorWindow(
    BoxArea places, BoxArea works, BoxArea access, BoxArea figures, BoxArea heads, BoxArea input) {
  /** Off any round dimension, so that no edge of a floor runs along a side. */
  private static final double ODD = 0.137;

  /** Sides move by so much at once, mm, so that what is dragged stays in one window a while. */
  static final double STEP = 500;

  /**
   * How far things reach, mm: a machine's middle from what it keeps off, the places it works from
   * from those it rolls to, what it passes over from its middle.
   */
  private record Reaches(double stands, double hugs, double sweeps) {
    static Reaches of(List<Machine> machines, double tolerance) {
      double stands = 0;
      double hugs = 0;
      double sweeps = 0;
      for (Machine m : machines) {
        stands = Math.max(stands, Math.max(MachineReach.half(m), m.passage() / 2) + 1);
        hugs = Math.max(hugs, MachineReach.hug(m));
        sweeps = Math.max(sweeps, m.grinding().mm() / 2 + 4 * tolerance + 1);
      }
      return new Reaches(stands, hugs, sweeps);
    }
  }

  /** The boxes about one box in which something changes. */
  private record Boxes(
      Bounds places, Bounds works, Bounds access, Bounds figures, Bounds heads, Bounds input) {
    static Boxes about(Bounds changed, Reaches r) {
      Bounds places = odd(stepped(changed.grown(r.stands)));
      Bounds works = wider(places, r.hugs);
      Bounds access = wider(works, r.hugs);
      Bounds figures = wider(works, r.sweeps);
      Bounds input = wider(access, r.stands).including(figures);
      return new Boxes(places, works, access, figures, wider(figures, r.sweeps), input);
    }

    private static Bounds wider(Bounds b, double by) {
      return by == 0 ? b : odd(b.grown(by));
    }

    private static Bounds odd(Bounds b) {
      return new Bounds(
          Math.floor(b.minX()) - ODD,
          Math.floor(b.minY()) - ODD,
          Math.ceil(b.maxX()) + ODD,
          Math.ceil(b.maxY()) + ODD);
    }
  }

  /** The smallest box with sides at whole steps. */
  static Bounds stepped(Bounds b) {
    return new Bounds(
        STEP * Math.floor(b.minX() / STEP),
        STEP * Math.floor(b.minY() / STEP),
        STEP * Math.ceil(b.maxX() / STEP),
        STEP * Math.ceil(b.maxY() / STEP));
  }

  /**
   * Windows about the boxes in which something changes; what comes near shares one.
   *
   * @param together whether all share one: what is beyond a window must not change in another, and
   *     an outline runs through all
   */
  static List<FloorWindow> about(
      List<Bounds> changes, boolean together, List<Machine> machines, double tolerance) {
    Reaches reaches = Reaches.of(machines, tolerance);
    List<Boxes> boxes = new ArrayList<>();
    for (Bounds change : new LinkedHashSet<>(changes)) {
      boxes.add(Boxes.about(change, reaches));
    }
    UnionFind near = new UnionFind(boxes.size());
    for (int i = 0; i < boxes.size(); i++) {
      for (int k = 0; k < i; k++) {
        if (together || boxes.get(i).input.meets(boxes.get(k).input)) {
          near.join(i, k);
        }
      }
    }
    Map<Integer, List<Boxes>> windows = new LinkedHashMap<>();
    for (int i = 0; i < boxes.size(); i++) {
      windows.computeIfAbsent(near.root(i), k -> new ArrayList<>()).add(boxes.get(i));
    }
    return windows.values().stream().map(FloorWindow::of).toList();
  }

  private static FloorWindow of(List<Boxes> boxes) {
    return new FloorWindow(
        all(boxes, Boxes::places),
        all(boxes, Boxes::works),
        all(boxes, Boxes::access),
        all(boxes, Boxes::figures),
        all(boxes, Boxes::heads),
        all(boxes, Boxes::input));
  }

  private static BoxArea all(List<Boxes> boxes, Function<Boxes, Bounds> which) {
    return BoxArea.of(boxes.stream().map(which).toList());
  }
}
