package slabwright.work.coat;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * The floor cut into upright strips of equal width, each connected part a cell, with the lengths
 * along which cells of neighbouring strips touch. Worked in a frame turned so that lanes stand
 * upright.
 */
final class LaneCells {
  /** A part of a strip. */
  record Cell(int strip, Region region) {}

  /** Two touching cells, by index, and how long they touch in mm. */
  record Contact(int a, int b, double length) {
    /** Stands for the length where the last lane was cut in two. */
    static final double BOTH_AT_THE_WAY_OUT = Double.POSITIVE_INFINITY;

    boolean isNeck() {
      return length < LaneParameters.NECK;
    }

    boolean isAtTheWayOut() {
      return length == BOTH_AT_THE_WAY_OUT;
    }
  }

  private record Edge(double from, double to) {
    double overlap(Edge o) {
      return Math.max(0, Math.min(to, o.to) - Math.max(from, o.from));
    }
  }

  /** Cuts lie on the geometry grid, so edges on a cut are found by their x. */
  private static final double GRID = 0.001;

  /** Slivers under this, in mm², are left by snapping and are no floor. */
  private static final double SLIVER = 1;

  private final List<Cell> cells = new ArrayList<>();
  private final List<Contact> contacts = new ArrayList<>();
  private final Affine back;

  LaneCells(Region floor, Vec wayOut, double pitch, double angle) {
    Affine turn = Affine.turn(-angle);
    this.back = turn.inverse();
    Region turned = angle == 0 ? floor : floor.map(turn);
    double[] cuts = cuts(turned.bounds(), pitch);
    cut(turned, cuts, 0, cuts.length - 1);
    splitLast(turn.apply(wayOut), pitch);
    touch(cuts);
  }

  private static double[] cuts(Bounds b, double pitch) {
    int count = (int) Math.max(1, Math.ceil(b.width() / pitch - 1e-9));
    double[] cuts = new double[count + 1];
    for (int i = 0; i <= count; i++) {
      cuts[i] = Math.round((b.minX() + b.width() * i / count) / GRID) * GRID;
    }
    cuts[count] = Math.max(cuts[count], b.maxX());
    return cuts;
  }

  /** Halves the floor again and again: each cut works on what is left of it only. */
  private void cut(Region region, double[] cuts, int from, int to) {
    if (region.isEmpty()) {
      return;
    }
    if (to - from == 1) {
      region.parts().stream()
          .filter(p -> p.area() > SLIVER)
          .forEach(p -> cells.add(new Cell(from, p)));
      return;
    }
    int middle = (from + to) / 2;
    Bounds b = region.bounds().grown(1);
    cut(region.intersect(box(b.minX(), cuts[middle], b)), cuts, from, middle);
    cut(region.intersect(box(cuts[middle], b.maxX(), b)), cuts, middle, to);
  }

  /**
   * The cell at the way out is rolled from both its ends towards the way out, so it is two: nobody
   * is left standing beyond the door.
   */
  private void splitLast(Vec out, double pitch) {
    if (cells.isEmpty()) {
      return;
    }
    int last = nearestTo(out);
    Cell whole = cells.get(last);
    Bounds b = whole.region().bounds();
    double y = Math.round(out.y() / GRID) * GRID;
    if (y - b.minY() < pitch || b.maxY() - y < pitch) {
      return;
    }
    List<Region> halves = new ArrayList<>();
    Bounds low = new Bounds(b.minX(), b.minY(), b.maxX(), y);
    Bounds high = new Bounds(b.minX(), y, b.maxX(), b.maxY());
    halves.addAll(whole.region().intersect(Region.rectangle(low)).parts());
    halves.addAll(whole.region().intersect(Region.rectangle(high)).parts());
    if (halves.size() == 2) {
      cells.set(last, new Cell(whole.strip(), halves.get(0)));
      cells.add(last + 1, new Cell(whole.strip(), halves.get(1)));
      contacts.add(new Contact(last, last + 1, Contact.BOTH_AT_THE_WAY_OUT));
    }
  }

  private static Region box(double minX, double maxX, Bounds b) {
    return Region.rectangle(new Bounds(minX, b.minY(), maxX, b.maxY()));
  }

  private void touch(double[] cuts) {
    List<List<Edge>> right = new ArrayList<>();
    List<List<Edge>> left = new ArrayList<>();
    for (Cell c : cells) {
      left.add(edges(c.region(), cuts[c.strip()]));
      right.add(edges(c.region(), cuts[c.strip() + 1]));
    }
    for (int a = 0; a < cells.size(); a++) {
      int next = cells.get(a).strip() + 1;
      for (int b = a + 1; b < cells.size() && cells.get(b).strip() <= next; b++) {
        if (cells.get(b).strip() == next) {
          addContact(a, b, right.get(a), left.get(b));
        }
      }
    }
  }

  private void addContact(int a, int b, List<Edge> right, List<Edge> left) {
    double length = 0;
    for (Edge r : right) {
      for (Edge l : left) {
        length += r.overlap(l);
      }
    }
    if (length > GRID) {
      contacts.add(new Contact(a, b, length));
    }
  }

  private static List<Edge> edges(Region region, double x) {
    List<Edge> edges = new ArrayList<>();
    for (Ring ring : region.rings()) {
      List<Vec> p = ring.points();
      for (int i = 0; i < p.size(); i++) {
        Vec a = p.get(i);
        Vec b = p.get((i + 1) % p.size());
        if (Math.abs(a.x() - x) < 2 * GRID && Math.abs(b.x() - x) < 2 * GRID) {
          edges.add(new Edge(Math.min(a.y(), b.y()), Math.max(a.y(), b.y())));
        }
      }
    }
    return edges;
  }

  /** Ordered by strip from left to right. */
  List<Cell> cells() {
    return cells;
  }

  List<Contact> contacts() {
    return contacts;
  }

  /** From the turned frame to the site. */
  Affine back() {
    return back;
  }

  /** The cell nearest to a place on the site, by index. */
  int nearest(Vec site) {
    return nearestTo(back.inverse().apply(site));
  }

  private int nearestTo(Vec p) {
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < cells.size(); i++) {
      double d = cells.get(i).region().distanceTo(p);
      if (d < least) {
        least = d;
        best = i;
      }
    }
    return best;
  }
}
