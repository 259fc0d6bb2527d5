package slabwright.work.handover;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.work.Presence;
import slabwright.work.WorkPlan;
import slabwright.work.book.Figure;
import slabwright.work.book.ShopTool;
import slabwright.work.coat.Kits;
import slabwright.work.days.JobTool;
import slabwright.work.step.ToolKind;

/** Writes the lines of the cost; one use. No two lines are called the same. */
final class CostLineBuilder {
  private final WorkPlan plan;
  private final UnitSystem units;
  private final List<CostLine> lines = new ArrayList<>();

  CostLineBuilder(WorkPlan plan) {
    this.plan = plan;
    this.units = plan.site().units();
  }

  List<CostLine> build() {
    labour();
    BuyList.of(plan).forEach(this::kits);
    ConsumableFinder.of(plan)
        .forEach(c -> lines.add(CostLine.of(c.what(), c.count(), c.source(), c.price(), units)));
    ToolNeeds needs = new ToolNeeds(plan);
    needs.tools().stream()
        .filter(t -> needs.count(t) > 0)
        .filter(t -> needs.days(t).maybe().filter(n -> n == 0).isEmpty()) // spare: only loaded
        .forEach(t -> tool(t, needs));
    needs.fromElsewhere().forEach(t -> elsewhere(t, needs));
    needs.missing().forEach(k -> noTool(k, needs));
    return lines;
  }

  /** Hours of presence: who waits for a coat to dry is paid too. */
  private void labour() {
    Figure<Presence> here = plan.outlook().order().map(d -> Presence.of(d, plan.book()));
    Message source =
        here.maybe()
            .map(
                p -> Message.of("work.cost-line-builder.sheet-presence", hours(p.steps()).number()))
            .orElseGet(() -> Message.of("work.cost-line-builder.sheet-presence-unknown"));
    lines.add(
        CostLine.of(
            Message.of("work.cost-line-builder.labour"),
            here.map(p -> hours(p.present())),
            source,
            plan.book().crew().hourPrice(),
            units));
  }

  private static CostLine.Count hours(Duration time) {
    return new CostLine.Count(Presence.hours(time), CostLine.Unit.HOURS);
  }

  private void kits(BuyLine buy) {
    Message source = Message.of("work.cost-line-builder.sheet-kits-to-buy");
    Optional<Kits> known = buy.kits().maybe();
    if (known.isEmpty()) {
      Figure<BigDecimal> none = buy.kits().map(k -> BigDecimal.ZERO);
      Figure<CostLine.Count> count =
          buy.kits().map(k -> CostLine.Count.whole(k.count(), CostLine.Unit.PIECES));
      lines.add(CostLine.of(buy.name(), count, source, none, units));
      return;
    }
    for (Kits.Line line : known.get().lines()) {
      String size = QuantityFormat.volume(line.kit().mm3(), units);
      lines.add(
          CostLine.of(
              Message.of("work.cost-line-builder.kit-of", buy.name(), size),
              Figure.known(CostLine.Count.whole(line.count(), CostLine.Unit.PIECES)),
              source,
              line.kit().price(),
              units));
    }
  }

  private void tool(ShopTool tool, ToolNeeds needs) {
    lines.add(
        CostLine.of(
            tool.called(),
            needs.days(tool).map(CostLineBuilder::days),
            Message.of("work.cost-line-builder.sheet-days-with", tool.kind().text(ToolKind::label)),
            tool.dayPrice(),
            units));
  }

  /** The plan counts more of them than the book has. */
  private void elsewhere(JobTool tool, ToolNeeds needs) {
    lines.add(
        CostLine.of(
            tool.called(),
            needs.days(tool.kind()).map(CostLineBuilder::days),
            Message.of("work.cost-line-builder.sheet-days-with", tool.kind().label()),
            Figure.missing(tool.called()),
            units));
  }

  private static CostLine.Count days(long n) {
    return CostLine.Count.whole(n, CostLine.Unit.DAYS);
  }

  /** The plan works with it and the book has none: said, never left out. */
  private void noTool(ToolKind kind, ToolNeeds needs) {
    Message what = Message.of("work.cost-line-builder.a-tool", kind.label());
    lines.add(
        CostLine.of(
            what,
            needs.days(kind).map(CostLineBuilder::days),
            Message.of("work.cost-line-builder.sheet-days-with", kind.label()),
            Figure.missing(what),
            units));
  }
}
