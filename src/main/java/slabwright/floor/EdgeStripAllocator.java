package slabwright.floor;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import slabwright.shape.ActiveLayers;
import slabwright.shape.Arrangement;
import slabwright.shape.Bounds;
import slabwright.shape.FillRule;
import slabwright.shape.Layer;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.site.Machine;

/**
 * Shares the edge strips out among the things they run along: each bit to the nearest, so that the
 * shares are disjoint and sum to all strips. Where opposite edges are closer to each other than a
 * machine is wide, and curves are tighter than that, a bit may go to the next nearest.
 */
public final class EdgeStripAllocator {
  /** So that rounding leaves out no bank that may be the nearest, mm. */
  private static final double SLACK = 1e-6;

  private final List<WorkingEdge> banks;
  private final List<Bounds> boxes;
  private final Region strips;
  private final double narrow;
  private final double wide;

  private EdgeStripAllocator(FloorTakeoff t) {
    banks = WorkingEdge.of(t);
    boxes = banks.stream().map(WorkingEdge::bounds).toList();
    strips =
        Region.union(
            t.asFound().pieces(HandWorkKind.EDGE_STRIP).stream()
                .map(HandWorkPiece::region)
                .toList());
    List<Machine> machines = t.area().machines();
    double slack = 4 * t.tolerance();
    narrow = slack + machines.stream().mapToDouble(Machine::strip).max().orElse(0);
    wide = slack + machines.stream().mapToDouble(MachineReach::half).max().orElse(0);
  }

  /** The strips of a floor as found: edges in their order, then trenches and trim. */
  public static List<EdgeStrip> allocate(FloorTakeoff takeoff) {
    return new EdgeStripAllocator(takeoff).shared();
  }

  private List<EdgeStrip> shared() {
    Map<Integer, List<Region>> shares = strips.isEmpty() ? Map.of() : shares();
    List<EdgeStrip> all = new ArrayList<>();
    for (int i = 0; i < banks.size(); i++) {
      WorkingEdge b = banks.get(i);
      Region region = Region.union(shares.getOrDefault(i, List.of()));
      all.add(new EdgeStrip(b.edge(), b.along(), b.length(), region));
    }
    return all;
  }

  private Map<Integer, List<Region>> shares() {
    int n = banks.size();
    MitredBands bands = new MitredBands(banks);
    List<Layer> layers = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      layers.add(new Layer(i, bands.of(banks.get(i), narrow), FillRule.NONZERO));
      layers.add(new Layer(n + i, bands.of(banks.get(i), wide), FillRule.NONZERO));
    }
    layers.add(Layer.of(2 * n, strips));
    Map<Integer, List<Region>> shares = new HashMap<>();
    Arrangement.of(layers)
        .partition(a -> a.contains(2 * n) ? Optional.of(nearest(a, n)) : Optional.empty())
        .forEach((bank, region) -> add(shares, bank, region));
    return shares;
  }

  /** The first of the narrow bands, else of the wide ones, that a face lies in; else -1. */
  private static int nearest(ActiveLayers active, int n) {
    int best = 2 * n;
    for (int id : active.ids()) {
      best = Math.min(best, id);
    }
    return best == 2 * n ? -1 : best % n;
  }

  private void add(Map<Integer, List<Region>> shares, int bank, Region region) {
    if (bank >= 0) {
      shares.computeIfAbsent(bank, k -> new ArrayList<>()).add(region);
      return;
    }
    for (Region part : region.parts()) {
      nearest(part).ifPresent(i -> shares.computeIfAbsent(i, k -> new ArrayList<>()).add(part));
    }
  }

  private OptionalInt nearest(Region part) {
    Vec place = part.labelPoint();
    OptionalInt nearest = OptionalInt.empty();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < boxes.size(); i++) {
      if (boxes.get(i).distanceTo(place) <= least + SLACK) {
        double distance = banks.get(i).distanceTo(place);
        if (nearest.isEmpty() || distance < least) {
          nearest = OptionalInt.of(i);
          least = distance;
        }
      }
    }
    return nearest;
  }

  /**
   * Bands along banks, on their left, mitred where two banks meet: the bisector is where the
   * nearest bank changes.
   */
  private static final class MitredBands {
    /** No mitre reaches farther along than this many widths. */
    private static final double SPIKE = 4;

    private final Map<Vec, List<Vec>> into = new HashMap<>();
    private final Map<Vec, List<Vec>> outOf = new HashMap<>();

    MitredBands(List<WorkingEdge> banks) {
      for (WorkingEdge b : banks) {
        for (Line line : b.lines()) {
          for (int i = 0; i + 1 < line.points().size(); i++) {
            Vec from = line.points().get(i);
            Vec to = line.points().get(i + 1);
            Vec way = to.minus(from).unit();
            outOf.computeIfAbsent(from, v -> new ArrayList<>()).add(way);
            into.computeIfAbsent(to, v -> new ArrayList<>()).add(way);
          }
        }
      }
    }

    /** One quadrilateral a segment. */
    List<Ring> of(WorkingEdge bank, double width) {
      List<Ring> rings = new ArrayList<>();
      for (Line line : bank.lines()) {
        for (int i = 0; i + 1 < line.points().size(); i++) {
          Vec from = line.points().get(i);
          Vec to = line.points().get(i + 1);
          Vec way = to.minus(from).unit();
          Vec start = from.plus(mitre(into.get(from), way, width));
          Vec end = to.plus(mitre(outOf.get(to), way, width));
          if (end.minus(start).dot(way) > 0) {
            rings.add(new Ring(List.of(from, to, end, start)));
          }
        }
      }
      return rings;
    }

    /** From a corner to the corner of the band; square where several banks meet or none does. */
    private static Vec mitre(List<Vec> others, Vec way, double width) {
      Vec square = way.left().times(width);
      if (others == null || others.size() != 1) {
        return square;
      }
      Vec sum = way.left().plus(others.get(0).left());
      double half = sum.dot(sum) / 2;
      return half < 2 / (SPIKE * SPIKE) ? square : sum.times(width / half);
    }
  }
}
