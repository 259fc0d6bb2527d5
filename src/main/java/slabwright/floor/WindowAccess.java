package slabwright.floor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import slabwright.shape.BoxArea;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.site.Machine;

/**
 * Which places in a window are driven to, known from where its sides are: beyond the box in which
 * places come and go the floor is as it was, and what was reached there still is, as long as the
 * ways through that box join the same gates as before.
 */
final class WindowAccess implements MachineReach.Access {
  /** Nearer than this two gates are the same one, mm. */
  private static final double SAME = 0.01;

  /** A straight stretch of a window's side where a machine's middle can pass. */
  record Gate(Vec from, Vec to, int room, boolean reached) {
    Vec middle() {
      return from.towards(to, 0.5);
    }

    boolean isAt(Gate o) {
      return from.distanceTo(o.from) < SAME && to.distanceTo(o.to) < SAME;
    }
  }

  /** A way in that opens into a room. */
  record Door(String id, int room) {}

  /**
   * How the places for one machine's middle hang together where they come and go, in numbered
   * rooms.
   *
   * @param count how many rooms there are
   * @param torn whether of what hangs together some is reached and some is not
   */
  record Rooms(Machine machine, int count, List<Gate> gates, List<Door> doors, boolean torn) {
    /** Whether the gates are at the same places, so that they can be told one by one. */
    boolean hasGatesOf(Rooms o) {
      return gates.size() == o.gates.size()
          && IntStream.range(0, gates.size()).allMatch(i -> gates.get(i).isAt(o.gates.get(i)));
    }

    Optional<Door> door(String id) {
      return doors.stream().filter(d -> d.id.equals(id)).findFirst();
    }
  }

  private final FloorWindow window;
  private final LocalTakeoff.Whole whole;
  private final List<Rooms> seen = new ArrayList<>();

  WindowAccess(FloorWindow window, LocalTakeoff.Whole whole) {
    this.window = window;
    this.whole = whole;
  }

  @Override
  public List<WayIn> waysIn(double depth, Supplier<List<WayIn>> made) {
    return whole.waysIn(depth).stream()
        .filter(w -> window.input().meets(w.box().bounds()))
        .toList();
  }

  @Override
  public Region inset(Region room, double mm, double tolerance) {
    return room.offset(-mm, tolerance, window.access());
  }

  /** Of every machine, in the order in which they were asked about. */
  List<Rooms> rooms() {
    return List.copyOf(seen);
  }

  @Override
  public Region reached(Machine machine, Region fits, List<WayIn> waysIn) {
    Survey survey = new Survey(machine, waysIn);
    Region reached = fits.partsWhere(survey::isReached);
    seen.add(survey.rooms());
    return reached;
  }

  /** Goes through the parts of where a machine fits. */
  private final class Survey {
    private final Machine machine;
    private final List<WayIn> waysIn;
    private final List<Gate> gates = new ArrayList<>();
    private final List<Door> doors = new ArrayList<>();
    private boolean torn;
    private int number;

    Survey(Machine machine, List<WayIn> waysIn) {
      this.machine = machine;
      this.waysIn = waysIn;
    }

    boolean isReached(Region piece) {
      List<Gate> its = new ArrayList<>();
      boolean same = window.access().equals(window.places());
      if (!same) {
        its.addAll(gates(window.access(), machine, piece, -1));
      }
      for (Region room : same ? List.of(piece) : within(window.places(), piece)) {
        List<Gate> open = gates(window.places(), machine, room, number);
        its.addAll(open);
        gates.addAll(open);
        doors.addAll(doors(room, waysIn, number));
        number++;
      }
      boolean reached = its.stream().anyMatch(Gate::reached) || !doors(piece, waysIn, -1).isEmpty();
      torn |= reached && !its.stream().allMatch(Gate::reached);
      return reached;
    }

    Rooms rooms() {
      gates.sort(
          Comparator.comparingDouble((Gate g) -> g.from().x())
              .thenComparingDouble(g -> g.from().y())
              .thenComparingDouble(g -> g.to().x())
              .thenComparingDouble(g -> g.to().y()));
      return new Rooms(machine, number, List.copyOf(gates), List.copyOf(doors), torn);
    }
  }

  private static List<Region> within(BoxArea box, Region part) {
    if (!box.meets(part.bounds())) {
      return List.of();
    }
    return box.surelyHolds(part.bounds()) ? List.of(part) : part.intersect(box.region()).parts();
  }

  private static List<Door> doors(Region room, List<WayIn> waysIn, int number) {
    return waysIn.stream()
        .filter(w -> room.meets(w.box()))
        .map(w -> new Door(w.doorway().id(), number))
        .toList();
  }

  private List<Gate> gates(BoxArea box, Machine machine, Region room, int number) {
    List<Gate> gates = new ArrayList<>();
    for (Ring ring : room.rings()) {
      List<Vec> p = ring.points();
      for (int i = 0; i < p.size(); i++) {
        Vec from = p.get(i);
        Vec to = p.get((i + 1) % p.size());
        if (box.hasOnSide(from, to, SAME / 100)) {
          gates.add(
              new Gate(from, to, number, whole.before().isReached(machine, from.towards(to, 0.5))));
        }
      }
    }
    return gates;
  }
}
