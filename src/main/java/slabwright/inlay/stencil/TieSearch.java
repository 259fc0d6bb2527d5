package slabwright.inlay.stencil;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/** One search for the ties of a stencil. Parts of the mask are known by their index. */
final class TieSearch {
  private static final double APART = Math.PI / 2;

  /** A tie's strip runs on into the mask by more than this, mm. */
  private static final double NEAR_ENOUGH = 0.05;

  private final List<MaskPart> parts;
  private final boolean[] rim;
  private final int[] group;
  private final double width;
  private final List<Tie> ties = new ArrayList<>();

  TieSearch(Stencil stencil, Bounds blank, double width) {
    List<Region> regions = stencil.mask().parts();
    this.parts = regions.stream().map(r -> new MaskPart(r.simplified(NEAR_ENOUGH))).toList();
    this.rim = new boolean[parts.size()];
    this.group = IntStream.range(0, parts.size()).toArray();
    this.width = width;
    for (int i = 0; i < rim.length; i++) {
      rim[i] = TiePlan.reachesRim(regions.get(i).bounds(), blank);
    }
  }

  List<Tie> ties() {
    for (int i = 0; i < parts.size(); i++) {
      if (!rim[i]) {
        pair(i);
      }
    }
    for (int i = 0; i < parts.size(); i++) {
      while (!rim[i] && !isHeld(i) && reachOut(i)) {
        // each turn joins the group to one more part
      }
    }
    return ties;
  }

  /** A possible tie and the part it leads to. */
  private record Way(Vec from, Vec to, int target, double angle) {
    double length() {
      return from.distanceTo(to);
    }
  }

  private void pair(int piece) {
    List<Way> ways = ways(piece, i -> i != piece && !parts.get(piece).encloses(parts.get(i)));
    Way[] best = null;
    double bestApart = 0;
    double bestLength = Double.POSITIVE_INFINITY;
    for (int i = 0; i < ways.size(); i++) {
      for (int j = 0; j < i; j++) {
        double apart = Math.min(APART, apart(ways.get(i).angle, ways.get(j).angle));
        double length = ways.get(i).length() + ways.get(j).length();
        if (apart > bestApart + 1e-9 || (apart > bestApart - 1e-9 && length < bestLength)) {
          best = new Way[] {ways.get(i), ways.get(j)};
          bestApart = apart;
          bestLength = length;
        }
      }
    }
    if (best != null) {
      add(piece, best[0]);
      add(piece, best[1]);
    }
  }

  /** Ties the group of a piece to the nearest part outside it; false when there is none. */
  private boolean reachOut(int piece) {
    Way shortest = null;
    int owner = piece;
    for (int i = 0; i < parts.size(); i++) {
      if (find(i) == find(piece)) {
        Optional<Way> way =
            ways(i, j -> find(j) != find(piece)).stream()
                .min(Comparator.comparingDouble(Way::length));
        if (way.isPresent() && (shortest == null || way.get().length() < shortest.length())) {
          shortest = way.get();
          owner = i;
        }
      }
    }
    if (shortest == null) {
      return false;
    }
    add(owner, shortest);
    return true;
  }

  private List<Way> ways(int piece, java.util.function.IntPredicate allowed) {
    Vec middle = parts.get(piece).centroid();
    List<Way> ways = new ArrayList<>();
    for (Vec from : parts.get(piece).samples()) {
      Way nearest = null;
      for (int i = 0; i < parts.size(); i++) {
        double most = nearest == null ? Double.POSITIVE_INFINITY : nearest.length();
        if (parts.get(i).mayBeNearer(from, most) && allowed.test(i)) {
          Vec to = parts.get(i).nearest(from);
          if (from.distanceTo(to) < most && !from.equals(to)) {
            nearest = new Way(from, to, i, from.minus(middle).angle());
          }
        }
      }
      if (nearest != null) {
        ways.add(nearest);
      }
    }
    return ways;
  }

  private void add(int piece, Way way) {
    ties.add(new Tie(way.from, way.to, width));
    group[find(piece)] = find(way.target);
  }

  private boolean isHeld(int piece) {
    return IntStream.range(0, rim.length).anyMatch(i -> rim[i] && find(i) == find(piece));
  }

  private int find(int i) {
    int at = i;
    while (group[at] != at) {
      at = group[at];
    }
    return at;
  }

  private static double apart(double a, double b) {
    double d = Math.abs(a - b) % (2 * Math.PI);
    return Math.min(d, 2 * Math.PI - d);
  }
}
