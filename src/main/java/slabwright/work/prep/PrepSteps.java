package slabwright.work.prep;

import java.util.ArrayList;
import java.util.List;
import slabwright.work.book.Figure;
import slabwright.work.book.GritRate;
import slabwright.work.book.Hours;
import slabwright.work.book.PrepRates;
import slabwright.work.book.ShopBook;

/** Lists the steps of preparing one floor. */
final class PrepSteps {
  private final PrepFloor floor;
  private final ShopBook book;
  private final PrepRates rates;

  PrepSteps(PrepFloor floor, ShopBook book) {
    this.floor = floor;
    this.book = book;
    this.rates = book.prep();
  }

  List<PrepStep> all() {
    List<PrepStep> steps = new ArrayList<>();
    floor.toLevel().forEach(t -> steps.add(level(t, steps.size())));
    floor.of(PrepZone.Kind.RESIDUE).forEach(z -> steps.add(residue(z, steps.size())));
    List<GritRate> grits = grits();
    grits.stream().filter(PrepSteps::isMetal).forEach(g -> steps.add(pass(g)));
    if (!floor.gaps().isEmpty()) {
      steps.add(fill());
    }
    grits.stream().filter(g -> !isMetal(g)).forEach(g -> steps.add(pass(g)));
    steps.add(clean());
    return steps;
  }

  private PrepStep level(PrepFloor.ToLevel t, int number) {
    String how = t.kind() == PrepZone.Kind.TRENCH_LOW ? "Fill and grind flush: " : "Grind flush: ";
    return new PrepStep(
        "level." + number,
        how + t.name(),
        PrepStep.Kind.LEVEL,
        0,
        t.mm2(),
        Hours.of(0, rates.trenchLevelling()),
        Hours.of(t.mm2(), rates.trenchLevelling()),
        Hours.dust(t.mm2(), rates.trenchDust()));
  }

  private PrepStep residue(PrepZone z, int number) {
    return new PrepStep(
        "residue." + number,
        "Take off: " + z.name(),
        PrepStep.Kind.RESIDUE,
        z.machine(),
        z.hand(),
        Hours.of(z.machine(), rates.residueMachine()),
        Hours.of(z.hand(), rates.residueHand()),
        Hours.dust(z.area(), rates.residueDust()));
  }

  /** The passes for the wanted exposure; without a wish there are none to plan. */
  private List<GritRate> grits() {
    return floor
        .wanted()
        .map(w -> book.grits().stream().filter(g -> g.serves(w)).toList())
        .orElse(List.of());
  }

  private static boolean isMetal(GritRate g) {
    return g.family().maybe().filter("metal"::equals).isPresent();
  }

  private PrepStep pass(GritRate g) {
    return new PrepStep(
        "grit." + g.name(),
        "Grind, " + g.name(),
        isMetal(g) ? PrepStep.Kind.METAL_PASS : PrepStep.Kind.FINE_PASS,
        floor.machine(),
        floor.hand(),
        Hours.of(floor.machine(), g.machineRate()),
        Hours.of(floor.hand(), g.handRate()),
        Hours.dust(floor.area(), g.dust()));
  }

  private PrepStep fill() {
    double run = floor.gaps().stream().mapToDouble(FillerGap::run).sum();
    return new PrepStep(
        "fill",
        "Fill joints, cracks and spalls",
        PrepStep.Kind.FILL,
        0,
        0,
        Hours.of(0, rates.filling()),
        Hours.of(run, rates.filling()),
        Figure.known(0.0));
  }

  private PrepStep clean() {
    return new PrepStep(
        "clean",
        "Vacuum and clean",
        PrepStep.Kind.CLEAN,
        0,
        floor.area(),
        Hours.of(0, rates.cleaning()),
        Hours.of(floor.area(), rates.cleaning()),
        Figure.known(0.0));
  }
}
