package slabwright.floor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import slabwright.shape.Bounds;
import slabwright.shape.FillRule;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.shape.ints.UnionFind;

/**
 * Where a long body gets to of what a disc of its width reaches. Where a disc over its diagonal
 * fits, it turns on the spot. In the narrow places between, its free places are worked out heading
 * by heading: the floor less its walls grown by the turned rectangle (Minkowski sums, exact).
 * Places of neighbouring headings that overlap are linked; where a link is in doubt, headings
 * between are tried. A floor with no narrow place costs one offset.
 *
 * <p>The error of a link is the sagitta of a corner between two headings, under 0.3 mm for bodies
 * up to 2 m; a way that needs less than about 1 mm of play may be missed.
 */
public final class BodyTurnOp {
  /** Headings 3° apart, and those of the walls. */
  private static final double STEP = Math.PI / 60;

  /** Where a link is in doubt, headings as near as this are tried. */
  private static final double FINEST = STEP / 16;

  /** Corners of 84° and wider are no narrow places: 1 / sin 42°. */
  private static final double CORNER = 1.5;

  /** What is left of a floor by rounding, mm. */
  private static final double CRUMB = 5;

  /** Slivers between the places of neighbouring headings, mm. */
  private static final double HAIR = 0.5;

  /** Offsets of what is only looked at, not drawn, mm. */
  private static final double COARSE = 2;

  /** The free places of one heading within one narrow place, and those that are reached. */
  private record Slice(double heading, boolean aligned, List<Region> parts, int first) {}

  /** A narrow place with what stands round it. */
  private record Window(Region middles, List<Line> walls) {}

  /**
   * What is reached.
   *
   * @param middle of the disc's middles those that the body's own middle line gets over
   * @param lost the pieces of floor for middles that it does not get to, though a disc would
   */
  public record Reached(Region middle, List<Region> lost) {}

  private final Region room;
  private final Region rolls;
  private final List<Region> boxes;
  private final BooleanSupplier cancelled;
  private double length;
  private double width;
  private List<Region> open = List.of();
  private final List<int[]> links = new ArrayList<>();
  private final List<Boolean> seeds = new ArrayList<>();
  private final List<Region> nodes = new ArrayList<>();
  private boolean[] reached = {};

  /**
   * A floor.
   *
   * @param room that the body may cover, with the boxes outside the ways in
   * @param rolls where the middle of a disc of the body's width gets to
   * @param boxes where it comes from
   */
  BodyTurnOp(Region room, Region rolls, List<Region> boxes, BooleanSupplier cancelled) {
    this.room = room;
    this.rolls = rolls;
    this.boxes = List.copyOf(boxes);
    this.cancelled = cancelled;
  }

  /** What a body with its clearances, mm, reaches. */
  Reached of(double bodyWidth, double bodyLength) {
    width = bodyWidth - 2 * MachineReach.FIT;
    length = bodyLength - 2 * MachineReach.FIT;
    if (length <= width || rolls.isEmpty()) {
      return new Reached(rolls, List.of());
    }
    double half = Math.hypot(length, width) / 2;
    double near = CORNER * (half - width / 2);
    open = room.offset(-half, COARSE / 4).parts().stream().filter(rolls::meets).toList();
    Region narrow = narrow(near);
    if (narrow.isEmpty()) {
      return new Reached(rolls, List.of());
    }
    Region around = narrow.offset(near + width / 10 + CRUMB, COARSE).intersect(rolls);
    List<Window> windows = around.parts().stream().map(this::window).toList();
    open.forEach(this::addNode);
    List<List<Slice>> all = new ArrayList<>();
    for (Window w : windows) {
      all.add(slices(w));
    }
    reach();
    for (int i = 0; i < windows.size(); i++) {
      refine(windows.get(i), all.get(i));
    }
    return read(narrow.intersect(rolls), all);
  }

