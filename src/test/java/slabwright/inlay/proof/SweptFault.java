package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import slabwright.inlay.panel.Panel;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * What a shop may do to a drawing, with the size in mm (BAR: mm²) from which on it is no right
 * drawing any more. 0: never right, whatever its size.
 */
enum SweptFault {
  NONE(0),
  SHIFT(2),
  TURN(2),
  SIZE(2),
  STRETCH(2),
  MIX(2),
  FATTER(1),
  HOLE(3),
  BAR(25),
  PATCH(3),
  BESIDE_AN_EDGE(3),
  TINY_LOST(3),
  SIDE(1),
  BUMP(1),
  DENT(1),
  NEEDLE(1),
  SLIT(0),
  CORNER(1),
  PART_MOVED(1),
  PANEL_SHIFT(2),
  PANEL_TURN(2);

  private final double limit;

  SweptFault(double limit) {
    this.limit = limit;
  }

  double limit() {
    return limit;
  }

  /** One sheet as the shop drew it. */
  record Sheet(Region openings, Ring edge) {
    Sheet map(Affine by) {
      return new Sheet(openings.map(by), edge.map(by));
    }
  }

  /** The plan, and what came back for it, before it is laid on the page. */
  record Returned(ProofPlan plan, List<Sheet> sheets) {}

  /** What it is made of: the openings in their blank, a size and a source of chance. */
  private record Job(Region openings, Bounds blank, double by, Random random) {
    Vec middle() {
      return blank.middle();
    }

    Region film() {
      return Region.rectangle(blank).minus(openings);
    }

    boolean toss() {
      return random.nextBoolean();
    }

    double turn() {
      return random.nextDouble() * 2 * Math.PI;
    }

    double reach() {
      return farthest(openings, middle());
    }

    Optional<Returned> with(Region drawn) {
      return with(drawn, ring(blank));
    }

    Optional<Returned> with(Region drawn, Ring edge) {
      return Optional.of(
          new Returned(new ProofPlan(openings, blank, List.of()), List.of(new Sheet(drawn, edge))));
    }

    Optional<Returned> all(Affine map) {
      return with(openings.map(map), ring(blank).map(map));
    }
  }

  /** A drawing with the fault of this size, or nothing where the graphic has no place for it. */
  Optional<Returned> returned(Region openings, Bounds blank, double by, Random random) {
    Job job = new Job(openings, blank, by, random);
    return switch (this) {
      case NONE -> job.with(openings);
      case SHIFT, TURN, SIZE, STRETCH, MIX, SIDE -> placed(job);
      case FATTER -> job.with(openings.offset(job.toss() ? by : -by, 0.01));
      case HOLE, BAR, PATCH, BESIDE_AN_EDGE, TINY_LOST -> piece(job);
      case BUMP, DENT, NEEDLE, CORNER -> edge(job);
      case SLIT -> slit(job);
      case PART_MOVED -> partMoved(job);
      case PANEL_SHIFT, PANEL_TURN -> panel(job);
    };
  }

  private Optional<Returned> placed(Job job) {
    double by = job.by;
    double t = job.turn();
    Bounds b = job.blank;
    double sign = job.toss() ? 1 : -1;
    return switch (this) {
      case SHIFT -> job.with(job.openings.map(Affine.move(by * Math.cos(t), by * Math.sin(t))));
      case TURN ->
          job.with(job.openings.map(about(job.middle(), Affine.turn(sign * by / job.reach()))));
      case SIZE -> {
        double s = 1 + sign * by / job.reach();
        yield job.all(about(job.middle(), Affine.scale(s, s)));
      }
      case STRETCH -> {
        Bounds o = job.openings.bounds();
        double half = Math.max(o.maxX() - job.middle().x(), job.middle().x() - o.minX());
        yield job.all(about(job.middle(), Affine.scale(1 + by / half, 1)));
      }
      case MIX -> mix(job);
      default ->
          job.with(job.openings, ring(new Bounds(b.minX(), b.minY(), b.maxX() + by, b.maxY())));
    };
  }

