package slabwright.inlay.panel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import slabwright.inlay.stencil.Finding;
import slabwright.inlay.stencil.LoosePiece;
import slabwright.inlay.stencil.Stencil;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.units.Message;

/**
 * Gives a stencil vinyl only as large as its colour needs: local blanks of openings and margin,
 * near ones merged where that costs less, where they cost less than the panels of the whole blank.
 * A local blank that has no room for three registration ticks grows.
 *
 * <p>The cost is that of seams and roll ({@link SeamWeights}) with film to lay, paper for what the
 * film no longer covers, and each piece to be set to its ticks; {@link #LAYING} and the others are
 * our own choice, no source. Known limit: each panel takes its length of the roll, two narrow ones
 * are not put side by side.
 */
public final class LocalBlankPlanner {
  /** Of a square metre of film to lay, in the unit of {@link SeamWeights}. */
  static final double LAYING = 200;

  /** Of a square metre of paper. */
  static final double PAPERING = 60;

  /** Of a piece of its own: to cut, carry and set to its ticks. */
  static final double PIECE = 125;

  static final double M2 = 1e6;

  /** Beyond this many islands of a colour nobody lays a blank for each. */
  private static final int MOST_ISLANDS = 400;

  /** A share of roll or of film to lay above this is as good as all of it. */
  private static final double WORTH_IT = 0.95;

  private static final double GROWTH = 20;
  private static final int MOST_GROWN = 8;

  private final StencilSet set;
  private final PanelPlan whole;
  private final PanelParameters rules;
  private final double margin;
  private final double reach;
  private final Region allOpenings;
  private List<RegistrationTick> ticks;
  private int letters;

  /**
   * A stencil set with its panels.
   *
   * @param set its stencils cut out of the blanks of the panels
   */
  public record Planned(StencilSet set, PanelPlan panels) {}

  /**
   * A planner.
   *
   * @param whole the panels of the whole blank
   * @param margin of film around openings, mm
   * @param reach of overspray, mm
   */
  public LocalBlankPlanner(
      StencilSet set, PanelPlan whole, PanelParameters rules, double margin, double reach) {
    this.set = set;
    this.whole = whole;
    this.rules = rules;
    this.margin = margin;
    this.reach = reach;
    this.allOpenings = set.openings();
    this.ticks = whole.ticks();
    this.letters = whole.seams().size() + 1;
  }

  /**
   * Local blanks for every stencil that they cost less for.
   *
   * @param byHand blanks that a person set, by colour, in the blank's frame; they are not asked
   *     what they cost
   * @param search whether blanks are looked for where none are set
   */
  public Planned plan(Map<String, List<Bounds>> byHand, boolean search) {
    Planned planned = once(byHand, search);
    if (set.stencils().stream().allMatch(planned.panels()::isLocal)) {
      ticks = List.of(); // nothing lies on the whole blank: letters and ticks begin anew
      letters = 0;
      return once(byHand, search);
    }
    return planned;
  }

  private Planned once(Map<String, List<Bounds>> byHand, boolean search) {
    Map<Integer, PanelPlan> local = new TreeMap<>();
    List<Finding> found = new ArrayList<>();
    for (Stencil s : set.stencils()) {
      List<Bounds> hand = byHand.getOrDefault(s.colour(), List.of());
      Optional<PanelPlan> own = Optional.empty();
      if (!hand.isEmpty()) {
        own = byHand(s, hand, found);
      } else if (search && set.stencils().size() > 1) {
        own = cheaper(s);
      }
      own.ifPresent(p -> take(s, p, local));
    }
    return local.isEmpty() && found.isEmpty() ? new Planned(set, whole) : finished(local, found);
  }

  private void take(Stencil s, PanelPlan own, Map<Integer, PanelPlan> local) {
    ticks = new RegistrationPlacer(allOpenings, own.panels(), ticks).placeWhereNeeded();
    letters += strips(own);
    local.put(s.layer(), own);
  }