  /** Where the body cannot turn, and where two places that it turns in come near to each other. */
  private Region narrow(double near) {
    List<Region> grown = open.stream().map(o -> o.offset(near, COARSE)).toList();
    List<Region> parts = new ArrayList<>();
    parts.add(rolls.minus(Region.union(grown)));
    for (int i = 0; i < grown.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (grown.get(i).meets(grown.get(j))) {
          parts.add(grown.get(i).intersect(grown.get(j)).intersect(rolls));
        }
      }
    }
    return Region.union(parts);
  }

  private Window window(Region middles) {
    Bounds b = middles.bounds().grown(Math.hypot(length, width) / 2 + 1);
    List<Line> walls = new ArrayList<>();
    for (Ring ring : room.rings()) {
      List<Vec> p = ring.points();
      for (int i = 0; i < p.size(); i++) {
        Line wall = Line.of(p.get(i), p.get((i + 1) % p.size()));
        if (meets(b, wall)) {
          walls.add(wall);
        }
      }
    }
    return new Window(middles, walls);
  }

  private static boolean meets(Bounds b, Line wall) {
    Vec p = wall.points().get(0);
    Vec q = wall.points().get(1);
    return Math.max(p.x(), q.x()) >= b.minX()
        && Math.min(p.x(), q.x()) <= b.maxX()
        && Math.max(p.y(), q.y()) >= b.minY()
        && Math.min(p.y(), q.y()) <= b.maxY();
  }

  private int addNode(Region part) {
    nodes.add(part);
    seeds.add(boxes.stream().anyMatch(part::meets));
    return nodes.size() - 1;
  }

  private List<Slice> slices(Window w) {
    TreeSet<Double> headings = new TreeSet<>();
    TreeSet<Double> aligned = new TreeSet<>();
    for (double h = 0; h < Math.PI - STEP / 2; h += STEP) {
      headings.add(h);
    }
    for (Line wall : w.walls()) {
      if (wall.length() > width / 4) {
        double along = wall.points().get(1).minus(wall.points().get(0)).angle();
        aligned.add(folded(along));
        aligned.add(folded(along + Math.PI / 2));
      }
    }
    headings.addAll(aligned);
    List<Slice> slices = new ArrayList<>();
    for (double h : headings) {
      if (slices.isEmpty() || h - slices.get(slices.size() - 1).heading() > 1e-9) {
        slices.add(slice(w, h, aligned.contains(h)));
      }
    }
    for (int i = 0; i < slices.size(); i++) {
      link(slices.get(i), slices.get((i + 1) % slices.size()));
    }
    return slices;
  }

  /** Turned by half a turn the body is the same. */
  private static double folded(double angle) {
    double a = angle % Math.PI;
    double up = a < 0 ? a + Math.PI : a;
    return up > Math.PI - 1e-9 ? 0 : up;
  }

  private Slice slice(Window w, double heading, boolean aligned) {
    if (cancelled.getAsBoolean()) {
      throw new CancellationException();
    }
    Vec fore = new Vec(Math.cos(heading), Math.sin(heading)).times(length / 2);
    Vec side = fore.left().unit().times(width / 2);
    List<Ring> shut = w.walls().stream().map(l -> Hull.of(l.points(), fore, side)).toList();
    List<Region> parts =
        w.middles().minus(Region.of(shut, FillRule.NONZERO)).parts().stream()
            .filter(p -> p.area() > 0)
            .toList();
    Slice slice = new Slice(heading, aligned, parts, nodes.size());
    for (Region part : parts) {
      int n = addNode(part);
      for (int i = 0; i < open.size(); i++) {
        if (open.get(i).meets(part)) {
          links.add(new int[] {i, n});
        }
      }
    }
    return slice;
  }

  private void link(Slice a, Slice b) {
    for (int i = 0; i < a.parts().size(); i++) {
      for (int j = 0; j < b.parts().size(); j++) {
        if (a.parts().get(i).meets(b.parts().get(j))) {
          links.add(new int[] {a.first() + i, b.first() + j});
        }
      }
    }
  }

  /** What hangs together with a way in. */
  private void reach() {
    UnionFind sets = new UnionFind(nodes.size());
    links.forEach(l -> sets.join(l[0], l[1]));
    Set<Integer> roots = new HashSet<>();
    for (int i = 0; i < nodes.size(); i++) {
      if (seeds.get(i)) {
        roots.add(sets.root(i));
      }
    }
    reached = new boolean[nodes.size()];
    for (int i = 0; i < reached.length; i++) {
      reached[i] = roots.contains(sets.root(i));
    }
  }

  /**
   * Tries headings between two where one has a place that is reached and the other one that is not.
   */
  private void refine(Window w, List<Slice> slices) {
    boolean again = true;
    while (again) {
      again = false;
      for (int i = 0; i < slices.size(); i++) {
        Slice a = slices.get(i);
        Slice b = slices.get((i + 1) % slices.size());
        double end = b.heading() > a.heading() ? b.heading() : b.heading() + Math.PI;
        if (end - a.heading() > FINEST && isInDoubt(a, b, end - a.heading())) {
          Slice between = slice(w, folded((a.heading() + end) / 2), false);
          link(a, between);
          link(between, b);
          slices.add(i + 1, between);
          reach();
          again = true;
        }
      }
    }
  }

  private boolean isInDoubt(Slice a, Slice b, double turn) {
    double shift = turn * length / 2 + CRUMB;
    return IntStream.range(0, a.parts().size())
        .anyMatch(
            i ->
                IntStream.range(0, b.parts().size())
                    .anyMatch(
                        j ->
                            reached[a.first() + i] != reached[b.first() + j]
                                && isNear(a.parts().get(i), b.parts().get(j), shift)));
  }

  private static boolean isNear(Region a, Region b, double shift) {
    Bounds grown = a.bounds().grown(shift);
    Bounds other = b.bounds();
    return grown.minX() <= other.maxX()
        && other.minX() <= grown.maxX()
        && grown.minY() <= other.maxY()
        && other.minY() <= grown.maxY();
  }

  /** Beside where it turns it gets to all places or to none; the narrow ones are swept. */
  private Reached read(Region narrow, List<List<Slice>> windows) {
    List<Region> gone = new ArrayList<>();
    List<Region> asked = new ArrayList<>(narrow.parts());
    for (Region rest : rolls.minus(narrow).parts()) {
      int[] turns = IntStream.range(0, open.size()).filter(i -> open.get(i).meets(rest)).toArray();
      if (turns.length == 0) {
        asked.add(rest);
      } else if (IntStream.of(turns).noneMatch(i -> reached[i])) {
        gone.add(rest);
      }
    }
    Region all = Region.union(asked);
    Region left = all;
    for (Slice s : alignedFirst(windows)) {
      for (int i = 0; i < s.parts().size() && !left.isEmpty(); i++) {
        if (reached[s.first() + i] && isNear(s.parts().get(i), left, length / 2)) {
          left = left.minus(swept(s.parts().get(i), s.heading()).offset(HAIR, HAIR / 2));
        }
      }
    }
    gone.addAll(left.minus(all.minus(left).offset(CRUMB, COARSE)).parts());
    if (gone.isEmpty()) {
      return new Reached(rolls, gone);
    }
    Region lost = Region.union(gone);
    return new Reached(rolls.minus(lost), lost.parts());
  }

  /** Along walls a body covers most, so little is left for the other headings. */
  private static List<Slice> alignedFirst(List<List<Slice>> windows) {
    return windows.stream()
        .flatMap(List::stream)
        .sorted(Comparator.comparing(Slice::aligned).reversed())
        .toList();
  }

  /** Where a disc of the body's width passes within the body, from its tail to its nose. */
  private Region swept(Region part, double heading) {
    Vec fore = new Vec(Math.cos(heading), Math.sin(heading)).times((length - width) / 2);
    List<Ring> swept = new ArrayList<>(part.shells());
    for (Ring ring : part.rings()) {
      List<Vec> p = ring.points();
      for (int i = 0; i < p.size(); i++) {
        swept.add(Hull.of(List.of(p.get(i), p.get((i + 1) % p.size())), fore, Vec.ZERO));
      }
    }
    return Region.of(swept, FillRule.NONZERO);
  }
}
