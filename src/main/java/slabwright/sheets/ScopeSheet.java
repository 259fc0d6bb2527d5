package slabwright.sheets;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.work.WorkPlan;
import slabwright.work.job.Cost;
import slabwright.work.job.CostLine;
import slabwright.work.job.Scope;

/** Sheet 8: what is included and what is not, the advice log, and the only page with prices. */
final class ScopeSheet {
  private final WorkPlan plan;
  private final Scope scope;
  private final SheetContext context;

  ScopeSheet(WorkPlan plan, Scope scope, SheetContext context) {
    this.plan = plan;
    this.scope = scope;
    this.context = context;
  }

  List<Draft> drafts() {
    Draft draft =
        new Draft(
            "8",
            "Scope, cost and advice",
            "Prices from the shop book alone; what is not in it is left open, never guessed",
            "",
            Optional.empty(),
            List.of());
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Prose(WorkPlan.NOTICE));
    blocks.add(new Prose(plan.book().origin()));
    blocks.add(new Gap(2));
    sentences(blocks, "Included", scope.included());
    sentences(blocks, "Not included", scope.excluded());
    cost(blocks, scope.cost());
    advice(blocks);
    blocks.add(new SignLine("client"));
    blocks.add(new SignLine("contractor"));
    return ColumnPages.of(context.page(), draft, blocks);
  }

  private static void sentences(List<Block> blocks, String heading, List<String> lines) {
    if (!lines.isEmpty()) {
      blocks.add(new Heading(heading));
      List<List<Cell>> rows = lines.stream().map(l -> List.of(Cell.of(l))).toList();
      blocks.add(Table.of(List.of(Column.words("")), rows));
      blocks.add(new Gap(3));
    }
  }

  private static void cost(List<Block> blocks, Cost cost) {
    List<List<Cell>> rows = new ArrayList<>();
    for (CostLine l : cost.lines()) {
      rows.add(
          List.of(
              Cell.of(l.what() + " (" + l.source() + ")"),
              Cell.of(l.quantity().text(q -> q)),
              Cell.of(l.unitPrice().text(BigDecimal::toPlainString)),
              Cell.of(l.amount().maybe().map(BigDecimal::toPlainString).orElse("open"))));
    }
    boolean whole = cost.total().isKnown();
    String sum = (whole ? cost.total().maybe().orElseThrow() : cost.known()).toPlainString();
    String label = whole ? "Total" : "Known so far; open lines come on top";
    blocks.add(new Heading("Cost, " + cost.currency()));
    blocks.add(
        new Table(
            List.of(
                Column.words("what, and where it is counted"),
                Column.number("quantity"),
                Column.number("each"),
                Column.number(cost.currency())),
            rows,
            List.of(Cell.of(label), Cell.of(""), Cell.of(""), Cell.of(sum))));
    blocks.add(new Gap(3));
  }

  private void advice(List<Block> blocks) {
    if (scope.advice().isEmpty()) {
      return;
    }
    blocks.add(new Heading("Advice log"));
    List<List<Cell>> rows = new ArrayList<>();
    for (Scope.Given g : scope.advice()) {
      Cell tick = g.declined() ? Cell.of("") : new Cell.Tick();
      Cell standing = g.declined() ? Cell.bold("declined") : Cell.of("open");
      rows.add(List.of(standing, Cell.of(g.words()), tick));
    }
    blocks.add(
        Table.of(
            List.of(
                Column.narrow("stands"), Column.words("advice given"), Column.narrow("declines")),
            rows));
    scope.declined().forEach(g -> blocks.add(new DeclinedBlock(g.words(), g.standing())));
    blocks.add(new Gap(3));
  }
}