  /** Ticks that lie on no film are none; the rest are numbered again. */
  private Planned finished(Map<Integer, PanelPlan> local, List<Finding> more) {
    Map<Integer, PanelPlan.Saving> savings = new TreeMap<>();
    for (Stencil s : set.stencils()) {
      if (local.containsKey(s.layer())) {
        savings.put(s.layer(), whole.against(local.get(s.layer()), s));
      }
    }
    PanelPlan with = whole.withLocal(local).withSavings(savings);
    List<Panel> cut = with.cut(set.stencils());
    List<RegistrationTick> kept = new ArrayList<>();
    for (RegistrationTick t : ticks) {
      if (local.isEmpty()
          || cut.stream().anyMatch(p -> !RegistrationPlacer.on(p, List.of(t)).isEmpty())) {
        kept.add(new RegistrationTick(kept.size() + 1, t.at()));
      }
    }
    Map<Integer, PanelPlan> ticked = new TreeMap<>();
    List<Finding> findings = new ArrayList<>(more);
    boolean shared = set.stencils().stream().anyMatch(s -> !with.isLocal(s));
    findings.addAll(shared ? whole.findings() : List.of());
    local.forEach(
        (layer, p) -> {
          List<Finding> own = new ArrayList<>(p.findings());
          p.panels()
              .forEach(
                  x ->
                      PanelBuilder.tooFewTicks(x, RegistrationPlacer.on(x, kept))
                          .ifPresent(own::add));
          findings.addAll(own);
          ticked.put(layer, p.withTicks(kept).withFindings(own));
        });
    List<Stencil> stencils =
        set.stencils().stream()
            .map(s -> with.isLocal(s) ? s.within(with.of(s).blanks()) : s)
            .toList();
    PanelPlan all = with.withTicks(kept).withFindings(findings).withLocal(ticked);
    return new Planned(set.with(stencils), shared ? all : all.withoutPanels());
  }

  private static int strips(PanelPlan p) {
    return p.seams().size() + p.blanks().size();
  }

  /** As set, where they hold all openings and don't meet; else a finding and the whole blank. */
  private Optional<PanelPlan> byHand(Stencil s, List<Bounds> hand, List<Finding> found) {
    boolean meet = false;
    for (int i = 0; i < hand.size(); i++) {
      for (int j = i + 1; j < hand.size(); j++) {
        meet |= hand.get(i).meets(hand.get(j));
      }
    }
    Region films = Region.union(hand.stream().map(Region::rectangle).toList());
    Region left = s.openings().minus(films);
    if (meet || left.area() > 1) {
      found.add(
          Finding.look(
              meet
                  ? Message.of("inlay.local-blanks.meet", s.colour())
                  : Message.of("inlay.local-blanks.openings-outside", s.colour()),
              meet ? hand.get(0).middle() : left.labelPoint()));
      return Optional.empty();
    }
    return Optional.of(planned(s, hand));
  }

  /** The local blanks of a stencil where they cost less than the whole. */
  private Optional<PanelPlan> cheaper(Stencil s) {
    List<Region> islands = s.openings().parts();
    if (islands.isEmpty() || islands.size() > MOST_ISLANDS) {
      return Optional.empty();
    }
    List<Bounds> boxes =
        LocalBoxMerging.apart(
            islands.stream().map(r -> inFrame(r.bounds().grown(margin))).toList());
    List<Bounds> merged = held(s, new LocalBoxMerging(rules, reach).merged(boxes));
    PanelPlan own = planned(s, merged);
    boolean smaller =
        own.rollLength() < WORTH_IT * whole.rollLength(s)
            || own.filmArea(s) < WORTH_IT * whole.filmArea(s);
    return smaller && own.rollLength() <= whole.rollLength(s) && cost(own, s) < costOfWhole(s)
        ? Optional.of(own)
        : Optional.empty();
  }

  private Bounds inFrame(Bounds b) {
    Bounds f = set.blank();
    return new Bounds(
        grid(Math.max(f.minX(), b.minX())),
        grid(Math.max(f.minY(), b.minY())),
        grid(Math.min(f.maxX(), b.maxX())),
        grid(Math.min(f.maxY(), b.maxY())));
  }

  /** To the 0.001 mm grid. */
  private static double grid(double mm) {
    return Math.rint(mm * 1000) / 1000;
  }

  /** Grown until each has its ticks; boxes that then meet become one. */
  private List<Bounds> held(Stencil s, List<Bounds> boxes) {
    List<Bounds> now = boxes;
    for (int n = 0; n < MOST_GROWN; n++) {
      PanelPlan plan = planned(s, now);
      List<RegistrationTick> there =
          new RegistrationPlacer(allOpenings, plan.panels(), ticks).placeWhereNeeded();
      List<Bounds> next = new ArrayList<>();
      for (Bounds b : now) {
        boolean holds =
            plan.panels().stream()
                .filter(p -> b.grown(0.001).contains(p.box().middle()))
                .allMatch(p -> RegistrationPlacer.holds(p, RegistrationPlacer.on(p, there)));
        next.add(holds ? b : inFrame(b.grown(GROWTH)));
      }
      if (next.equals(now)) {
        return now;
      }
      now = LocalBoxMerging.apart(next);
    }
    return now;
  }

