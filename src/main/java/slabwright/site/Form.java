package slabwright.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import slabwright.shape.Arcs;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.units.Length;
import slabwright.units.SortedCopy;

/** The outline of a mark as the person gave it; arcs stay arcs until a tolerance is known. */
public sealed interface Form {
  /** No bend of a strip sticks out farther, in its widths. */
  double MITRE = 4;

  /** The area covered, arcs flattened within {@code tolerance} mm; empty for lines and places. */
  Region region(double tolerance);

  /** The points as given: corners, path or middle. */
  List<Spot> spots();

  /**
   * Its lengths by name; each must be more than 0. Radii of rounded corners may be 0 and are not
   * among them.
   */
  default Map<String, Length> sizes() {
    return Map.of();
  }

  /** A box that holds all of it, not the smallest: cheap, to tell what lies far away. */
  default Bounds room() {
    double sizes = sizes().values().stream().mapToDouble(Length::mm).sum();
    return Bounds.of(spots().stream().map(Spot::vec).toList()).grown(MITRE * sizes);
  }

  /** How many points it needs at least. */
  default int fewestSpots() {
    return 1;
  }

  /** The same form with every given point moved by {@code how}; sizes stay. */
  Form map(Move how);

  /** Straight sides between corners, in order. */
  record Polygon(List<Spot> corners) implements Form {
    public Polygon {
      corners = List.copyOf(corners);
    }

    @Override
    public Region region(double tolerance) {
      return Region.of(new Ring(vecs(corners)));
    }

    @Override
    public int fewestSpots() {
      return 3;
    }

    @Override
    public List<Spot> spots() {
      return corners;
    }

    @Override
    public Form map(Move how) {
      return new Polygon(how.spots(corners));
    }
  }

  /** Sides between corners, each straight or an arc. */
  record Curved(List<CurvedCorner> corners) implements Form {
    public Curved {
      corners = List.copyOf(corners);
    }

    @Override
    public Region region(double tolerance) {
      List<Vec> points = new ArrayList<>();
      for (int i = 0; i < corners.size(); i++) {
        Vec next = corners.get((i + 1) % corners.size()).at().vec();
        CurvedCorner c = corners.get(i);
        points.addAll(Arcs.arc(c.at().vec(), next, c.rise().mm(), tolerance));
      }
      return Region.of(new Ring(points));
    }

    @Override
    public Bounds room() {
      double rise = corners.stream().mapToDouble(c -> Math.abs(c.rise().mm())).max().orElse(0);
      return Form.super.room().grown(rise);
    }

    @Override
    public int fewestSpots() {
      return 2;
    }

    @Override
    public List<Spot> spots() {
      return corners.stream().map(CurvedCorner::at).toList();
    }

    @Override
    public Form map(Move how) {
      return new Curved(
          corners.stream().map(c -> new CurvedCorner(how.spot(c.at()), c.rise())).toList());
    }
  }

  /**
   * A corner and the rise of the side that follows.
   *
   * @param rise height of the arc over its chord, positive to the right of travel
   */
  record CurvedCorner(Spot at, Length rise) {}

  /** A form about its middle with a length and a width. */
  sealed interface Box extends Form {
    Spot middle();

    Length length();

    Length width();

    @Override
    default Map<String, Length> sizes() {
      return SortedCopy.of(Map.of("length", length(), "width", width()));
    }

    @Override
    default List<Spot> spots() {
      return List.of(middle());
    }
  }

  /**
   * A rectangle about its middle.
   *
   * @param corner radius of its rounded corners, 0 for square ones
   * @param turn degrees counter-clockwise
   */
  record Rectangle(Spot middle, Length length, Length width, Length corner, double turn)
      implements Box {
    @Override
    public Region region(double tolerance) {
      double angle = Math.toRadians(turn);
      return Region.of(
          Arcs.rounded(middle.vec(), length.mm(), width.mm(), corner.mm(), angle, tolerance));
    }

    @Override
    public Form map(Move how) {
      return new Rectangle(how.spot(middle), length, width, corner, turn + how.turn());
    }
  }

  /** A strip with half-round ends, {@code length} over all. */
  record RoundEnded(Spot middle, Length length, Length width, double turn) implements Box {
    @Override
    public Region region(double tolerance) {
      double r = width.mm() / 2;
      double angle = Math.toRadians(turn);
      return Region.of(Arcs.rounded(middle.vec(), length.mm(), width.mm(), r, angle, tolerance));
    }

    @Override
    public Form map(Move how) {
      return new RoundEnded(how.spot(middle), length, width, turn + how.turn());
    }
  }

  /** A full circle. */
  record Circle(Spot middle, Length radius) implements Form {
    @Override
    public Region region(double tolerance) {
      return Region.of(Arcs.circle(middle.vec(), radius.mm(), tolerance));
    }

    @Override
    public Map<String, Length> sizes() {
      return Map.of("radius", radius);
    }

    @Override
    public List<Spot> spots() {
      return List.of(middle);
    }

    @Override
    public Form map(Move how) {
      return new Circle(how.spot(middle), radius);
    }
  }

  /** A strip of a width along a path, as trenches are cut; square ends, mitred bends. */
  record Strip(List<Spot> path, Length width) implements Form {
    public Strip {
      path = List.copyOf(path);
    }

    @Override
    public Region region(double tolerance) {
      return Region.strip(new Line(vecs(path)), width.mm() / 2);
    }

    @Override
    public int fewestSpots() {
      return 2;
    }

    @Override
    public Map<String, Length> sizes() {
      return Map.of("width", width);
    }

    @Override
    public List<Spot> spots() {
      return path;
    }

    @Override
    public Form map(Move how) {
      return new Strip(how.spots(path), width);
    }
  }

  /** A line without width. */
  record Trace(List<Spot> path) implements Form {
    public Trace {
      path = List.copyOf(path);
    }

    @Override
    public Region region(double tolerance) {
      return Region.empty();
    }

    @Override
    public int fewestSpots() {
      return 2;
    }

    @Override
    public List<Spot> spots() {
      return path;
    }

    @Override
    public Form map(Move how) {
      return new Trace(how.spots(path));
    }
  }

  /** A single place. */
  record Place(Spot at) implements Form {
    @Override
    public Region region(double tolerance) {
      return Region.empty();
    }

    @Override
    public List<Spot> spots() {
      return List.of(at);
    }

    @Override
    public Form map(Move how) {
      return new Place(how.spot(at));
    }
  }

  private static List<Vec> vecs(List<Spot> spots) {
    return spots.stream().map(Spot::vec).toList();
  }
}
