package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.FillRule;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** Many islands that look alike, 60 mm apart; invented. */
enum LookAlikes {
  /** Nine waves round each, of any size, on a grid. */
  WAVY,
  /** Equal dots on a grid, of which some are left out. */
  DOTS,
  /** Equal dots off their grid. */
  STREWN,
  /** Each of its own outline, size and turn, off the grid. */
  BLOBS,
  /** One leaf again and again, on a grid. */
  LEAVES,
  /** Squares on a grid, of which some are left out. */
  TILES,
  /** Dots with a hole, of two sizes. */
  WASHERS,
  /** Dots of any size within a wide frame, beside one large shape that is like none. */
  BESIDE_A_SHAPE;

  private static final double CELL = 60;
  private static final double MARGIN = 40;
  private static final double LEFT_OUT = 0.1;

  /** What is cut, island by island, and its blank. */
  record Job(List<List<Ring>> islands, Bounds blank) {
    Region openings() {
      return region(islands);
    }

    PlannedPiece sheet() {
      return new PlannedPiece("", blank, openings());
    }

    Ring edge() {
      return Ring.rectangle(blank.minX(), blank.minY(), blank.maxX(), blank.maxY());
    }

    /** The island nearest to a share of the blank's width and height. */
    int at(double x, double y) {
      Vec p = new Vec(x * blank.maxX(), y * blank.maxY());
      return IntStream.range(0, islands.size())
          .boxed()
          .min(Comparator.comparingDouble(i -> middle(i).distanceTo(p)))
          .orElseThrow();
    }

    Vec middle(int island) {
      return islands.get(island).get(0).bounds().middle();
    }
  }

  static Region region(List<List<Ring>> islands) {
    return Region.of(islands.stream().flatMap(List::stream).toList(), FillRule.EVEN_ODD);
  }