  /** Both turns of the strips for all blanks together, the cheaper. */
  private PanelPlan planned(Stencil s, List<Bounds> blanks) {
    List<Bounds> order =
        blanks.stream()
            .sorted(Comparator.comparingDouble(Bounds::minX).thenComparingDouble(Bounds::minY))
            .toList();
    PanelPlan down = planned(s, order, StripDirection.DOWN);
    PanelPlan across = planned(s, order, StripDirection.ACROSS);
    return across.cost().total() < down.cost().total() ? across : down;
  }

  private PanelPlan planned(Stencil s, List<Bounds> blanks, StripDirection turn) {
    List<Double> seams = new ArrayList<>();
    List<Panel> panels = new ArrayList<>();
    List<Seam> laps = new ArrayList<>();
    List<String> order = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    SeamCost cost = SeamCost.NONE;
    Bounds around = Bounds.EMPTY;
    double area = 0;
    int used = letters;
    for (Bounds b : blanks) {
      PanelPlan p = alone(s, b).bestWithoutTicks(turn, used);
      Affine back = Affine.move(b.minX(), b.minY());
      double shift = turn == StripDirection.DOWN ? b.minX() : b.minY();
      p.seams().forEach(x -> seams.add(x + shift));
      p.panels().forEach(x -> panels.add(new Panel(x.name(), moved(x.box(), b))));
      p.laps().forEach(x -> laps.add(moved(x, b)));
      order.addAll(p.layingOrder());
      p.findings().forEach(f -> findings.add(f.moved(back)));
      cost = cost.plus(p.cost());
      around = around.including(b);
      area += b.width() * b.height();
      used += p.seams().size() + 1;
    }
    double waste = 1 - area / (cost.roll() * rules.roll().width());
    return new PanelPlan(
        around,
        turn,
        seams,
        panels,
        order,
        laps,
        ticks,
        cost.roll(),
        waste,
        cost,
        findings,
        blanks,
        Map.of(),
        Map.of());
  }

  /** A set of one stencil on one local blank, in the blank's own frame. */
  private SeamPlanner alone(Stencil s, Bounds b) {
    Affine to = Affine.move(-b.minX(), -b.minY());
    Region open = s.openings().within(b).map(to);
    List<LoosePiece> loose =
        s.loosePieces().stream()
            .filter(l -> b.contains(l.place()))
            .map(l -> new LoosePiece(l.region().map(to)))
            .toList();
    Stencil own =
        new Stencil(s.layer(), s.colour(), Region.empty(), open, open, Region.empty(), loose);
    Bounds size = new Bounds(0, 0, grid(b.width()), grid(b.height()));
    return new SeamPlanner(
        StencilSet.of(size, Vec.ZERO, List.of(own), List.of(), List.of()), rules);
  }

  private static Bounds moved(Bounds box, Bounds b) {
    return new Bounds(
        box.minX() + b.minX(), box.minY() + b.minY(), box.maxX() + b.minX(), box.maxY() + b.minY());
  }

  private static Seam moved(Seam s, Bounds b) {
    Vec by = new Vec(b.minX(), b.minY());
    List<WitnessMark> marks =
        s.marks().stream().map(m -> new WitnessMark(m.at().plus(by), m.arm())).toList();
    return new Seam(s.first(), s.second(), moved(s.lap(), b), marks);
  }

  private double cost(PanelPlan own, Stencil s) {
    double paper =
        own.blanks().stream()
            .mapToDouble(
                b -> (b.width() + 2 * reach) * (b.height() + 2 * reach) - b.width() * b.height())
            .sum();
    return own.cost().total()
        + LAYING * own.filmArea(s) / M2
        + PAPERING * paper / M2
        + PIECE * own.panels().size();
  }

  /** Of this stencil alone on the panels of the whole blank, those that have nothing not cut. */
  private double costOfWhole(Stencil s) {
    SeamPlanner alone = alone(s, set.blank());
    SeamCost cost = alone.costOf(whole.turn(), whole.seams());
    double roll = rules.weights().roll() * (whole.rollLength(s) - cost.roll());
    Bounds b = set.blank();
    double paper = (b.width() + 2 * reach) * (b.height() + 2 * reach) - b.width() * b.height();
    return cost.total()
        + roll
        + LAYING * whole.filmArea(s) / M2
        + PAPERING * paper / M2
        + PIECE * whole.cut(s).size();
  }
}
