package slabwright.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.function.Predicate;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.DistanceOp;
import org.locationtech.jts.operation.linemerge.LineMerger;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;

/**
 * A closed area of the plane, in millimetres on the grid: any number of parts, each with any number
 * of holes. Immutable; set operations return new regions. Equal when they cover the same points.
 */
public final class Region {
  private static final Region EMPTY = new Region(Jts.FACTORY.createPolygon());

  private final Geometry geometry;

  /** Its index is made when a point is first asked about. */
  private final IndexedPointInAreaLocator locator;

  private Region(Geometry geometry) {
    this.geometry = geometry;
    locator = new IndexedPointInAreaLocator(geometry);
  }

  /** Wraps a valid polygonal geometry that already lies on the grid. */
  static Region wrap(Geometry polygonal) {
    return polygonal.isEmpty() ? EMPTY : new Region(polygonal);
  }

  Geometry geometry() {
    return geometry;
  }

  public static Region empty() {
    return EMPTY;
  }

  /** What one ring encloses, self-crossing and wrongly directed rings included. */
  public static Region of(Ring ring) {
    return of(List.of(ring), FillRule.NONZERO);
  }

  /** What the rings together enclose by the rule: the winding numbers of all rings add. */
  public static Region of(Collection<Ring> rings, FillRule rule) {
    return RingFill.fill(rings, rule);
  }

  public static Region rectangle(Bounds b) {
    return b.isEmpty() ? EMPTY : of(Ring.rectangle(b.minX(), b.minY(), b.maxX(), b.maxY()));
  }

  /** A rectangle less a region. Nothing crosses where that lies inside, so nothing is snapped. */
  public static Region rectangleWithout(Bounds b, Region o) {
    Region whole = rectangle(b);
    Bounds room = b.grown(-1 / Jts.STEPS_PER_MM);
    boolean inside = !o.isEmpty() && room.including(o.bounds()).equals(room);
    return inside ? wrap(Overlay.difference(whole.geometry, o.geometry)) : whole.minus(o);
  }

  /** A strip of the half width on both sides of a line: flat ends, mitred bends. */
  public static Region strip(Line line, double halfWidth) {
    return wrap(Offset.strip(line, halfWidth));
  }

  /**
   * All points within {@code halfWidth} of a line. Bends are round; so are the ends, or they are
   * cut off flat. The boundary stays within {@code tolerance} of the true one.
   */
  public static Region around(Line line, double halfWidth, boolean roundEnds, double tolerance) {
    return Offset.around(line, halfWidth, roundEnds, tolerance);
  }

  /** The union of many regions at once; much cheaper than one after the other. */
  public static Region union(Collection<Region> regions) {
    List<Region> parts = regions.stream().filter(r -> !r.isEmpty()).toList();
    return parts.size() == 1
        ? parts.get(0)
        : of(parts.stream().flatMap(r -> r.rings().stream()).toList(), FillRule.NONZERO);
  }

  public Region union(Region o) {
    return wrap(Overlay.run(geometry, o.geometry, OverlayNG.UNION));
  }

  public Region intersect(Region o) {
    return wrap(Overlay.run(geometry, o.geometry, OverlayNG.INTERSECTION));
  }

  public Region minus(Region o) {
    return wrap(Overlay.run(geometry, o.geometry, OverlayNG.DIFFERENCE));
  }

  /**
   * As {@link #minus}, by noding both boundaries once: the quicker the more corners they have. A
   * corner where they cross may lie a step of the grid elsewhere.
   */
  public Region minusLarge(Region o) {
    List<Ring> all = new ArrayList<>(rings());
    o.rings().forEach(r -> all.add(r.reversed()));
    return RingFill.positive(all);
  }

  /** As {@link #union}, in the manner of {@link #minusLarge}. */
  public Region unionLarge(Region o) {
    List<Ring> all = new ArrayList<>(rings());
    all.addAll(o.rings());
    return RingFill.positive(all);
  }