  /** Size, turn and shift at once; the point that moves farthest moves by the fault's size. */
  private static Optional<Returned> mix(Job job) {
    double size = job.random.nextDouble() - 0.5;
    double turn = job.random.nextDouble() - 0.5;
    Vec shift = new Vec(job.random.nextDouble() - 0.5, job.random.nextDouble() - 0.5);
    double k = 1;
    for (int i = 0; i < 3; i++) { // a turn is not quite linear
      k *= job.by / most(job.openings, mixed(job, size, turn, shift, k));
    }
    // the whole sheet has the size, its openings lie turned and shifted in it
    double s = 1 + k * size / job.reach();
    Affine all = about(job.middle(), Affine.scale(s, s));
    return job.with(job.openings.map(mixed(job, size, turn, shift, k)), ring(job.blank).map(all));
  }

  private static Affine mixed(Job job, double size, double turn, Vec shift, double k) {
    double s = 1 + k * size / job.reach();
    return about(job.middle(), Affine.turn(k * turn / job.reach()).then(Affine.scale(s, s)))
        .then(Affine.move(k * shift.x(), k * shift.y()));
  }

  private Optional<Returned> piece(Job job) {
    double by = job.by;
    double t = job.turn();
    Region open = job.openings;
    return switch (this) {
      case HOLE ->
          clear(square(job.film().labelPoint(), by, by, t), open)
              .flatMap(h -> job.with(open.union(h)));
      // 2 mm thick, so that its area alone decides
      case BAR ->
          clear(square(job.film().labelPoint(), 2, by / 2, t), open)
              .flatMap(h -> job.with(open.union(h)));
      case PATCH ->
          clear(square(open.labelPoint(), by, by, t), job.film())
              .flatMap(h -> job.with(open.minus(h)));
      case TINY_LOST ->
          clear(square(job.film().labelPoint(), by, by, t), open)
              .map(
                  h ->
                      new Returned(
                          new ProofPlan(open.union(h), job.blank, List.of()),
                          List.of(new Sheet(open, ring(job.blank)))));
      default -> {
        double away = 0.6 + 0.6 * job.random.nextDouble() + by / 2;
        yield side(open, job.random)
            .map(e -> square(e.at().plus(e.outward().times(away)), by, by, e.along().angle()))
            .filter(h -> !h.offset(0.3, 0.05).meets(open))
            .flatMap(h -> job.with(open.union(h)));
      }
    };
  }

  private Optional<Returned> edge(Job job) {
    Region open = job.openings;
    double by = job.by;
    boolean out = this == BUMP || (this == NEEDLE && job.toss());
    if (this == CORNER) {
      return corner(open, job.random, by).flatMap(c -> job.with(open.minus(c)));
    }
    double half = this == NEEDLE ? 0.15 + 0.3 * job.random.nextDouble() : 20;
    return side(open, job.random)
        .map(e -> tooth(e, half, out ? by : -by))
        .flatMap(r -> job.with(out ? open.union(r) : open.minus(r)));
  }

  /** A strip of film less than 1 mm wide right across an opening. */
  private static Optional<Returned> slit(Job job) {
    Region across =
        square(
            job.openings.labelPoint(),
            0.3 + 0.6 * job.random.nextDouble(),
            2 * job.blank.width(),
            job.turn());
    List<Region> parts = job.openings.intersect(across).parts();
    Region one = parts.get(job.random.nextInt(parts.size()));
    return one.area() < 15 ? Optional.empty() : job.with(job.openings.minus(one));
  }

  private static Optional<Returned> partMoved(Job job) {
    List<Region> parts = job.openings.parts();
    Region part = parts.get(job.random.nextInt(parts.size()));
    double t = job.turn();
    Region rest = job.openings.minus(part);
    Region moved = part.map(Affine.move(job.by * Math.cos(t), job.by * Math.sin(t)));
    return part.area() < 0.4 * job.openings.area() && !moved.meets(rest)
        ? job.with(rest.union(moved))
        : Optional.empty();
  }

  /** Three panels apart from each other, in one of which the openings lie elsewhere. */
  private Optional<Returned> panel(Job job) {
    List<Panel> panels = new ArrayList<>();
    List<Sheet> sheets = new ArrayList<>();
    double third = job.blank.width() / 3;
    int wrong = job.random.nextInt(3);
    for (int i = 0; i < 3; i++) {
      Bounds box = new Bounds(Math.max(0, i * third - 12), 0, (i + 1) * third, job.blank.maxY());
      panels.add(new Panel(String.valueOf("ABC".charAt(i)), box));
      Region here = job.openings.intersect(Region.rectangle(box));
      if (here.area() < 0.08 * job.openings.area()) {
        return Optional.empty();
      }
      Region drawn = i == wrong ? wrongIn(job, here, box) : here;
      sheets.add(new Sheet(drawn, ring(box)).map(Affine.move(i * (60 + 0.1 * third), i * 45)));
    }
    return Optional.of(new Returned(new ProofPlan(job.openings, job.blank, panels), sheets));
  }

