package slabwright.work.handover;

import java.util.List;
import java.util.Optional;
import slabwright.work.WorkPlan;
import slabwright.work.book.Figure;
import slabwright.work.coat.Kits;

/**
 * What of the products with solvent may stand on the site overnight: at most all that is bought.
 */
public final class SolventStock {
  private SolventStock() {}

  /** Products that have solvents, or of which nobody knows that they have none. */
  private static List<BuyLine> lines(WorkPlan plan) {
    return BuyList.of(plan).stream()
        .filter(
            b ->
                plan.book().products().stream()
                    .filter(p -> p.id().equals(b.product()))
                    .anyMatch(p -> p.solvents().maybe().filter(List::isEmpty).isEmpty()))
        .toList();
  }

  /** Mm³ in the cans that are bought; refused where one is not known, empty without any. */
  public static Optional<Figure<Double>> bought(WorkPlan plan) {
    List<BuyLine> lines = lines(plan);
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Figure.all(lines.stream().map(BuyLine::kits).toList())
                .map(all -> all.stream().mapToDouble(SolventStock::mm3).sum()));
  }

  private static double mm3(Kits kits) {
    return kits.lines().stream().mapToDouble(l -> l.kit().mm3() * l.count()).sum();
  }
}
