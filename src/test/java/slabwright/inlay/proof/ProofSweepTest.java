package slabwright.inlay.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.FillRule;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * Returned drawings with one fault whose size is swept around its limit, at jobs from 0.3 to 8 m,
 * laid on the page at random. Clearly above the limit it is never called right, clearly below it
 * always; the limits are the absolute ones of the design.
 */
class ProofSweepTest {
  private static final double ABOVE = 1.06;
  private static final double BELOW = 0.85;
  private static final String[] GRAPHICS = {
    "bicycle.svg", "luggage.svg", "calendar-week.svg", "cup-hot.svg", "tree.svg", "gear.svg"
  };

  /** What the shop did, and its limit. */
  private enum Fault {
    NONE(0),
    SHIFT(2),
    TURN(2),
    SIZE(2),
    STRETCH(2),
    FATTER(1),
    HOLE(3),
    BAR(25),
    PATCH(3),
    SIDE(1),
    BUMP(1),
    PART_MOVED(1);

    private final double limit;

    Fault(double limit) {
      this.limit = limit;
    }
  }

  /** A returned drawing before it is laid on the page. */
  private record Returned(Region openings, Ring edge) {}

  private final Map<Fault, int[]> told = new EnumMap<>(Fault.class);
  private final List<String> wrong = new ArrayList<>();

  @Test
  void of_random_drawings_none_above_a_limit_is_called_right() {
    sweep(72, 41);
  }

  @Test
  @Tag("long")
  void over_10000_random_drawings_none_above_a_limit_is_called_right() {
    sweep(10_000, 7);
  }

  private void sweep(int tries, long seed) {
    Random random = new Random(seed);
    List<ProofCases> graphics = new ArrayList<>();
    for (String name : GRAPHICS) {
      graphics.add(ProofCases.icon(name));
    }
    for (int i = 0; i < tries; i++) {
      Fault fault = Fault.values()[i % Fault.values().length];
      one(graphics.get(random.nextInt(graphics.size())), fault, random);
    }
    told.forEach(
        (fault, n) ->
            System.out.printf(
                Locale.ROOT,
                "  %-10s above: %d not cut; below: %d cut; at the limit: %d%n",
                fault,
                n[0],
                n[1],
                n[2]));
    assertThat(wrong).isEmpty();
  }

  private void one(ProofCases icon, Fault fault, Random random) {
    double width = 300 * Math.pow(8000.0 / 300, random.nextDouble());
    double scale = width / (icon.blank().width() - 100);
    Region openings =
        icon.openings()
            .map(Affine.move(-50, -50).then(Affine.scale(scale, scale)).then(Affine.move(50, 50)));
    Bounds blank = new Bounds(0, 0, width + 100, (icon.blank().height() - 100) * scale + 100);
    double factor = 0.5 + 1.5 * random.nextDouble();
    Optional<Returned> made = returned(fault, openings, blank, factor * fault.limit, random);
    if (made.isEmpty()) {
      return;
    }
    Affine pose =
        Affine.turn(random.nextDouble() * 2 * Math.PI)
            .then(Affine.move(random.nextDouble() * 500, random.nextDouble() * 500));
    ProofReport report =
        ProofCheck.run(
            new ProofPlan(openings, blank, List.of()),
            drawing(made.get(), pose),
            ShadingMeaning.PULLED_OUT);
    judge(fault, factor, report, "%s %.0f mm".formatted(icon.name(), width));
  }

  private void judge(Fault fault, double factor, ProofReport report, String what) {
    boolean cut = report.verdict() == ProofVerdict.CUT;
    int[] n = told.computeIfAbsent(fault, k -> new int[3]);
    boolean mustCut = fault == Fault.NONE || factor < BELOW;
    boolean mustNot = fault != Fault.NONE && factor > ABOVE;
    n[mustNot ? 0 : mustCut ? 1 : 2]++;
    if ((mustCut && !cut) || (mustNot && report.verdict() != ProofVerdict.DO_NOT_CUT)) {
      wrong.add(
          "%s %s of %.3f: %s %s %s"
              .formatted(
                  what,
                  fault,
                  factor * fault.limit,
                  report.verdict(),
                  report.faults(),
                  report.figures()));
    }
  }