  private Region wrongIn(Job job, Region here, Bounds box) {
    double t = job.turn();
    Affine map =
        this == PANEL_SHIFT
            ? Affine.move(job.by * Math.cos(t), job.by * Math.sin(t))
            : about(box.middle(), Affine.turn(job.by / farthest(here, box.middle())));
    Region all = job.openings.map(map);
    return all.intersect(Region.rectangle(box));
  }

  /** A straight side of an opening at least 60 mm long. */
  private static Optional<EdgeSample> side(Region openings, Random random) {
    List<EdgeSample> sides = new ArrayList<>();
    for (Ring r : openings.rings()) {
      for (int i = 0; i < r.points().size(); i++) {
        Vec a = r.points().get(i);
        Vec b = r.points().get((i + 1) % r.points().size());
        if (a.distanceTo(b) > 60) {
          sides.add(new EdgeSample(a.towards(b, 0.5), b.minus(a).unit(), 0));
        }
      }
    }
    return sides.isEmpty()
        ? Optional.empty()
        : Optional.of(sides.get(random.nextInt(sides.size())));
  }

  private static Region tooth(EdgeSample e, double half, double by) {
    Vec u = e.along().times(half);
    Vec out = e.outward().times(by);
    Vec in = e.outward().times(-0.5 * Math.signum(by));
    return Region.of(
        new Ring(
            List.of(
                e.at().minus(u).plus(in),
                e.at().plus(u).plus(in),
                e.at().plus(u).plus(out),
                e.at().minus(u).plus(out))));
  }

  /** What lies beyond a cut across a convex, nearly right corner, this far from its point. */
  private static Optional<Region> corner(Region openings, Random random, double depth) {
    List<Region> found = new ArrayList<>();
    for (Ring r : openings.rings()) {
      List<Vec> p = r.points();
      for (int i = 0; i < p.size(); i++) {
        Vec at = p.get(i);
        Vec before = p.get((i + p.size() - 1) % p.size()).minus(at);
        Vec after = p.get((i + 1) % p.size()).minus(at);
        boolean square = Math.abs(before.unit().dot(after.unit())) < 0.3;
        Vec in = before.unit().plus(after.unit()).unit();
        if (square
            && Math.min(before.length(), after.length()) > 20
            && openings.contains(at.plus(in))) {
          Vec foot = at.plus(in.times(depth));
          Vec side = in.left().times(10);
          Vec up = in.times(-10);
          found.add(
              Region.of(
                  new Ring(
                      List.of(
                          foot.minus(side),
                          foot.plus(side),
                          foot.plus(side).plus(up),
                          foot.minus(side).plus(up)))));
        }
      }
    }
    return found.isEmpty()
        ? Optional.empty()
        : Optional.of(found.get(random.nextInt(found.size())));
  }

  private static Optional<Region> clear(Region added, Region other) {
    return added.offset(3, 0.05).meets(other) ? Optional.empty() : Optional.of(added);
  }

  private static Region square(Vec at, double w, double h, double turn) {
    return Region.of(Ring.rectangle(-w / 2, -h / 2, w / 2, h / 2))
        .map(Affine.turn(turn).then(Affine.move(at.x(), at.y())));
  }

  private static Affine about(Vec m, Affine what) {
    return Affine.move(-m.x(), -m.y()).then(what).then(Affine.move(m.x(), m.y()));
  }

  private static double farthest(Region openings, Vec from) {
    return openings.rings().stream()
        .flatMap(r -> r.points().stream())
        .mapToDouble(from::distanceTo)
        .max()
        .orElseThrow();
  }

  /** How far the map moves the point that it moves farthest. */
  private static double most(Region openings, Affine map) {
    return openings.rings().stream()
        .flatMap(r -> r.points().stream())
        .mapToDouble(p -> map.apply(p).distanceTo(p))
        .max()
        .orElseThrow();
  }

  private static Ring ring(Bounds b) {
    return Ring.rectangle(b.minX(), b.minY(), b.maxX(), b.maxY());
  }
}
