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
 * The part of a floor that a change can reach, as four areas one inside the other, each of upright
 * boxes.
 *
 * @param places outside of it no place for a machine's middle comes or goes
 * @param figures outside of it no figure changes
 * @param access inside of it places for a machine's middle must be right, so that figures are
 * @param input what is noded: all that has a say about the places
 */
record FloorWindow(BoxArea places, BoxArea figures, BoxArea access, BoxArea input) {
  /** Off any round dimension, so that no edge of a floor runs along a side. */
  private static final double ODD = 0.137;

  /** Sides move by so much at once, mm, so that what is dragged stays in one window a while. */
  static final double STEP = 500;

  /** The four boxes about one box in which something changes. */
  private record Boxes(Bounds places, Bounds figures, Bounds access, Bounds input) {
    static Boxes about(Bounds changed, double stands, double sweeps) {
      Bounds places = odd(stepped(changed.grown(stands)));
      Bounds figures = odd(places.grown(sweeps));
      Bounds access = odd(figures.grown(sweeps));
      return new Boxes(places, figures, access, odd(access.grown(stands)));
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

  /** Windows about the boxes in which something changes; what comes near shares one. */
  static List<FloorWindow> about(List<Bounds> changes, List<Machine> machines, double tolerance) {
    double stands = 0;
    double sweeps = 0;
    for (Machine m : machines) {
      double half = MachineReach.half(m);
      double room = Math.max(half, m.passage() / 2) + 1;
      double head = m.grinding().mm() / 2 + MachineReach.hug(m) + 4 * tolerance + 1;
      stands = Math.max(stands, room);
      sweeps = Math.max(sweeps, head);
    }
    List<Boxes> boxes = new ArrayList<>();
    for (Bounds change : new LinkedHashSet<>(changes)) {
      boxes.add(Boxes.about(change, stands, sweeps));
    }
    UnionFind near = new UnionFind(boxes.size());
    for (int i = 0; i < boxes.size(); i++) {
      for (int k = 0; k < i; k++) {
        if (boxes.get(i).access.meets(boxes.get(k).access)) {
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
        all(boxes, Boxes::figures),
        all(boxes, Boxes::access),
        all(boxes, Boxes::input));
  }

  private static BoxArea all(List<Boxes> boxes, Function<Boxes, Bounds> which) {
    return BoxArea.of(boxes.stream().map(which).toList());
  }
}
