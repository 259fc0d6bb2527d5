package slabwright.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.Stream;
import slabwright.shape.Bounds;
import slabwright.shape.FillRule;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Machine;
import slabwright.site.OutlineShape;

/**
 * Machine reach. The drivable floor is extended through each way in by a box as wide as the opening
 * is clear; where the body and its passing clearance p fit, in one piece with a box, it can roll.
 * It grinds from the places among them where it keeps its working clearance c to everything: those
 * dilated by half the grinding width are what is ground. A straight wall so keeps a strip of (body
 * − grinding) / 2 + c, and a gap of body + 2 p is passed, its own floor left to hand tools.
 *
 * <p>The body is first taken as a disc, which turns on the spot and fits wherever its width fits;
 * where its length is known, {@link BodyTurnOp} takes away what it does not get round to.
 */
public final class MachineReach {
  /** A gap exactly as wide as body and clearances lets the machine through; mm. */
  public static final double FIT = 0.01;

  /**
   * A machine that works closer to a wall than it rolls gets into a corner so many times deeper.
   */
  private static final double HUG = 2;

  /** Corners of 40° and wider are no necks: 1 / sin 20°. */
  private static final double CORNER = 3;

  private final FloorArea area;
  private final Region gross;
  private final Region drivable;
  private final double tolerance;
  private final Access access;
  private final BooleanSupplier cancelled;

  /** Which of the places where a machine would fit can be driven to. */
  interface Access {
    Region reached(Machine machine, Region fits, List<WayIn> waysIn);

    /** The places that lie so far inside of some room, as many of them as are asked about. */
    default Region inset(Region room, double mm, double tolerance) {
      return room.offset(-mm, tolerance);
    }

    /** The ways in with boxes of a depth in mm; {@code made} works them out. */
    default List<WayIn> waysIn(double depth, Supplier<List<WayIn>> made) {
      return made.get();
    }
  }

  MachineReach(
      FloorArea area, Region gross, Region drivable, double tolerance, BooleanSupplier cancelled) {
    this(area, gross, drivable, tolerance, (m, fits, in) -> fromWayIn(fits, in), cancelled);
  }

  MachineReach(
      FloorArea area,
      Region gross,
      Region drivable,
      double tolerance,
      Access access,
      BooleanSupplier cancelled) {
    this.access = access;
    this.cancelled = cancelled;
    this.area = area;
    this.gross = gross;
    this.drivable = drivable;
    this.tolerance = tolerance;
  }

  /**
   * What one machine sweeps, not yet clipped to the floor.
   *
   * @param rolls where the middle of its body can be as it drives
   * @param middle where it can be while it grinds
   * @param ground what its grinding head passes over
   * @param covered what lies under body and clearance, and two tolerances more: drawn just up to
   *     the wall, its arcs would now end short of it and now fall on it
   * @param lost middles that a disc of its width gets to, and its long body does not
   */
  record Sweep(
      Machine machine,
      Region rolls,
      Region middle,
      Region ground,
      Region covered,
      List<Region> lost) {}

  /** Two regions a machine, head and body, as {@link GrindingFaces} takes them. */
  static List<Region> swept(List<Sweep> sweeps) {
    return sweeps.stream().flatMap(s -> Stream.of(s.ground(), s.covered())).toList();
  }

  Sweep of(Machine machine) {
    BodyTurnOp.Reached turned = turned(machine);
    Region rolls = turned.middle();
    Region middle = grindsFrom(machine, rolls);
    Region covered = covered(middle, half(machine));
    Region necks = necks(machine, rolls, middle);
    return new Sweep(
        machine,
        rolls,
        middle,
        head(machine, middle),
        necks.isEmpty() ? covered : covered.unionLarge(covered(necks, half(machine))),
        turned.lost());
  }

  /** What its grinding head passes over, not yet clipped to the floor. */
  public Region head(Machine machine) {
    return head(machine, grindsFrom(machine));
  }

  /** Where the middle of its body can be while it grinds. */
  Region grindsFrom(Machine machine) {
    return grindsFrom(machine, turned(machine).middle());
  }

  private Region head(Machine machine, Region middle) {
    return middle.offset(machine.grinding().mm() / 2, tolerance);
  }

  /** Where it gets to: as a disc, then, when its length is known, as the rectangle that it is. */
  private BodyTurnOp.Reached turned(Machine machine) {
    double length = machine.travel().length().orElse(machine.body()).mm();
    return turned(machine, length);
  }

  /** The same for another length of its body, mm. */
  public BodyTurnOp.Reached turned(Machine machine, double length) {
    List<WayIn> waysIn = waysIn(rollingDepth(machine, length));
    Region room = extended(waysIn);
    Region fits = access.inset(room, machine.passage() / 2 - FIT, tolerance);
    Region rolls = access.reached(machine, fits, waysIn);
    List<Region> boxes = waysIn.stream().map(WayIn::box).toList();
    return new BodyTurnOp(room, rolls, boxes, cancelled)
        .of(machine.passage(), length + 2 * machine.passing().mm());
  }

