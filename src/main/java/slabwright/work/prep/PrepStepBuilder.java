package slabwright.work.prep;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import slabwright.units.Message;
import slabwright.work.book.Figure;
import slabwright.work.book.GritRate;
import slabwright.work.book.PrepRates;
import slabwright.work.book.RateArithmetic;
import slabwright.work.book.ShopBook;
import slabwright.work.step.StepKind;
import slabwright.work.step.StepPlace;
import slabwright.work.step.StepSubject;

/** Lists the steps of preparing one floor. */
final class PrepStepBuilder {
  /** Density of normal-weight concrete, 2300 kg/m³, in kg/mm³. */
  private static final double CONCRETE = 2300e-9;

  private final PrepParameters floor;
  private final ShopBook book;
  private final PrepRates rates;

  PrepStepBuilder(PrepParameters floor, ShopBook book) {
    this.floor = floor;
    this.book = book;
    this.rates = book.prep();
  }

  List<PrepStep> build() {
    List<PrepStep> steps = new ArrayList<>();
    levelled().forEach(t -> steps.add(level(t, steps.size())));
    floor.of(PrepZone.Kind.RESIDUE).forEach(z -> steps.add(residue(z, steps.size())));
    List<GritRate> grits = grits();
    grits.stream().filter(GritRate::isMetal).forEach(g -> steps.add(pass(g)));
    if (!floor.gaps().isEmpty()) {
      steps.add(fill());
    }
    grits.stream().filter(g -> !g.isMetal()).forEach(g -> steps.add(pass(g)));
    steps.add(clean());
    return steps;
  }

  /** What is ground off first, so that all mortar cures together. */
  private List<PrepParameters.ToLevel> levelled() {
    return floor.toLevel().stream()
        .sorted(Comparator.comparing(PrepParameters.ToLevel::isLow))
        .toList();
  }

  /** Grinding takes as long as there is to grind off; the book's rate is for a depth of its own. */
  private Figure<Duration> deeper(Duration time, PrepParameters.ToLevel t) {
    return t.isLow() || t.off().isEmpty()
        ? Figure.known(time)
        : rates
            .trenchLevellingDepth()
            .map(
                mm ->
                    Duration.ofSeconds(Math.round(time.toSeconds() * t.off().getAsDouble() / mm)));
  }

  private PrepStep level(PrepParameters.ToLevel t, int number) {
    boolean low = t.isLow();
    Message name =
        low
            ? Message.of("work.prep-step-builder.fill-and-grind-flush", t.name())
            : Message.of("work.prep-step-builder.grind-flush", t.name());
    return new PrepStep(
        "level." + number,
        name,
        PrepStep.Kind.LEVEL,
        StepSubject.of(low ? StepKind.FILL_TRENCH : StepKind.LEVEL_TRENCH, t.place()),
        0,
        t.mm2(),
        RateArithmetic.time(0, rates.trenchLevelling()),
        RateArithmetic.time(t.mm2(), rates.trenchLevelling()).flatMap(d -> deeper(d, t)),
        t.isLow() || t.off().isEmpty()
            ? RateArithmetic.dust(t.mm2(), rates.trenchDust())
            : Figure.known(CONCRETE * t.mm2() * t.off().getAsDouble()));
  }

  private PrepStep residue(PrepZone z, int number) {
    return new PrepStep(
        "residue." + number,
        Message.of("work.prep-step-builder.take-off", z.name()),
        PrepStep.Kind.RESIDUE,
        StepSubject.of(StepKind.TAKE_OFF_RESIDUE, z.place()),
        z.machine(),
        z.hand(),
        RateArithmetic.time(z.machine(), rates.residueMachine()),
        RateArithmetic.time(z.hand(), rates.residueHand()),
        RateArithmetic.dust(z.area(), rates.residueDust()));
  }

  /** The passes for the wanted exposure; without a wish there are none to plan. */
  private List<GritRate> grits() {
    return floor
        .wanted()
        .map(w -> book.grits().stream().filter(g -> g.serves(w)).toList())
        .orElse(List.of());
  }

  private PrepStep pass(GritRate g) {
    return new PrepStep(
        "grit." + g.name(),
        Message.of("work.prep-step-builder.grind", g.name()),
        g.isMetal() ? PrepStep.Kind.METAL_PASS : PrepStep.Kind.FINE_PASS,
        StepSubject.pass(g.isMetal() ? StepKind.METAL_PASS : StepKind.FINE_PASS, g.name()),
        floor.machine(),
        floor.hand(),
        RateArithmetic.time(floor.machine(), g.machineRate()),
        RateArithmetic.time(floor.hand(), g.handRate()),
        RateArithmetic.dust(floor.area(), g.dust()));
  }

  private PrepStep fill() {
    double run = floor.gaps().stream().mapToDouble(FillerGap::run).sum();
    return new PrepStep(
        "fill",
        Message.of("work.prep-step-builder.fill-joints-cracks-and-spalls"),
        PrepStep.Kind.FILL,
        StepSubject.of(StepKind.FILL_GAPS, StepPlace.WHOLE_FLOOR),
        0,
        0,
        RateArithmetic.time(0, rates.filling()),
        RateArithmetic.time(run, rates.filling()),
        Figure.known(0.0));
  }

  private PrepStep clean() {
    return new PrepStep(
        "clean",
        Message.of("work.prep-step-builder.vacuum-and-clean"),
        PrepStep.Kind.CLEAN,
        StepSubject.of(StepKind.CLEAN, StepPlace.WHOLE_FLOOR),
        0,
        floor.area(),
        RateArithmetic.time(0, rates.cleaning()),
        RateArithmetic.time(floor.area(), rates.cleaning()),
        Figure.known(0.0));
  }
}