  private static Optional<Returned> returned(
      Fault fault, Region openings, Bounds blank, double by, Random random) {
    Ring edge = ring(blank);
    Vec m = blank.middle();
    double reach = reach(openings, m);
    Affine back = Affine.move(m.x(), m.y());
    Affine about = Affine.move(-m.x(), -m.y());
    double t = random.nextDouble() * 2 * Math.PI;
    return switch (fault) {
      case NONE -> Optional.of(new Returned(openings, edge));
      case SHIFT ->
          Optional.of(
              new Returned(openings.map(Affine.move(by * Math.cos(t), by * Math.sin(t))), edge));
      case TURN -> {
        Affine turn = Affine.turn((random.nextBoolean() ? 1 : -1) * by / reach);
        yield Optional.of(new Returned(openings.map(about.then(turn).then(back)), edge));
      }
      case SIZE -> {
        double s = 1 + (random.nextBoolean() ? 1 : -1) * by / reach;
        Affine all = about.then(Affine.scale(s, s)).then(back);
        yield Optional.of(new Returned(openings.map(all), edge.map(all)));
      }
      case STRETCH -> {
        double half = Math.max(openings.bounds().maxX() - m.x(), m.x() - openings.bounds().minX());
        Affine all = about.then(Affine.scale(1 + by / half, 1)).then(back);
        yield Optional.of(new Returned(openings.map(all), edge.map(all)));
      }
      case FATTER ->
          Optional.of(new Returned(openings.offset(random.nextBoolean() ? by : -by, 0.01), edge));
      case HOLE -> {
        Region hole = square(Region.rectangle(blank).minus(openings).labelPoint(), by, by, t);
        yield clear(hole, openings).map(h -> new Returned(openings.union(h), edge));
      }
      case BAR -> {
        // 2 mm thick, so that its area alone decides
        Vec at = Region.rectangle(blank).minus(openings).labelPoint();
        Region bar = square(at, 2, by / 2, t);
        yield clear(bar, openings).map(h -> new Returned(openings.union(h), edge));
      }
      case PATCH -> {
        Region patch = square(openings.labelPoint(), by, by, t);
        yield clear(patch, Region.rectangle(blank).minus(openings))
            .map(h -> new Returned(openings.minus(h), edge));
      }
      case SIDE ->
          Optional.of(
              new Returned(
                  openings,
                  ring(new Bounds(blank.minX(), blank.minY(), blank.maxX() + by, blank.maxY()))));
      case BUMP -> bump(openings, by).map(o -> new Returned(o, edge));
      case PART_MOVED -> {
        List<Region> parts = openings.parts();
        Region part = parts.get(random.nextInt(parts.size()));
        Region moved = part.map(Affine.move(by, 0));
        boolean few = part.area() < 0.4 * openings.area();
        yield few
            ? Optional.of(new Returned(openings.minus(part).union(moved), edge))
            : Optional.empty();
      }
    };
  }

  /** A bump 40 mm long on the longest straight side of an opening. */
  private static Optional<Region> bump(Region openings, double by) {
    EdgeSample best = null;
    double longest = 60;
    for (Ring r : openings.rings()) {
      for (int i = 0; i < r.points().size(); i++) {
        Vec a = r.points().get(i);
        Vec b = r.points().get((i + 1) % r.points().size());
        if (a.distanceTo(b) > longest) {
          longest = a.distanceTo(b);
          best = new EdgeSample(a.towards(b, 0.5), b.minus(a).unit(), 0);
        }
      }
    }
    if (best == null) {
      return Optional.empty();
    }
    Vec u = best.along().times(20);
    Vec out = best.outward().times(by);
    Vec in = best.outward().times(-0.5);
    Ring ring =
        new Ring(
            List.of(
                best.at().minus(u).plus(in),
                best.at().plus(u).plus(in),
                best.at().plus(u).plus(out),
                best.at().minus(u).plus(out)));
    return Optional.of(openings.union(Region.of(ring)));
  }

  private static Optional<Region> clear(Region added, Region other) {
    return added.offset(3, 0.05).meets(other) ? Optional.empty() : Optional.of(added);
  }

  private static Region square(Vec at, double w, double h, double turn) {
    return Region.of(Ring.rectangle(-w / 2, -h / 2, w / 2, h / 2))
        .map(Affine.turn(turn).then(Affine.move(at.x(), at.y())));
  }

  private static double reach(Region openings, Vec from) {
    return openings.rings().stream()
        .flatMap(r -> r.points().stream())
        .mapToDouble(from::distanceTo)
        .max()
        .orElseThrow();
  }

  private static Ring ring(Bounds b) {
    return Ring.rectangle(b.minX(), b.minY(), b.maxX(), b.maxY());
  }

  private static ShopDrawing drawing(Returned r, Affine pose) {
    return new ShopDrawing(
        List.of(
            new ShopDrawing.Piece(List.of(r.edge().map(pose)), FillRule.NONZERO, Optional.empty()),
            new ShopDrawing.Piece(
                r.openings().rings().stream().map(x -> x.map(pose)).toList(),
                FillRule.EVEN_ODD,
                Optional.of("#404a55"))));
  }
}
