package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import slabwright.inlay.proof.PoseCandidates.Match;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.shape.near.BoxIndex;

/**
 * Which two matches to take together when so many contours look alike that each with each would be
 * far too many, nearly all of them wrong.
 *
 * <p>A match that has few like it at its scale is still taken with each. Of two that both have
 * many, one turn must bring at least two of the plan's contours near by onto drawn ones too; where
 * it puts the largest contours of the plan drawn ones are looked for, and the match is taken with
 * those farthest away, which fix size and turn the best.
 */
final class CrowdedMatches {
  private static final int FEW = 12;
  private static final int NEIGHBOURS = 8;
  private static final int AGREEING = 2;
  private static final int FARTHEST = 3;
  private static final double TURNS_AGREE = 0.03;

  /** A contour with a smaller share of the area changes in scale by more when drawn fatter. */
  private static final double COMPARABLE = 0.25;

  /** Where so many may be the neighbour, that one of them is there says nothing. */
  private static final int TOO_MANY = 100;

  /** Of log area: more than scales that agree differ by, so that they are at most a step apart. */
  private static final double SIZE_STEP = 2 * Math.log(1.04);

  private final PlannedPiece sheet;
  private final ScaleRange scales;
  private final List<Likes> likes = new ArrayList<>();
  private final Map<Integer, BoxIndex<RingMoments>> bySize = new HashMap<>();

  /** A contour's matches by their scale, and the contours about it. */
  private record Likes(
      List<Match> all, TreeMap<Double, List<Match>> byScale, List<RingMoments> neighbours) {
    static Likes of(List<Match> all, List<RingMoments> neighbours) {
      TreeMap<Double, List<Match>> byScale = new TreeMap<>();
      all.forEach(m -> byScale.computeIfAbsent(m.scale(), s -> new ArrayList<>()).add(m));
      return new Likes(all, byScale, neighbours);
    }

    /** Those that may agree with this scale, at least so many if there are. */
    List<Match> at(double scale, int least) {
      List<Match> at = new ArrayList<>();
      double from = scale / (1 + PoseCandidates.SCALES_AGREE);
      double to = scale / (1 - PoseCandidates.SCALES_AGREE);
      for (List<Match> same : byScale.subMap(from, true, to, true).values()) {
        at.addAll(same);
        if (at.size() >= least) {
          return at;
        }
      }
      return at;
    }

    boolean hasManyAt(double scale) {
      return at(scale, FEW + 1).size() > FEW;
    }
  }

  /** A neighbour that is drawn where the match's place and scale and this turn bring it. */
  private record Seen(int neighbour, boolean mirrored, double turn, Match match) {
    boolean agreesWith(Seen o) {
      double apart = Math.abs(turn - o.turn);
      return mirrored == o.mirrored && Math.min(apart, 2 * Math.PI - apart) < TURNS_AGREE;
    }
  }

  /**
   * Of a drawing.
   *
   * @param ofRings the matches of each of the plan's largest contours
   * @param ofEdge those of its edge
   */
  CrowdedMatches(
      PlannedPiece sheet,
      List<RingMoments> drawn,
      ScaleRange scales,
      List<List<Match>> ofRings,
      List<Match> ofEdge) {
    this.sheet = sheet;
    this.scales = scales;
    for (int i = 0; i < ofRings.size(); i++) {
      likes.add(Likes.of(ofRings.get(i), neighbours(sheet.rings.get(i))));
    }
    likes.add(Likes.of(ofEdge, List.of()));
    for (RingMoments d : drawn) {
      bySize.computeIfAbsent(size(d.area()), s -> new BoxIndex<>()).add(d.ring().bounds(), d);
    }
  }

  private static int size(double area) {
    return (int) Math.floor(Math.log(area) / SIZE_STEP);
  }

  private List<RingMoments> neighbours(RingMoments of) {
    double apart = PoseCandidates.LEAST_APART * Math.sqrt(of.area());
    return sheet.rings.stream()
        .filter(r -> r.area() >= COMPARABLE * of.area())
        .filter(r -> r.centroid().distanceTo(of.centroid()) > apart)
        .sorted(Comparator.comparingDouble(r -> r.centroid().distanceTo(of.centroid())))
        .limit(NEIGHBOURS)
        .toList();
  }

  /**
   * Gives every two to take together.
   *
   * @param early how many of the plan's contours are taken with the others
   * @return whether what is given is enough: false where many are alike and no neighbour is there
   */
  boolean pairs(int early, BiConsumer<Match, Match> pair) {
    boolean crowded = false;
    boolean told = false;
    for (int i = 0; i + 1 < likes.size(); i++) {
      for (Match a : likes.get(i).all) {
        boolean many = likes.get(i).hasManyAt(a.scale());
        if (i < early) {
          rare(a, many, pair);
        }
        if (many) {
          crowded = true;
          told |= byNeighbours(a, likes.get(i).neighbours, pair);
        }
      }
    }
    return told || !crowded;
  }

  /** With all that agree in scale, unless many are like it and like the other too. */
  private void rare(Match a, boolean many, BiConsumer<Match, Match> pair) {
    for (Likes other : likes) {
      if (!many || !other.hasManyAt(a.scale())) {
        other.at(a.scale(), Integer.MAX_VALUE).forEach(b -> pair.accept(a, b));
      }
    }
  }

