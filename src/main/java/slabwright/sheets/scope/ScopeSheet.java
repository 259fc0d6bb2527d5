package slabwright.sheets.scope;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.SignatureLine;
import slabwright.sheets.page.Slice;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.sheets.page.TypeSizes;
import slabwright.units.Message;
import slabwright.work.WorkPlan;
import slabwright.work.book.Figure;
import slabwright.work.handover.Cost;
import slabwright.work.handover.CostLine;
import slabwright.work.handover.Scope;

/** Sheet 8: what is included and what is not, the advice log, and the only page with prices. */
public final class ScopeSheet {
  private final WorkPlan plan;
  private final Scope scope;
  private final SheetContext context;

  public ScopeSheet(WorkPlan plan, Scope scope, SheetContext context) {
    this.plan = plan;
    this.scope = scope;
    this.context = context;
  }

  public List<PageDraft> drafts() {
    PageDraft draft =
        new PageDraft(
            context.say("sheets.scope-sheet.title"),
            context.say("sheets.scope-sheet.subtitle"),
            "",
            Optional.empty(),
            List.of());
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Paragraph(context.words().say(WorkPlan.NOTICE)));
    blocks.add(new Paragraph(context.words().say(plan.book().origin())));
    blocks.add(new Gap(2));
    sentences(blocks, context.say("sheets.scope-sheet.included"), scope.included());
    sentences(blocks, context.say("sheets.scope-sheet.not-included"), scope.excluded());
    blocks.addAll(prices());
    advice(blocks);
    blocks.add(SignatureLine.of(context.say("sheets.scope-sheet.client"), context));
    blocks.add(SignatureLine.of(context.say("sheets.scope-sheet.contractor"), context));
    return ColumnPages.of(context, draft, blocks);
  }

  private void sentences(List<Block> blocks, String heading, List<Message> lines) {
    if (!lines.isEmpty()) {
      blocks.add(new Heading(heading));
      List<List<TableCell>> rows =
          lines.stream().map(l -> List.of(TableCell.of(context.words().say(l)))).toList();
      blocks.add(TableBlock.of(List.of(TableColumn.words("")), rows));
      blocks.add(new Gap(3));
    }
  }

  /** Every line of the cost with its source, and their sum. */
  public List<Block> prices() {
    Cost cost = scope.cost();
    List<Block> blocks = new ArrayList<>();
    List<List<TableCell>> rows = new ArrayList<>();
    List<String> sources =
        cost.lines().stream().map(l -> context.say(l.source())).distinct().toList();
    for (CostLine l : cost.lines()) {
      String source = Integer.toString(sources.indexOf(context.say(l.source())) + 1);
      rows.add(
          List.of(
              TableCell.of(context.say(l.what())),
              TableCell.of(source),
              TableCell.of(shown(l.quantity().map(context::say))),
              TableCell.of(shown(l.unitPrice().map(this::money))),
              TableCell.of(
                  l.amount()
                      .maybe()
                      .map(this::money)
                      .orElseGet(() -> context.say("sheets.scope-sheet.open")))));
    }
    boolean whole = cost.total().isKnown();
    String sum = money(whole ? cost.total().maybe().orElseThrow() : cost.known());
    String label =
        whole
            ? context.say("sheets.scope-sheet.total")
            : context.say("sheets.scope-sheet.known-so-far");
    blocks.add(new Heading(context.say("sheets.scope-sheet.cost", cost.currency())));
    blocks.add(
        new TableBlock(
            List.of(
                TableColumn.words(context.say("sheets.scope-sheet.what")),
                TableColumn.narrow(context.say("sheets.scope-sheet.counted")),
                TableColumn.number(context.say("sheets.scope-sheet.quantity")),
                TableColumn.number(context.say("sheets.scope-sheet.each")),
                TableColumn.number(cost.currency())),
            rows,
            List.of(
                TableCell.of(label),
                TableCell.of(""),
                TableCell.of(""),
                TableCell.of(""),
                TableCell.of(sum))));
    reasons(cost).forEach((why, lines) -> blocks.add(new Paragraph(open(why, lines))));
    blocks.add(new Paragraph(counted(sources)));
    if (!plan.outlook().held().isEmpty() || !plan.outlook().canStart()) {
      blocks.add(
          new Paragraph(
              context.say("sheets.scope-sheet.as-if-not-held", plan.outlook().held().size())));
    }
    blocks.add(new Gap(3));
    return blocks;
  }

  /** What is not known is said once under the table, not in every line. */
  private String shown(Figure<String> figure) {
    return figure.maybe().orElseGet(() -> context.say("sheets.scope-sheet.not-known"));
  }

  /** Why lines have no amount yet, with how many there are. */
  private Map<String, Integer> reasons(Cost cost) {
    Map<String, Integer> all = new LinkedHashMap<>();
    for (CostLine l : cost.lines()) {
      if (!l.amount().isKnown()) {
        all.merge(context.words().line(l.amount().text(this::money)), 1, Integer::sum);
      }
    }
    return all;
  }

  private String open(String why, int lines) {
    return context.say("sheets.scope-sheet.open-lines", lines, why);
  }

  private String counted(List<String> sources) {
    List<String> all = new ArrayList<>();
    for (int i = 0; i < sources.size(); i++) {
      all.add(context.say("sheets.scope-sheet.source", i + 1, sources.get(i)));
    }
    return context.say("sheets.scope-sheet.sources", String.join("; ", all));
  }

  private String money(BigDecimal amount) {
    return context.say("sheets.scope-sheet.money", amount);
  }

  /** A declined one is signed below, with who and when. */
  private TableCell standing(Scope.GivenAdvice g) {
    return g.declined()
        ? TableCell.bold(context.say("sheets.scope-sheet.declined"))
        : TableCell.of(context.say(g.status()));
  }

  private void advice(List<Block> blocks) {
    if (scope.advice().isEmpty()) {
      return;
    }
    blocks.add(new Heading(context.say("sheets.scope-sheet.advice-log")));
    List<List<TableCell>> rows = new ArrayList<>();
    for (Scope.GivenAdvice g : scope.advice()) {
      TableCell initials =
          TableCell.of(g.isOpen() ? context.say("sheets.scope-sheet.initials-here") : "");
      rows.add(List.of(standing(g), TableCell.of(context.say(g.words())), initials));
    }
    blocks.add(
        TableBlock.of(
            List.of(
                TableColumn.words(context.say("sheets.scope-sheet.stands")),
                TableColumn.words(context.say("sheets.scope-sheet.advice-given")),
                TableColumn.narrow(context.say("sheets.scope-sheet.declines"))),
            rows));
    scope
        .declined()
        .forEach(
            g ->
                blocks.add(
                    new DeclinedBlock(context.say(g.words()), context.say(g.status()), context)));
    blocks.add(new Gap(3));
  }

  /**
   * Advice that was declined, in full, over a line to sign: who signs reads what is declined.
   *
   * @param standing who declined it and when, as far as known
   */
  private record DeclinedBlock(String advice, String standing, SheetContext context)
      implements Block {
    @Override
    public List<Slice> slices(TypeSizes type, double width) {
      List<Slice> slices = new ArrayList<>();
      Paragraph words =
          new Paragraph(context.say("sheets.declined-block.declined", advice, standing));
      words.slices(type, width).forEach(s -> slices.add(new Slice(s.height(), true, s.inks())));
      slices.addAll(
          SignatureLine.of(context.say("sheets.declined-block.client"), context)
              .slices(type, width));
      return slices;
    }
  }
}
