package slabwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.work.air.SolventShare;
import slabwright.work.air.VapourStep;
import slabwright.work.book.Figure;
import slabwright.work.book.Product;
import slabwright.work.coat.CoatPlan;
import slabwright.work.prep.FillerGap;
import slabwright.work.step.AirEffect;
import slabwright.work.step.StepKind;
import slabwright.work.step.StepType;

/** Every step of one floor area that sets vapour free: coats, mist coats and filler; one use. */
final class VapourStepCollector {
  private final AreaTakeoff floor;
  private final List<CoatPlan> coats;
  private final Optional<Product> filler;
  private final List<StepTiming> laid;

  VapourStepCollector(
      AreaTakeoff floor, List<CoatPlan> coats, Optional<Product> filler, List<StepTiming> laid) {
    this.floor = floor;
    this.coats = coats;
    this.filler = filler;
    this.laid = laid;
  }

  Figure<List<VapourStep>> collect() {
    List<Figure<List<VapourStep>>> lists = new ArrayList<>(coats.stream().map(this::of).toList());
    if (!floor.prep().gaps().isEmpty()) {
      filler.ifPresent(p -> lists.add(fill(p)));
    }
    return Figure.all(lists).map(l -> l.stream().flatMap(List::stream).toList());
  }

  private Figure<List<VapourStep>> of(CoatPlan plan) {
    return plan.product()
        .solvents()
        .flatMap(
            shares ->
                shares.isEmpty()
                    ? Figure.known(List.of())
                    : plan.volume().map(v -> coats(plan, shares, v)));
  }

  private List<VapourStep> coats(CoatPlan plan, List<SolventShare> shares, double mm3) {
    List<VapourStep> steps = new ArrayList<>();
    for (StepTiming l : laid) {
      double part = partOf(plan, l.type());
      if (part > 0) {
        steps.add(step(l, shares, mm3 * part));
      }
    }
    return steps;
  }

  /** How much of one coat's volume a step lays; an inlay's is shared out by area. */
  private static double partOf(CoatPlan plan, StepType type) {
    boolean lays = type.coat().filter(c -> c.place() == plan.job().place()).isPresent();
    return lays && type.air() instanceof AirEffect.Vapour v ? v.share() : 0;
  }

  private Figure<List<VapourStep>> fill(Product p) {
    double gaps = floor.prep().gaps().stream().mapToDouble(FillerGap::mm3).sum();
    return p.solvents().with(p.spread().loss(), (shares, loss) -> fill(shares, gaps / (1 - loss)));
  }

  private List<VapourStep> fill(List<SolventShare> shares, double mm3) {
    return shares.isEmpty()
        ? List.of()
        : laid.stream()
            .filter(l -> l.type().kind() == StepKind.FILL_GAPS)
            .map(l -> step(l, shares, mm3))
            .toList();
  }

  private static VapourStep step(StepTiming l, List<SolventShare> shares, double mm3) {
    List<VapourStep.Liquid> liquids =
        shares.stream().map(s -> new VapourStep.Liquid(s.solvent(), mm3 * s.share())).toList();
    return new VapourStep(l.type(), l.name(), l.from(), l.minutes(), liquids);
  }
}
