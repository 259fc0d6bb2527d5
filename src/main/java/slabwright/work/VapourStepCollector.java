package slabwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.site.Finish;
import slabwright.work.air.SolventShare;
import slabwright.work.air.VapourStep;
import slabwright.work.book.FastestRate;
import slabwright.work.book.Figure;
import slabwright.work.book.Product;
import slabwright.work.book.ProductKind;
import slabwright.work.book.ShopBook;
import slabwright.work.coat.CoatPlan;
import slabwright.work.prep.FillerGap;
import slabwright.work.step.AirEffect;
import slabwright.work.step.StepKind;
import slabwright.work.step.StepType;

/** Every step of one floor area that sets vapour free: coats, mist coats and filler; one use. */
final class VapourStepCollector {
  private final AreaTakeoff floor;
  private final List<CoatPlan> coats;
  private final ShopBook book;
  private final Optional<Product> filler;
  private final List<StepTiming> laid;

  VapourStepCollector(
      AreaTakeoff floor, List<CoatPlan> coats, ShopBook book, List<StepTiming> laid) {
    this.floor = floor;
    this.coats = coats;
    this.book = book;
    this.filler = book.first(ProductKind.FILLER);
    this.laid = laid;
  }

  Figure<List<LaidVapour>> collect() {
    List<Figure<List<LaidVapour>>> lists = new ArrayList<>(coats.stream().map(this::of).toList());
    if (!floor.prep().gaps().isEmpty()) {
      filler.ifPresent(p -> lists.add(fill(p)));
    }
    return Figure.all(lists).map(l -> l.stream().flatMap(List::stream).toList());
  }

  private Figure<List<LaidVapour>> of(CoatPlan plan) {
    return plan.product()
        .solvents()
        .flatMap(
            shares ->
                shares.isEmpty()
                    ? Figure.known(List.of())
                    : plan.volume().map(v -> coats(plan, shares, v)));
  }

  private List<LaidVapour> coats(CoatPlan plan, List<SolventShare> shares, double mm3) {
    double quick = FastestRate.timeShare(plan.job().rate(), fastest(plan));
    List<LaidVapour> steps = new ArrayList<>();
    for (StepTiming l : laid) {
      double part = partOf(plan, l.type());
      if (part > 0) {
        VapourStep step = step(l, shares, mm3 * part, quick);
        steps.add(new LaidVapour(step, plan.job().mm2() * part, mm3 * part));
      }
    }
    return steps;
  }

  private Figure<Double> fastest(CoatPlan plan) {
    return plan.job().target() == Finish.Target.INLAY
        ? book.inlay().mistFastest()
        : plan.product().laying().fastest();
  }

  /** How much of one coat's volume a step lays; an inlay's is shared out by area. */
  private static double partOf(CoatPlan plan, StepType type) {
    boolean lays = type.coat().filter(c -> c.place() == plan.job().place()).isPresent();
    return lays && type.air() instanceof AirEffect.Vapour v ? v.share() : 0;
  }

  private Figure<List<LaidVapour>> fill(Product p) {
    double gaps = floor.prep().gaps().stream().mapToDouble(FillerGap::mm3).sum();
    return p.solvents().with(p.spread().loss(), (shares, loss) -> fill(shares, gaps / (1 - loss)));
  }

  private List<LaidVapour> fill(List<SolventShare> shares, double mm3) {
    double quick = FastestRate.timeShare(book.prep().filling(), book.prep().fillingFastest());
    return shares.isEmpty()
        ? List.of()
        : laid.stream()
            .filter(l -> l.type().kind() == StepKind.FILL_GAPS)
            .map(l -> new LaidVapour(step(l, shares, mm3, quick), 0, mm3))
            .toList();
  }

  private static VapourStep step(
      StepTiming l, List<SolventShare> shares, double mm3, double quick) {
    List<VapourStep.Liquid> liquids =
        shares.stream().map(s -> new VapourStep.Liquid(s.solvent(), mm3 * s.share())).toList();
    return new VapourStep(l.type(), l.name(), l.from(), l.minutes(), l.minutes() * quick, liquids);
  }
}