  /** As {@link #intersect}, in the manner of {@link #minusLarge}. */
  public Region intersectLarge(Region o) {
    List<Ring> all = new ArrayList<>(rings());
    all.addAll(o.rings());
    return RingFill.twice(all);
  }

  /**
   * The part inside a box, as {@link #intersect}; pieces that lie wholly inside stay as they are.
   */
  public Region within(Bounds box) {
    Bounds b = bounds();
    if (isEmpty() || box.including(b).equals(box)) {
      return this;
    }
    List<Polygon> inside = new ArrayList<>();
    for (Polygon p : polygons()) {
      Envelope e = p.getEnvelopeInternal();
      Bounds piece = new Bounds(e.getMinX(), e.getMinY(), e.getMaxX(), e.getMaxY());
      if (box.including(piece).equals(box)) {
        inside.add(p);
      } else if (box.meets(piece)) {
        return intersect(rectangle(box));
      }
    }
    return wrap(Overlay.polygonal(Jts.FACTORY.createMultiPolygon(inside.toArray(new Polygon[0]))));
  }

  /**
   * All points within {@code mm} of this region (of its inside, for a negative distance: what is at
   * least that far from the outside). Corners are rounded; the boundary stays within {@code
   * tolerance} of the true one, on both sides.
   */
  public Region offset(double mm, double tolerance) {
    return Offset.of(this, mm, tolerance);
  }

  /** The part of {@link #offset} inside a window, from what has a say there alone. */
  public Region offset(double mm, double tolerance, BoxArea inside) {
    return Offset.of(this, mm, tolerance, inside);
  }

  /**
   * As {@link #offset} outwards, for lengths far over the boundary's detail: cheap however rugged
   * that is.
   */
  public Region grown(double mm, double tolerance) {
    return Growth.of(this, mm, tolerance);
  }

  /**
   * Nearly the same region with fewer corners, for work where {@code tolerance} mm do not matter:
   * its boundary strays no farther than that, and neither parts nor holes are lost.
   */
  public Region simplified(double tolerance) {
    return isEmpty() ? this : wrap(TopologyPreservingSimplifier.simplify(geometry, tolerance));
  }

  /** The outlines with fewer corners, each by itself: to look at, as they may touch or cross. */
  public List<Ring> coarseRings(double tolerance) {
    return rings().stream().map(r -> RingSimplifier.simplify(r, tolerance)).toList();
  }

  /** What a disc of the radius can cover without leaving this region (morphological opening). */
  public Region opened(double radius, double tolerance) {
    return offset(-radius, tolerance).offset(radius, tolerance);
  }

  /** Area in mm². */
  public double area() {
    return geometry.getArea();
  }

  /** Area in mm² of what lies inside the window. */
  public double areaIn(Bounds window) {
    return new BoxArea(List.of(window)).area(this);
  }

  /**
   * The same region inside the window, from as few corners as that takes; what it is beyond the
   * window means nothing.
   */
  public Region about(Bounds window) {
    List<Ring> near = new ArrayList<>();
    rings().forEach(r -> RingWindow.ring(r, window).ifPresent(near::add));
    return of(near, FillRule.NONZERO);
  }

  /** Length of the whole boundary, holes included, in mm. */
  public double boundaryLength() {
    return geometry.getLength();
  }

  public boolean isEmpty() {
    return geometry.isEmpty();
  }

  public Bounds bounds() {
    Envelope e = geometry.getEnvelopeInternal();
    return e.isNull()
        ? Bounds.EMPTY
        : new Bounds(e.getMinX(), e.getMinY(), e.getMaxX(), e.getMaxY());
  }

