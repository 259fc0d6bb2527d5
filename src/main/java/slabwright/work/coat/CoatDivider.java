package slabwright.work.coat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.work.book.Figure;
import slabwright.work.book.Laying;

/**
 * Divides a coat that outlasts the working day or its wet edge, or that the plan divides, into
 * sections that are each laid in one go, with edges that stay wet where that can be had; one use.
 */
public final class CoatDivider {
  /** A line cuts the floor by so much, mm; what is lost of the area is less than rounding. */
  private static final double KERF = 0.01;

  /** How much of the largest section is aimed at, less every time that one comes out too long. */
  private static final double LESS = 0.9;

  private static final int TRIES = 12;

  private final CoatParameters job;
  private final DivisionParameters site;
  private final CoatPlan whole;

  private CoatDivider(CoatParameters job, DivisionParameters site) {
    this.job = job;
    this.site = site;
    this.whole = CoatPlan.of(job);
  }

  /** The coat, divided where it must be or is. */
  public static CoatPlan plan(CoatParameters job, DivisionParameters site) {
    return new CoatDivider(job, site).plan();
  }

  private CoatPlan plan() {
    Optional<CoatDivider> more = withMoreHands();
    if (more.isPresent()) {
      return more.get().inSections();
    }
    return inSections();
  }

  /**
   * With as few more of the crew as the coat needs to be laid in one go, before a floor is divided
   * or the coat is held: where a kit would outlast its working time, or an edge would dry.
   */
  private Optional<CoatDivider> withMoreHands() {
    boolean isShort = site.given().isEmpty() && fitsTheDay() && !staysWet(whole);
    int most = job.crew().maybe().orElse(0);
    int few = job.people().maybe().orElse(most);
    if (isShort || whole.batches() instanceof Figure.Refused<?>) {
      for (int n = few + 1; n <= most; n++) {
        CoatDivider more = new CoatDivider(job.withPeople(Figure.known(n)), site);
        boolean mixed = more.whole.batches().isKnown();
        if (mixed && (!isShort || staysWet(more.whole))) {
          return Optional.of(more);
        }
      }
    }
    return Optional.empty();
  }

  private boolean fitsTheDay() {
    return whole.coatTime().maybe().filter(t -> t.compareTo(site.day()) <= 0).isPresent();
  }

  private CoatPlan inSections() {
    Optional<Duration> time = whole.coatTime().maybe();
    if (time.isEmpty() || site.floor().isEmpty()) {
      return whole;
    }
    if (!site.given().isEmpty()) {
      List<DividedCoat.DivisionLine> lines =
          site.given().stream()
              .map(l -> new DividedCoat.DivisionLine(l, DividedCoat.Source.PLAN))
              .toList();
      return divided(lines).orElse(whole);
    }
    if (time.get().compareTo(site.day()) > 0) {
      return proposed(site.floor().area() * site.day().toMillis() / time.get().toMillis())
          .orElse(whole);
    }
    return staysWet(whole)
        ? whole
        : proposed(site.floor().area() / 2).filter(CoatDivider::staysWet).orElse(whole);
  }

  /** Smaller and smaller sections till each is done in a day and, if that can be had, stays wet. */
  private Optional<CoatPlan> proposed(double largest) {
    double most = largest;
    Optional<CoatPlan> inADay = Optional.empty();
    for (int i = 0; i < TRIES; i++) {
      for (List<DividedCoat.DivisionLine> lines : DivisionLines.propose(site, most)) {
        Optional<CoatPlan> plan = divided(lines).filter(this::eachInADay);
        if (plan.filter(CoatDivider::staysWet).isPresent()) {
          return plan;
        }
        inADay = inADay.or(() -> plan);
      }
      most *= LESS;
    }
    return inADay;
  }

  /** Also where nobody knows. */
  private static boolean staysWet(CoatPlan plan) {
    return plan.keepsWetEdge().maybe().orElse(true);
  }

  private boolean eachInADay(CoatPlan plan) {
    return plan.divided().orElseThrow().sections().stream()
        .allMatch(
            s -> s.plan().coatTime().maybe().filter(t -> t.compareTo(site.day()) <= 0).isPresent());
  }

  private Optional<CoatPlan> divided(List<DividedCoat.DivisionLine> lines) {
    List<Region> cuts =
        lines.stream().map(l -> Region.strip(DivisionLines.pastTheWalls(l.line()), KERF)).toList();
    List<Region> parts =
        site.floor().minus(Region.union(cuts)).parts().stream()
            .sorted(Comparator.comparingDouble((Region p) -> away(p)).reversed())
            .toList();
    if (parts.size() < 2) {
      return Optional.empty();
    }
    List<Double> walls = parts.stream().map(p -> wall(p, lines)).toList();
    double all = walls.stream().mapToDouble(w -> w).sum();
    double area = parts.stream().mapToDouble(Region::area).sum();
    List<DividedCoat.Section> sections = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      double share = parts.get(i).area() / area;
      double cutIn = all > 0 ? walls.get(i) / all : 0;
      CoatPlan plan = CoatPlan.of(job.of(share, cutIn, grid(parts.get(i))));
      sections.add(new DividedCoat.Section(i + 1, parts.get(i), share, plan));
    }
    return Optional.of(whole.divided(new DividedCoat(sections, lines, lap())));
  }

  private double away(Region part) {
    return part.distanceTo(site.wayOut());
  }

  /** Its edge less what it has from the lines. */
  private static double wall(Region part, List<DividedCoat.DivisionLine> lines) {
    Region near = part.offset(1, 0.5);
    double cut =
        lines.stream()
            .flatMap(l -> near.clip(DivisionLines.pastTheWalls(l.line())).stream())
            .mapToDouble(Line::length)
            .sum();
    return Math.max(0, part.boundaryLength() - cut);
  }

  private Figure<Optional<LaneGrid>> grid(Region part) {
    Vec out = part.contains(site.wayOut()) ? site.wayOut() : part.nearestOnBoundary(site.wayOut());
    return job.grid().map(g -> g.map(whole -> new LaneGrid(part, out, whole.pitch())));
  }

  private OptionalDouble lap() {
    Laying laying = job.product().laying();
    return laying
        .rollerMm()
        .with(laying.lap(), (width, lap) -> width * lap)
        .maybe()
        .map(OptionalDouble::of)
        .orElse(OptionalDouble.empty());
  }
}
