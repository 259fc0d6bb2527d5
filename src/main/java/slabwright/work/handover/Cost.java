package slabwright.work.handover;

import java.math.BigDecimal;
import java.util.List;
import slabwright.work.WorkPlan;
import slabwright.work.book.Figure;

/**
 * What the job costs by the shop book; a price that is not there is never guessed.
 *
 * @param total of all lines; missing when a line is
 * @param known sum of the lines that are known
 */
public record Cost(
    String currency, List<CostLine> lines, Figure<BigDecimal> total, BigDecimal known) {
  public Cost {
    lines = List.copyOf(lines);
  }

  public static Cost of(WorkPlan plan) {
    List<CostLine> lines = new CostLineBuilder(plan).build();
    return new Cost(
        plan.book().currency(),
        lines,
        Figure.all(lines.stream().map(CostLine::amount).toList()).map(Cost::sum),
        sum(lines.stream().flatMap(l -> l.amount().maybe().stream()).toList()));
  }

  private static BigDecimal sum(List<BigDecimal> amounts) {
    return amounts.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}