  /** Where it works, of where it rolls: at its working clearance to everything. */
  private Region grindsFrom(Machine machine, Region rolls) {
    double more = machine.passing().mm() - machine.clearance().mm();
    Region room = extended(waysIn(workingDepth(machine)));
    Region keeps = access.inset(room, half(machine) - FIT, tolerance);
    return more > 0
        ? keeps.intersect(rolls.offset(HUG * more, tolerance))
        : reached(machine, keeps, rolls);
  }

  /** How deep the boxes outside the ways in are that a machine of unknown length is asked with. */
  static List<Double> depths(Machine machine) {
    return List.of(rollingDepth(machine, machine.body().mm()), workingDepth(machine));
  }

  private static double rollingDepth(Machine machine, double length) {
    double widest = Math.max(machine.clearance().mm(), machine.passing().mm());
    return Math.max(machine.body().mm(), length) + 2 * widest;
  }

  private static double workingDepth(Machine machine) {
    return machine.body().mm() + machine.clearance().mm();
  }

  /** Whole parts, drawn as they are, unless its length keeps it out of some. */
  private static Region reached(Machine machine, Region keeps, Region rolls) {
    Region parts = keeps.partsWhere(part -> part.meets(rolls));
    return machine.travel().length().isPresent() ? parts.intersect(rolls) : parts;
  }

  /** Where it rolls through between places to work at. */
  private Region necks(Machine machine, Region rolls, Region middle) {
    double more = machine.clearance().mm() - machine.passing().mm();
    return more > 0 ? rolls.minusLarge(middle.offset(CORNER * more, tolerance)) : Region.empty();
  }

  /**
   * In two steps: round what stands on the floor the middle runs on arcs of just this radius, which
   * one wider step would turn inside out, spoke by spoke.
   */
  private Region covered(Region middle, double half) {
    double within = Math.max(half - 2 * tolerance, half / 2);
    return middle.offset(within, tolerance).offset(half + 2 * tolerance - within, tolerance);
  }

  /** The same of what lies in and about the window alone; elsewhere its answers mean nothing. */
  public MachineReach about(Bounds window) {
    OutlineShape shape = OutlineShape.of(area.outline(), tolerance);
    // Boxes before doorways reach into it from beside it.
    Bounds beside = window.grown(Math.max(window.width(), window.height()));
    List<Doorway> near =
        area.doorways().stream().filter(d -> meets(shape.doorway(d), beside)).toList();
    return new MachineReach(
        area.withDoorways(near), gross, drivable.about(window), tolerance, cancelled);
  }

  private static boolean meets(Line opening, Bounds window) {
    return opening.points().size() > 1 && Bounds.of(opening.points()).meets(window);
  }

  /** The point nearest to a place where driving ends. */
  public Vec nearestObstacle(Vec place) {
    return drivable.nearestOnBoundary(place);
  }

  /** How far from a place that it rolls to it may work, mm. */
  static double hug(Machine machine) {
    return HUG * Math.max(0, machine.passing().mm() - machine.clearance().mm());
  }

  /** Half the width of what it works in: body and working clearance. */
  public static double half(Machine machine) {
    return machine.body().mm() / 2 + machine.clearance().mm();
  }

  /** Where the middle of a body gets to whose half width with clearance is {@code half}. */
  public Region middle(double half) {
    return middle(half, 2 * half);
  }

  /** Where it would fit, reached from a way in or not. */
  public Region anywhere(double half) {
    return extended(waysIn(2 * half)).offset(FIT - half, tolerance);
  }

  private Region middle(double half, double depth) {
    List<WayIn> waysIn = waysIn(depth);
    return fromWayIn(extended(waysIn).offset(FIT - half, tolerance), waysIn);
  }

  /** The parts of places for a body's middle that hang together with a way in. */
  public Region fromWayIn(Region middles, double half) {
    return fromWayIn(middles, waysIn(2 * half));
  }

  private static Region fromWayIn(Region middles, List<WayIn> waysIn) {
    return middles.partsWhere(part -> waysIn.stream().anyMatch(w -> part.meets(w.box())));
  }

  private List<WayIn> waysIn(double depth) {
    return access.waysIn(depth, () -> WayIn.of(area, gross, depth, tolerance));
  }

  private Region extended(List<WayIn> waysIn) {
    if (waysIn.isEmpty()) {
      return drivable;
    }
    List<Ring> rings = new ArrayList<>(drivable.rings());
    waysIn.forEach(w -> rings.addAll(w.box().rings()));
    return Region.of(rings, FillRule.NONZERO);
  }
}