  private boolean byNeighbours(
      Match a, List<RingMoments> neighbours, BiConsumer<Match, Match> pair) {
    List<Seen> seen = new ArrayList<>();
    for (int k = 0; k < neighbours.size(); k++) {
      Vec from = neighbours.get(k).centroid().minus(a.plan().centroid());
      Bounds about = Bounds.of(List.of(a.drawn().centroid()));
      double reach = (1 + PoseCandidates.SCALES_AGREE) * a.scale() * from.length();
      for (Match b : new Look(a, neighbours.get(k)).in(about.grown(reach))) {
        double turn = b.drawn().centroid().minus(a.drawn().centroid()).angle();
        seen.add(new Seen(k, false, upTo2Pi(turn - from.angle()), b));
        seen.add(new Seen(k, true, upTo2Pi(turn + from.angle()), b));
      }
    }
    int least = Math.min(AGREEING, neighbours.size());
    List<List<Seen>> agreeing = agreeing(seen, least);
    agreeing.forEach(some -> farthest(a, some, pair));
    return !agreeing.isEmpty();
  }

  private static double upTo2Pi(double turn) {
    double whole = 2 * Math.PI;
    return turn - whole * Math.floor(turn / whole);
  }

  /** Those of one turn, if they are of so many neighbours; first where most agree, each once. */
  private static List<List<Seen>> agreeing(List<Seen> seen, int least) {
    int[] count = new int[seen.size()];
    for (int i = 0; i < count.length; i++) {
      for (int k = 0; k < count.length; k++) {
        count[i] += seen.get(i).agreesWith(seen.get(k)) ? 1 : 0;
      }
    }
    List<List<Seen>> groups = new ArrayList<>();
    for (int most = most(count); count.length > 0 && count[most] >= least; most = most(count)) {
      List<Seen> group = new ArrayList<>();
      for (int k = 0; k < count.length; k++) {
        if (count[k] > 0 && seen.get(most).agreesWith(seen.get(k))) {
          group.add(seen.get(k));
          count[k] = 0;
        }
      }
      if (group.stream().mapToInt(Seen::neighbour).distinct().count() >= least) {
        groups.add(group);
      }
    }
    return groups;
  }

  private static int most(int[] of) {
    int most = 0;
    for (int i = 1; i < of.length; i++) {
      most = of[i] > of[most] ? i : most;
    }
    return most;
  }

  private void farthest(Match a, List<Seen> seen, BiConsumer<Match, Match> pair) {
    Pose pose = through(a, seen);
    Comparator<RingMoments> near =
        Comparator.comparingDouble(r -> r.centroid().distanceTo(a.plan().centroid()));
    List<Match> far = new ArrayList<>();
    List<RingMoments> largest = sheet.rings.subList(0, likes.size() - 1);
    for (RingMoments r : largest.stream().sorted(near.reversed()).toList()) {
      Vec at = pose.apply(r.centroid());
      double reach = PoseCandidates.SCALES_AGREE * at.distanceTo(a.drawn().centroid());
      if (far.size() < FARTHEST) {
        new Look(a, r)
            .in(Bounds.of(List.of(at)).grown(reach)).stream()
                .min(Comparator.comparingDouble(m -> m.drawn().centroid().distanceTo(at)))
                .ifPresent(far::add);
      }
    }
    (far.isEmpty() ? seen.stream().map(Seen::match).toList() : far).forEach(b -> pair.accept(a, b));
  }

  /** By least squares through the middles. */
  private static Pose through(Match a, List<Seen> seen) {
    boolean mirrored = seen.get(0).mirrored;
    double re = 0;
    double im = 0;
    double all = 0;
    for (Seen s : seen) {
      Vec from = s.match.plan().centroid().minus(a.plan().centroid());
      Vec p = mirrored ? new Vec(from.x(), -from.y()) : from;
      Vec q = s.match.drawn().centroid().minus(a.drawn().centroid());
      re += p.dot(q);
      im += p.cross(q);
      all += p.dot(p);
    }
    return Pose.taking(
        a.plan().centroid(),
        a.drawn().centroid(),
        Math.hypot(re, im) / all,
        Math.atan2(im, re),
        mirrored);
  }

  /** For what may be a contour of the plan, given a match; nothing where that says nothing. */
  private final class Look {
    private final Match given;
    private final RingMoments wanted;
    private final List<Match> found = new ArrayList<>();
    private int looked;

    Look(Match given, RingMoments wanted) {
      this.given = given;
      this.wanted = wanted;
    }

    List<Match> in(Bounds where) {
      int size = size(wanted.area() * given.scale() * given.scale());
      for (int s = size - 1; s <= size + 1; s++) {
        BoxIndex<RingMoments> those = bySize.get(s);
        if (those != null && those.any(where, this::isOneTooMany)) {
          return List.of();
        }
      }
      return found;
    }

    private boolean isOneTooMany(RingMoments drawn) {
      looked++;
      Match m = new Match(wanted, drawn);
      if (given.agreesWith(m) && scales.holds(m.scale()) && m.isAlike()) {
        found.add(m);
      }
      return looked > TOO_MANY;
    }
  }
}
