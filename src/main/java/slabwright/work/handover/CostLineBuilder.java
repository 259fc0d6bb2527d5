package slabwright.work.handover;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.work.AreaWorkPlan;
import slabwright.work.InlayTakeoff;
import slabwright.work.WorkPlan;
import slabwright.work.book.Figure;
import slabwright.work.book.ShopTool;
import slabwright.work.coat.Kits;
import slabwright.work.days.DayPlan;
import slabwright.work.days.WorkStep;
import slabwright.work.step.ToolKind;

/** Writes the lines of the cost; one use. */
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
    for (AreaWorkPlan area : plan.areas()) {
      bags(area);
      area.floor().inlays().forEach(i -> vinyl(area, i));
    }
    plan.book().tools().forEach(this::tool);
    return lines;
  }

  private void labour() {
    Figure<CostLine.Count> hours = plan.outlook().order().map(d -> hours(d.personTime()));
    lines.add(
        CostLine.of(
            Message.of("work.cost-line-builder.labour"),
            hours,
            Message.of("work.cost-line-builder.sheet-person-hours"),
            plan.book().crew().hourPrice()));
  }

  private static CostLine.Count hours(Duration time) {
    BigDecimal h =
        BigDecimal.valueOf(time.toMinutes())
            .divide(BigDecimal.valueOf(60), 2, RoundingMode.HALF_UP);
    return new CostLine.Count(h, Message.of("work.cost-line-builder.hours", h));
  }

  private void kits(BuyLine buy) {
    Figure<Kits> kits = buy.kits();
    Message what =
        buy.colour().isEmpty()
            ? Message.of("work.cost-line-builder.product", buy.label())
            : Message.of("work.cost-line-builder.of-colour", buy.label(), buy.colour());
    Message source = Message.of("work.cost-line-builder.sheet-kits-to-buy");
    Optional<Kits> known = kits.maybe();
    if (known.isEmpty()) {
      lines.add(
          CostLine.of(
              what,
              kits.map(k -> count(k.count(), Message.of("work.cost-line-builder.kits", k.count()))),
              source,
              kits.map(k -> BigDecimal.ZERO)));
      return;
    }
    for (Kits.Line line : known.get().lines()) {
      String size = QuantityFormat.volume(line.kit().mm3(), units);
      lines.add(
          CostLine.of(
              what,
              Figure.known(
                  count(
                      line.count(),
                      Message.of("work.cost-line-builder.kits-of-size", line.count(), size))),
              source,
              line.kit().price()));
    }
  }

  private static CostLine.Count count(int n, Message text) {
    return new CostLine.Count(BigDecimal.valueOf(n), text);
  }

  private void bags(AreaWorkPlan area) {
    Figure<Integer> bags = area.bags();
    if (bags.maybe().filter(n -> n == 0).isPresent()) {
      return;
    }
    Figure<BigDecimal> price =
        plan.book().tools().stream()
            .filter(t -> t.is(ToolKind.VACUUM))
            .max(
                (a, b) ->
                    Double.compare(a.bagKg().maybe().orElse(0.0), b.bagKg().maybe().orElse(0.0)))
            .map(ShopTool::bagPrice)
            .orElseGet(() -> Figure.missing(Message.of("work.cost-line-builder.a-vacuum")));
    lines.add(
        CostLine.of(
            Message.of("work.cost-line-builder.vacuum-bags", area.name()),
            bags.map(n -> count(n, Message.of("work.cost-line-builder.bags", n))),
            Message.of("work.cost-line-builder.sheet-vacuum-bags"),
            price));
  }

  /** By what comes off the roll: the waste is paid for too. */
  private void vinyl(AreaWorkPlan area, InlayTakeoff inlay) {
    lines.add(
        CostLine.of(
            Message.of(
                "work.cost-line-builder.stencil-vinyl-off-the-roll",
                inlay.name(),
                area.name(),
                rolled(inlay.film())),
            film(inlay.film()),
            Message.of("work.cost-line-builder.sheet-film-from-the-roll"),
            plan.book().inlay().vinylPriceArea()));
  }

  private String rolled(InlayTakeoff.VinylFromRoll film) {
    return LengthFormat.show(film.length(), units) + " × " + LengthFormat.show(film.roll(), units);
  }

  private static Figure<CostLine.Count> film(InlayTakeoff.VinylFromRoll film) {
    if (film.length() <= 0) {
      return Figure.refused(Message.of("work.cost-line-builder.the-stencil-is-not-laid"));
    }
    BigDecimal m2 = BigDecimal.valueOf(film.area() / 1e6).setScale(2, RoundingMode.HALF_UP);
    return Figure.known(
        new CostLine.Count(m2, Message.of("work.cost-line-builder.square-metres", m2)));
  }

  private void tool(ShopTool tool) {
    Figure<Integer> days = plan.outlook().order().map(d -> ToolDays.of(tool, d));
    if (days.maybe().filter(n -> n == 0).isEmpty()) {
      lines.add(
          CostLine.of(
              HandoverDocument.said(tool.name()),
              days.map(n -> count(n, Message.of("work.cost-line-builder.days", n))),
              Message.of(
                  "work.cost-line-builder.sheet-days-with", tool.kind().text(ToolKind::word)),
              tool.dayPrice()));
    }
  }

  /** On how many days a tool is on site. */
  private static final class ToolDays {
    static int of(ShopTool tool, DayPlan days) {
      return (int)
          days.steps().stream()
              .filter(s -> uses(tool, s.task()))
              .flatMap(s -> s.spans().stream())
              .map(s -> s.start().toLocalDate())
              .distinct()
              .count();
    }

    private static boolean uses(ShopTool tool, WorkStep step) {
      return tool.kind().maybe().filter(step.type().tools()::contains).isPresent();
    }
  }
}
