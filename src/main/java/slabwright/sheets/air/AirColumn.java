package slabwright.sheets.air;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.CautionBlock;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.sheets.page.Words;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.work.air.AirFigures;
import slabwright.work.air.AirScreening;
import slabwright.work.air.ClearingTime;
import slabwright.work.air.LimitComparison;
import slabwright.work.air.StepAirFigures;

/** The screening of one floor area's air: picture, figures, limits, and the air it needs. */
record AirColumn(
    AirScreening air,
    String assumption,
    UnitSystem units,
    JobClock clock,
    slabwright.words.Words words) {
  private static final double CUBIC_FOOT_M3 = 0.3048 * 0.3048 * 0.3048;

  void addTo(List<Block> blocks) {
    blocks.add(new CautionBlock("Solvent vapour", AirScreening.NOTICE));
    blocks.add(new Heading("Vapour over time"));
    blocks.add(new VapourBlock(air, clock));
    blocks.add(new Gap(3));
    blocks.add(new Heading("What the air gets to"));
    blocks.add(figures());
    if (!assumption.isEmpty()) {
      blocks.add(new Paragraph(assumption));
    }
    blocks.add(new Gap(3));
    steps(blocks, "Step by step, no fresh air", air.closed());
    air.stated().ifPresent(f -> steps(blocks, "Step by step, with the stated air", f));
    blocks.add(new Heading("Against published limits, no fresh air"));
    blocks.add(limits(air.closed()));
    blocks.add(new Gap(3));
    air.stated()
        .ifPresent(
            f -> {
              blocks.add(new Heading("The same with the stated air"));
              blocks.add(limits(f));
              blocks.add(new Gap(3));
            });
    blocks.add(new Heading("Fresh air needed, worst step"));
    blocks.add(need());
    blocks.add(new Gap(3));
  }

  private TableBlock figures() {
    Optional<AirFigures> stated = air.stated();
    List<List<TableCell>> rows = new ArrayList<>();
    rows.add(row("fresh air", f -> f.airflow() > 0 ? flow(f.airflow()) : "none"));
    rows.add(row("peak, room mean", f -> ofLel(f.peakLel())));
    rows.add(row("peak, all in the lowest metre", f -> ofLel(f.layerPeakLel())));
    rows.add(row("reached during", f -> words.say(f.peakStep())));
    rows.add(
        row(
            "8-hour limits, all solvents together",
            f -> QuantityFormat.number(f.together(), 2) + " ×"));
    rows.add(row("clears to the 8-hour limits in", f -> clearing(f.toHealth())));
    rows.add(row("clears to 10 % of LEL in", f -> clearing(f.toFire())));
    List<TableColumn> columns = new ArrayList<>();
    columns.add(TableColumn.words(""));
    columns.add(TableColumn.number("no fresh air"));
    stated.ifPresent(f -> columns.add(TableColumn.number("with stated air")));
    return TableBlock.of(columns, rows);
  }

  private void steps(List<Block> blocks, String heading, AirFigures figures) {
    List<List<TableCell>> rows = new ArrayList<>();
    for (StepAirFigures s : figures.steps()) {
      rows.add(
          List.of(
              TableCell.of(words.say(s.name()) + ", from " + clock.moment(s.from())),
              TableCell.of(Words.percent(s.peakLel())),
              TableCell.of(Words.percent(s.layerPeakLel())),
              TableCell.of(clearing(s.layerToHealth()))));
    }
    blocks.add(new Heading(heading));
    blocks.add(
        TableBlock.of(
            List.of(
                TableColumn.words("peak in % of LEL while laying"),
                TableColumn.number("mixed"),
                TableColumn.number("low"),
                TableColumn.number("clear in")),
            rows));
    blocks.add(new Gap(3));
  }

  /** With a cross where it is a hazardous atmosphere. */
  private static String ofLel(double share) {
    String sign = share >= AirFigures.HAZARDOUS_SHARE ? "✕ " : "";
    return sign + Words.percent(share) + " of LEL";
  }

  private interface Shown {
    String of(AirFigures figures);
  }

  private List<TableCell> row(String label, Shown shown) {
    List<TableCell> cells = new ArrayList<>();
    cells.add(TableCell.of(label));
    cells.add(TableCell.of(shown.of(air.closed())));
    air.stated().ifPresent(f -> cells.add(TableCell.of(shown.of(f))));
    return cells;
  }

  private static String clearing(ClearingTime c) {
    if (c instanceof ClearingTime.After after) {
      return QuantityFormat.number(after.minutes(), 0) + " min";
    }
    return c instanceof ClearingTime.Never ? "never" : "not above";
  }

  private String flow(double cubicMetresPerMinute) {
    return units == UnitSystem.FEET_INCHES
        ? QuantityFormat.number(cubicMetresPerMinute / CUBIC_FOOT_M3, 0) + " cfm"
        : QuantityFormat.number(cubicMetresPerMinute * 60, 0) + " m³/h";
  }

  private static TableBlock limits(AirFigures figures) {
    List<List<TableCell>> rows = new ArrayList<>();
    for (LimitComparison r : figures.limits()) {
      boolean passed = r.isPassed();
      String times = (passed ? "✕ " : "✓ ") + QuantityFormat.number(r.ratio(), 2) + " ×";
      rows.add(
          List.of(
              TableCell.of(r.solvent().name() + ", " + r.limit().name() + ", " + span(r)),
              TableCell.of(Words.ppm(r.limit().share())),
              TableCell.of(Words.ppm(r.reached())),
              passed ? TableCell.bold(times) : TableCell.of(times)));
    }
    return TableBlock.of(
        List.of(
            TableColumn.words("limit"),
            TableColumn.number("is"),
            TableColumn.number("reached"),
            TableColumn.number("times")),
        rows);
  }

  private static String span(LimitComparison r) {
    return switch (r.limit().span()) {
      case EIGHT_HOURS -> "8 h mean";
      case FIFTEEN_MINUTES -> "15 min mean";
      case DANGER -> "at any time";
    };
  }

  private TableBlock need() {
    List<List<TableCell>> rows = new ArrayList<>();
    rows.add(
        List.of(TableCell.of("fire: a quarter of LEL"), TableCell.of(flow(air.need().fire()))));
    rows.add(
        List.of(
            TableCell.of("health: strictest 8-hour limits"),
            TableCell.of(flow(air.need().health()))));
    rows.add(
        List.of(
            TableCell.of("1 cfm to the square foot"), TableCell.of(flow(air.need().byFloor()))));
    rows.add(List.of(TableCell.of("on the plan"), TableCell.of(stated())));
    return TableBlock.of(List.of(TableColumn.words("for"), TableColumn.number("airflow")), rows);
  }

  private String stated() {
    return air.stated().map(f -> flow(f.airflow())).orElse("none");
  }
}
