package slabwright.work.handover;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.units.LengthFormat;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.work.AreaWorkPlan;
import slabwright.work.InlayTakeoff;
import slabwright.work.WorkPlan;
import slabwright.work.book.Figure;
import slabwright.work.book.ProductKind;
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
    for (AreaWorkPlan area : plan.areas()) {
      area.coats().forEach(c -> kits(area.name(), c.product().label(), c.kits()));
      String filler = plan.book().first(ProductKind.FILLER).map(p -> p.label()).orElse("filler");
      if (area.prep().filler().mm3() > 0) {
        kits(area.name(), filler, area.prep().filler().kits());
      }
      bags(area);
      area.floor().inlays().forEach(i -> vinyl(area, i));
    }
    plan.book().tools().forEach(this::tool);
    return lines;
  }

  private void labour() {
    Figure<CostLine.Count> hours = plan.outlook().order().map(d -> hours(d.personTime()));
    lines.add(
        CostLine.of("Labour", hours, "sheet 6, person hours", plan.book().crew().hourPrice()));
  }

  private static CostLine.Count hours(Duration time) {
    BigDecimal h =
        BigDecimal.valueOf(time.toMinutes())
            .divide(BigDecimal.valueOf(60), 2, RoundingMode.HALF_UP);
    return new CostLine.Count(h, h + " h");
  }

  private void kits(String area, String label, Figure<Kits> kits) {
    String what = label + ", " + area;
    String source = "sheet 5, kits to buy";
    Optional<Kits> known = kits.maybe();
    if (known.isEmpty()) {
      lines.add(
          CostLine.of(
              what, kits.map(k -> count(k.count(), "")), source, kits.map(k -> BigDecimal.ZERO)));
      return;
    }
    for (Kits.Line line : known.get().lines()) {
      String size = QuantityFormat.volume(line.kit().mm3(), units);
      lines.add(
          CostLine.of(
              what, Figure.known(count(line.count(), " x " + size)), source, line.kit().price()));
    }
  }

  private static CostLine.Count count(int n, String unit) {
    return new CostLine.Count(BigDecimal.valueOf(n), n + unit);
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
            .orElseGet(() -> Figure.missing("a vacuum"));
    lines.add(
        CostLine.of(
            "Vacuum bags, " + area.name(),
            bags.map(n -> count(n, " bags")),
            "sheet 5, vacuum bags",
            price));
  }

  /** By what comes off the roll: the waste is paid for too. */
  private void vinyl(AreaWorkPlan area, InlayTakeoff inlay) {
    lines.add(
        CostLine.of(
            "Stencil vinyl, %s, %s, %s off the roll"
                .formatted(inlay.name(), area.name(), rolled(inlay.film())),
            film(inlay.film()),
            "sheet 5, film from the roll",
            plan.book().inlay().vinylPriceArea()));
  }

  private String rolled(InlayTakeoff.VinylFromRoll film) {
    return LengthFormat.show(film.length(), units) + " × " + LengthFormat.show(film.roll(), units);
  }

  private static Figure<CostLine.Count> film(InlayTakeoff.VinylFromRoll film) {
    if (film.length() <= 0) {
      return Figure.refused("the stencil is not laid out on the roll yet; see sheet 4");
    }
    BigDecimal m2 = BigDecimal.valueOf(film.area() / 1e6).setScale(2, RoundingMode.HALF_UP);
    return Figure.known(new CostLine.Count(m2, m2 + " m²"));
  }

  private void tool(ShopTool tool) {
    Figure<Integer> days = plan.outlook().order().map(d -> ToolDays.of(tool, d));
    if (days.maybe().filter(n -> n == 0).isEmpty()) {
      lines.add(
          CostLine.of(
              tool.name(),
              days.map(n -> count(n, n == 1 ? " day" : " days")),
              "sheet 6, days with " + tool.kind().text(ToolKind::word),
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