  /** About so many, the same ones for the same seed. */
  Job job(int count, long seed) {
    Random random = new Random(seed);
    int across = (int) Math.ceil(Math.sqrt(count * 1.3));
    int up = (count + across - 1) / across;
    List<List<Ring>> islands = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int row = i / across;
      Vec at = new Vec((i % across + 0.5) * CELL + MARGIN, (row + 0.5) * CELL + MARGIN);
      island(at, random).ifPresent(islands::add);
    }
    double beside = this == BESIDE_A_SHAPE ? 700 : 0;
    double width = across * CELL + 2 * MARGIN;
    double height = up * CELL + 2 * MARGIN;
    if (beside > 0) {
      islands.add(List.of(blob(new Vec(width + 300, height / 2), 250, 0.3, random)));
    }
    return new Job(islands, new Bounds(0, 0, width + beside, height));
  }

  private Optional<List<Ring>> island(Vec at, Random random) {
    double size = CELL * (0.2 + 0.15 * random.nextDouble());
    boolean out = random.nextDouble() < LEFT_OUT;
    Vec off = at.plus(new Vec(random.nextDouble() - 0.5, random.nextDouble() - 0.5).times(18));
    Ring ring =
        switch (this) {
          case WAVY -> round(at, size, 0.15, 60);
          case DOTS, WASHERS -> round(at, 20, 0, 36);
          case STREWN -> round(off, 18, 0, 36);
          case BLOBS -> blob(off, size, 0.25, random);
          case LEAVES -> blob(at, 22, 0.3, new Random(5));
          case TILES -> Ring.rectangle(at.x() - 18, at.y() - 18, at.x() + 18, at.y() + 18);
          case BESIDE_A_SHAPE -> round(off, size, 0, 36);
        };
    List<Ring> rings = this == WASHERS ? List.of(ring, round(at, 8, 0, 24)) : List.of(ring);
    boolean grid = this == DOTS || this == TILES || this == WASHERS || this == LEAVES;
    return grid && out ? Optional.empty() : Optional.of(rings);
  }

  private static Ring round(Vec middle, double radius, double wave, int sides) {
    List<Vec> points = new ArrayList<>();
    for (int k = 0; k < sides; k++) {
      double a = 2 * Math.PI * k / sides;
      double r = radius * (1 + wave * Math.sin(9 * a));
      points.add(middle.plus(new Vec(r * Math.cos(a), r * Math.sin(a))));
    }
    return new Ring(points);
  }

  private static Ring blob(Vec middle, double radius, double rough, Random random) {
    double[] by = random.doubles(8).map(d -> rough * (d - 0.5)).toArray();
    double turn = 7 * random.nextDouble();
    List<Vec> points = new ArrayList<>();
    for (int k = 0; k < 48; k++) {
      double a = 2 * Math.PI * k / 48;
      double r = 0.8;
      for (int n = 0; n < by.length; n++) {
        r += by[n] * Math.cos((n / 2 + 1) * a + turn + n % 2 * Math.PI / 2);
      }
      points.add(middle.plus(new Vec(r * radius * Math.cos(a), r * radius * Math.sin(a))));
    }
    return new Ring(points);
  }

  /** What a shop may do to the islands, and what is said of it first. */
  enum Drawn {
    RIGHT(ProofFault.class),
    MIRRORED(ProofFault.Mirrored.class),
    LARGER_BY_HALF_A_PERCENT(ProofFault.WrongSize.class),
    LARGER_BY_2_PERCENT(ProofFault.WrongSize.class),
    SMALLER_BY_1_PERCENT(ProofFault.WrongSize.class),
    STRETCHED_BY_1_PERCENT(ProofFault.Stretched.class),
    FATTER_BY_HALF_A_MM(ProofFault.class),
    FATTER_BY_1_4_MM(ProofFault.FatterAllRound.class),
    ONE_MOVED_BY_2_MM(ProofFault.AtPlace.class),
    ONE_MOVED_BY_5_MM(ProofFault.AtPlace.class),
    ONE_MOVED_BY_10_MM(ProofFault.AtPlace.class),
    OUTER_ONE_MOVED_BY_10_MM(ProofFault.AtPlace.class),
    ONE_MISSING(ProofFault.PieceMissing.class),
    ONE_MORE(ProofFault.PieceAdded.class),
    TWO_EXCHANGED(ProofFault.AtPlace.class),
    A_QUARTER_MISSING(ProofFault.PieceMissing.class),
    HALF_LEFT_OUT_AT_RANDOM(ProofFault.class),
    ANOTHER(ProofFault.class);

    private final Class<? extends ProofFault> told;

    Drawn(Class<? extends ProofFault> told) {
      this.told = told;
    }

    /** The kind of fault that is told of it, where anything is. */
    Class<? extends ProofFault> told() {
      return told;
    }

    /** Whether nothing may be told of it: two that are equal may be exchanged. */
    boolean isRight(LookAlikes kind) {
      boolean equal = kind != WAVY && kind != BLOBS && kind != BESIDE_A_SHAPE;
      return this == RIGHT || this == FATTER_BY_HALF_A_MM || (this == TWO_EXCHANGED && equal);
    }

    /** Fatter islands are found by the blank's edge alone. */
    boolean needsEdge() {
      return this == FATTER_BY_HALF_A_MM || this == FATTER_BY_1_4_MM;
    }

    /** The openings as drawn, before they are laid on the page. */
    Region of(Job job, Job another, Random random) {
      return switch (this) {
        case RIGHT -> job.openings();
        case MIRRORED -> job.openings().map(Affine.scale(-1, 1));
        case LARGER_BY_HALF_A_PERCENT -> job.openings().map(Affine.scale(1.005, 1.005));
        case LARGER_BY_2_PERCENT -> job.openings().map(Affine.scale(1.02, 1.02));
        case SMALLER_BY_1_PERCENT -> job.openings().map(Affine.scale(0.99, 0.99));
        case STRETCHED_BY_1_PERCENT -> job.openings().map(Affine.scale(1.01, 1));
        case FATTER_BY_HALF_A_MM -> job.openings().offset(0.5, 0.01);
        case FATTER_BY_1_4_MM -> job.openings().offset(1.4, 0.01);
        case ONE_MOVED_BY_2_MM -> moved(job, job.at(0.4, 0.6), 2, random);
        case ONE_MOVED_BY_5_MM -> moved(job, job.at(0.3, 0.5), 5, random);
        case ONE_MOVED_BY_10_MM -> moved(job, job.at(0.5, 0.4), 10, random);
        case OUTER_ONE_MOVED_BY_10_MM -> moved(job, job.at(0, 1), 10, random);
        case ONE_MISSING -> without(job, List.of(job.at(0.4, 0.3)));
        case ONE_MORE -> job.openings().union(Region.of(round(spare(job), 5, 0, 24)));
        case TWO_EXCHANGED -> exchanged(job);
        case A_QUARTER_MISSING -> missing(job, i -> isInCorner(job, i));
        case HALF_LEFT_OUT_AT_RANDOM -> missing(job, i -> random.nextBoolean());
        case ANOTHER -> another.openings();
      };
    }

    private static boolean isInCorner(Job job, int island) {
      Vec at = job.middle(island);
      return at.x() > job.blank.maxX() / 2 && at.y() > job.blank.maxY() / 2;
    }

    /** Between four cells, where there is room. */
    private static Vec spare(Job job) {
      Vec at = job.middle(job.at(0.6, 0.4));
      double x = Math.round((at.x() - MARGIN) / CELL) * CELL + MARGIN;
      double y = Math.round((at.y() - MARGIN) / CELL) * CELL + MARGIN;
      return new Vec(x, y);
    }

    private static Region moved(Job job, int island, double by, Random random) {
      double t = random.nextDouble() * 2 * Math.PI;
      Affine move = Affine.move(by * Math.cos(t), by * Math.sin(t));
      List<List<Ring>> islands = new ArrayList<>(job.islands);
      islands.set(island, islands.get(island).stream().map(r -> r.map(move)).toList());
      return region(islands);
    }

    private static Region without(Job job, List<Integer> islands) {
      List<List<Ring>> rest = new ArrayList<>();
      for (int i = 0; i < job.islands.size(); i++) {
        if (!islands.contains(i)) {
          rest.add(job.islands.get(i));
        }
      }
      return region(rest);
    }

    private static Region missing(Job job, IntPredicate which) {
      return without(job, IntStream.range(0, job.islands.size()).filter(which).boxed().toList());
    }

    /** The island in the middle and the one of the most other size. */
    private static Region exchanged(Job job) {
      int a = job.at(0.5, 0.5);
      double size = job.islands.get(a).get(0).length();
      int b = a;
      for (int i = 0; i < job.islands.size(); i++) {
        double off = Math.abs(job.islands.get(i).get(0).length() - size);
        boolean small = job.islands.get(i).get(0).length() < 8 * CELL;
        b = small && off > Math.abs(job.islands.get(b).get(0).length() - size) ? i : b;
      }
      Vec by = job.middle(b).minus(job.middle(a));
      List<List<Ring>> islands = new ArrayList<>(job.islands);
      islands.set(a, job.islands.get(b).stream().map(r -> r.map(move(by.times(-1)))).toList());
      islands.set(b, job.islands.get(a).stream().map(r -> r.map(move(by))).toList());
      return region(islands);
    }

    private static Affine move(Vec by) {
      return Affine.move(by.x(), by.y());
    }
  }

  /** Somewhere on a page, turned anyhow. */
  static Affine anywhere(Random random) {
    return Affine.turn(random.nextDouble() * 2 * Math.PI)
        .then(Affine.move(random.nextDouble() * 500, random.nextDouble() * 500));
  }

  /** Openings filled, and the blank's edge if it is drawn. */
  static ShopDrawing drawing(Region openings, Optional<Ring> edge) {
    List<ShopDrawing.Piece> pieces = new ArrayList<>();
    edge.ifPresent(
        e -> pieces.add(new ShopDrawing.Piece(List.of(e), FillRule.NONZERO, Optional.empty())));
    pieces.add(new ShopDrawing.Piece(openings.rings(), FillRule.EVEN_ODD, Optional.of("#404a55")));
    return new ShopDrawing(pieces);
  }
}