  /** The connected parts, each with its holes. */
  public List<Region> parts() {
    List<Region> parts = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      if (!geometry.getGeometryN(i).isEmpty()) {
        parts.add(new Region(geometry.getGeometryN(i)));
      }
    }
    return parts;
  }

  /** The parts that pass the test, unchanged. */
  public Region partsWhere(Predicate<Region> test) {
    return wrap(
        Overlay.polygonal(
            Jts.FACTORY.createMultiPolygon(
                parts().stream()
                    .filter(test)
                    .map(p -> (Polygon) p.geometry)
                    .toArray(Polygon[]::new))));
  }

  /** The outer ring of every part, counter-clockwise (y up). */
  public List<Ring> shells() {
    List<Ring> rings = new ArrayList<>();
    for (Polygon p : polygons()) {
      rings.add(Jts.ring(p.getExteriorRing(), true));
    }
    return rings;
  }

  /** Every hole, clockwise (y up). */
  public List<Ring> holes() {
    List<Ring> rings = new ArrayList<>();
    for (Polygon p : polygons()) {
      for (int i = 0; i < p.getNumInteriorRing(); i++) {
        rings.add(Jts.ring(p.getInteriorRingN(i), false));
      }
    }
    return rings;
  }

  /** All shells and holes; as one path they fill right under either rule. */
  public List<Ring> rings() {
    List<Ring> all = new ArrayList<>(shells());
    all.addAll(holes());
    return all;
  }

  /** Whether the point is inside or on the boundary. */
  public boolean contains(Vec p) {
    return bounds().contains(p)
        && locator.locate(new Coordinate(p.x(), p.y())) != Location.EXTERIOR;
  }

  public boolean meets(Region o) {
    return geometry.intersects(o.geometry);
  }

  /** The stretches of a line that lie inside or on the boundary, in no certain order. */
  public List<Line> clip(Line line) {
    Coordinate[] points = line.points().stream().map(Jts::coordinate).toArray(Coordinate[]::new);
    if (geometry.isEmpty() || points.length < 2 || line.length() == 0) {
      return List.of();
    }
    Geometry cut =
        OverlayNG.overlay(
            geometry, Jts.FACTORY.createLineString(points), OverlayNG.INTERSECTION, Jts.GRID);
    LineMerger merger = new LineMerger();
    merger.add(cut);
    List<Line> found = new ArrayList<>();
    for (Object merged : merger.getMergedLineStrings()) {
      found.add(
          new Line(Arrays.stream(((LineString) merged).getCoordinates()).map(Jts::vec).toList()));
    }
    return found;
  }

  /** Whether the line passes through or touches this region. */
  public boolean meets(Line line) {
    return geometry.intersects(Jts.line(line));
  }

  /** Distance in mm from the point to this region; 0 inside. */
  public double distanceTo(Vec p) {
    return geometry.distance(Jts.point(p));
  }

  /** The point of the boundary nearest to {@code p}. */
  public Vec nearestOnBoundary(Vec p) {
    return Jts.vec(DistanceOp.nearestPoints(geometry.getBoundary(), Jts.point(p))[0]);
  }

  /** The middle of the largest circle inside, a good place for a label; (0, 0) when empty. */
  public Vec labelPoint() {
    if (isEmpty()) {
      return Vec.ZERO;
    }
    double tolerance = Math.max(1, Math.max(bounds().width(), bounds().height()) / 200);
    return Jts.vec(new MaximumInscribedCircle(geometry, tolerance).getCenter().getCoordinate());
  }

  public Region map(Affine map) {
    return of(rings().stream().map(r -> r.map(map)).toList(), FillRule.EVEN_ODD);
  }

  @Override
  public boolean equals(Object o) {
    return o == this || (o instanceof Region r && coversSame(r));
  }

  private boolean coversSame(Region o) {
    if (isEmpty() || o.isEmpty()) {
      return isEmpty() && o.isEmpty();
    }
    // Nearly all are told apart by their size, or are the same to the corner.
    return geometry.getEnvelopeInternal().equals(o.geometry.getEnvelopeInternal())
        && (geometry.equalsExact(o.geometry) || geometry.equalsTopo(o.geometry));
  }

  @Override
  public int hashCode() {
    return geometry.getEnvelopeInternal().hashCode();
  }

  @Override
  public String toString() {
    return geometry.toText();
  }

  private List<Polygon> polygons() {
    List<Polygon> list = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      if (geometry.getGeometryN(i) instanceof Polygon p && !p.isEmpty()) {
        list.add(p);
      }
    }
    return list;
  }
}
