package slabwright.floor;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import slabwright.shape.Region;
import slabwright.site.EdgeClass;
import slabwright.site.FloorArea;
import slabwright.site.MarkType;
import slabwright.units.Refusal;
import slabwright.units.SortedCopy;

/**
 * The take-off of one floor area: a pure function of it and of a tolerance. All areas in mm²,
 * lengths in mm, the frame is the site's.
 *
 * @param gross the inside of the outline
 * @param net what of it is floor: gross less what stands on it
 * @param zones disjoint parts of the net floor, the old slab first, then marks in their order
 * @param standing what stands on the floor, in the marks' order
 * @param edges where the net floor ends; together its boundary
 * @param transitions where zones meet
 * @param tally the edges counted
 * @param ground the floor to be ground: net floor less what nobody grinds (masked trim), with what
 *     machines sweep noded into it
 * @param asFound who grinds what while proud and low trenches keep the machine off
 * @param levelled who grinds what once all trenches are level
 */
public record FloorTakeoff(
    FloorArea area,
    double tolerance,
    Region gross,
    Region net,
    List<Zone> zones,
    List<Obstacle> standing,
    List<Edge> edges,
    List<Transition> transitions,
    EdgeTally tally,
    Region ground,
    GrindingSplit asFound,
    GrindingSplit levelled,
    List<FloorNote> notes,
    List<Refusal> refusals) {
  /** Fine enough for floors, in mm. */
  public static final double TOLERANCE = 0.5;

  /** Edges that nobody cuts in along, unless a product says otherwise. */
  public static final Set<EdgeClass> NOT_CUT_IN =
      SortedCopy.of(EnumSet.of(EdgeClass.DOORWAY, EdgeClass.OPEN_EDGE));

  /** Whether somebody has chosen how deep it is ground; else no pass of the field is planned. */
  public boolean isGrindingChosen() {
    return area.finish().exposure().isPresent();
  }

  public FloorTakeoff {
    zones = List.copyOf(zones);
    standing = List.copyOf(standing);
    edges = List.copyOf(edges);
    transitions = List.copyOf(transitions);
    notes = List.copyOf(notes);
    refusals = List.copyOf(refusals);
  }

  /** All else follows from the floor area and the tolerance. */
  @Override
  public boolean equals(Object o) {
    return o == this
        || (o instanceof FloorTakeoff t && tolerance == t.tolerance && area.equals(t.area));
  }

  @Override
  public int hashCode() {
    return area.hashCode();
  }

  /** The take-off within the usual tolerance. */
  public static FloorTakeoff of(FloorArea area) {
    return of(area, TOLERANCE, () -> false);
  }

  /**
   * The take-off with arcs flattened within {@code tolerance} mm.
   *
   * @throws CancellationException when {@code cancelled} turned true
   */
  public static FloorTakeoff of(FloorArea area, double tolerance, BooleanSupplier cancelled) {
    FloorArrangement bare = new FloorArrangement(area, tolerance, cancelled);
    GrindingOp asFound = new GrindingOp(bare, false, tolerance, cancelled);
    GrindingOp levelled = new GrindingOp(bare, true, tolerance, cancelled);
    List<MachineReach.Sweep> before = asFound.sweeps();
    boolean stopped = asFound.isStopped();
    List<MachineReach.Sweep> after = stopped ? levelled.sweeps() : List.of();
    FloorArrangement plan =
        bare.withSweeps(
            MachineReach.swept(Stream.concat(before.stream(), after.stream()).toList()), cancelled);
    GrindingSplit found = asFound.compute(plan, before, 0);
    return read(
        bare,
        plan.floorOf(new GrindingRules(plan, true)::isGround),
        tolerance,
        found,
        stopped ? levelled.compute(plan, after, 2 * before.size()) : found);
  }

  /**
   * All but the grinding is read off the floor as it is without machines: where a sweep crosses an
   * edge hard by a corner, noding moves the edge by a step or two of the grid.
   */
  private static FloorTakeoff read(
      FloorArrangement plan,
      Region ground,
      double tolerance,
      GrindingSplit asFound,
      GrindingSplit levelled) {
    EdgeClassifier edges = new EdgeClassifier(plan);
    Region gross = plan.gross();
    FloorValidator notes = new FloorValidator(plan, gross);
    List<Zone> zones = new ArrayList<>();
    List<Obstacle> standing = new ArrayList<>();
    for (Map.Entry<Integer, Region> owned : new TreeMap<>(plan.owners()).entrySet()) {
      int owner = owned.getKey();
      if (plan.isObstacle(owner)) {
        standing.add(new Obstacle(plan.mark(owner), owned.getValue()));
      } else {
        zones.add(
            new Zone(
                owner == FloorArrangement.SLAB ? Optional.empty() : Optional.of(plan.mark(owner)),
                owned.getValue()));
      }
    }
    Region net = plan.floorOf(o -> true);
    List<Transition> transitions = edges.transitions();
    return new FloorTakeoff(
        plan.area(),
        tolerance,
        gross,
        net,
        zones,
        standing,
        edges.edges(),
        transitions,
        EdgeTally.of(plan.area(), net, transitions),
        ground,
        asFound,
        levelled,
        notes.notes(),
        notes.refusals());
  }

  /** Length in mm of the edges of one class. */
  public double edgeLength(EdgeClass kind) {
    return edges.stream().filter(e -> e.kind() == kind).mapToDouble(Edge::length).sum();
  }

  /** Length in mm of all edges. */
  public double edgeLength() {
    return Edge.length(edges);
  }

  /** Length in mm painted by brush or small roller before rolling. */
  public double cutIn() {
    return cutIn(NOT_CUT_IN);
  }

  /** The same for a product that leaves out these classes. */
  public double cutIn(Set<EdgeClass> leftOut) {
    return Edge.cutIn(edges, leftOut);
  }

  /** Area in mm² of all zones of marks of one kind. */
  public double zoneArea(MarkType type) {
    return zones.stream()
        .filter(z -> z.mark().filter(m -> m.kind().type() == type).isPresent())
        .mapToDouble(Zone::area)
        .sum();
  }

  /** Area in mm² of floor under no mark. */
  public double slabArea() {
    return zones.stream().filter(z -> z.mark().isEmpty()).mapToDouble(Zone::area).sum();
  }
}
