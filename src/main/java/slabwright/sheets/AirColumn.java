package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.units.Quantity;
import slabwright.units.UnitSystem;
import slabwright.work.air.AirFigures;
import slabwright.work.air.AirScreening;
import slabwright.work.air.Clearing;
import slabwright.work.air.LimitRow;
import slabwright.work.air.StepAir;

/** The screening of one floor area's air: picture, figures, limits, and the air it needs. */
record AirColumn(AirScreening air, String assumption, UnitSystem units, Clock clock) {
  private static final double CUBIC_FOOT_M3 = 0.3048 * 0.3048 * 0.3048;

  void addTo(List<Block> blocks) {
    blocks.add(new Caution("Solvent vapour", AirScreening.NOTICE));
    blocks.add(new Heading("Vapour over time"));
    blocks.add(new AirPicture(air, clock));
    blocks.add(new Gap(3));
    blocks.add(new Heading("What the air gets to"));
    blocks.add(figures());
    if (!assumption.isEmpty()) {
      blocks.add(new Prose(assumption));
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

  private Table figures() {
    Optional<AirFigures> stated = air.stated();
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(row("fresh air", f -> f.airflow() > 0 ? flow(f.airflow()) : "none"));
    rows.add(row("peak, room mean", f -> ofLel(f.peakLel())));
    rows.add(row("peak, all in the lowest metre", f -> ofLel(f.layerPeakLel())));
    rows.add(row("reached during", AirFigures::peakStep));
    rows.add(
        row("8-hour limits, all solvents together", f -> Quantity.number(f.together(), 2) + " ×"));
    rows.add(row("clears to the 8-hour limits in", f -> clearing(f.toHealth())));
    rows.add(row("clears to 10 % of LEL in", f -> clearing(f.toFire())));
    List<Column> columns = new ArrayList<>();
    columns.add(Column.words(""));
    columns.add(Column.number("no fresh air"));
    stated.ifPresent(f -> columns.add(Column.number("with stated air")));
    return Table.of(columns, rows);
  }

  private void steps(List<Block> blocks, String heading, AirFigures figures) {
    List<List<Cell>> rows = new ArrayList<>();
    for (StepAir s : figures.steps()) {
      rows.add(
          List.of(
              Cell.of(s.name() + ", from " + clock.moment(s.from())),
              Cell.of(Words.percent(s.peakLel())),
              Cell.of(Words.percent(s.layerPeakLel())),
              Cell.of(clearing(s.layerToHealth()))));
    }
    blocks.add(new Heading(heading));
    blocks.add(
        Table.of(
            List.of(
                Column.words("peak in % of LEL while laying"),
                Column.number("mixed"),
                Column.number("low"),
                Column.number("clear in")),
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

  private List<Cell> row(String label, Shown shown) {
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.of(label));
    cells.add(Cell.of(shown.of(air.closed())));
    air.stated().ifPresent(f -> cells.add(Cell.of(shown.of(f))));
    return cells;
  }

  private static String clearing(Clearing c) {
    if (c instanceof Clearing.After after) {
      return Quantity.number(after.minutes(), 0) + " min";
    }
    return c instanceof Clearing.Never ? "never" : "not above";
  }

  private String flow(double cubicMetresPerMinute) {
    return units == UnitSystem.FEET_INCHES
        ? Quantity.number(cubicMetresPerMinute / CUBIC_FOOT_M3, 0) + " cfm"
        : Quantity.number(cubicMetresPerMinute * 60, 0) + " m³/h";
  }

  private static Table limits(AirFigures figures) {
    List<List<Cell>> rows = new ArrayList<>();
    for (LimitRow r : figures.limits()) {
      boolean passed = r.isPassed();
      String times = (passed ? "✕ " : "✓ ") + Quantity.number(r.ratio(), 2) + " ×";
      rows.add(
          List.of(
              Cell.of(r.solvent().name() + ", " + r.limit().name() + ", " + span(r)),
              Cell.of(Words.ppm(r.limit().share())),
              Cell.of(Words.ppm(r.reached())),
              passed ? Cell.bold(times) : Cell.of(times)));
    }
    return Table.of(
        List.of(
            Column.words("limit"),
            Column.number("is"),
            Column.number("reached"),
            Column.number("times")),
        rows);
  }

  private static String span(LimitRow r) {
    return switch (r.limit().span()) {
      case EIGHT_HOURS -> "8 h mean";
      case FIFTEEN_MINUTES -> "15 min mean";
      case DANGER -> "at any time";
    };
  }

  private Table need() {
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(List.of(Cell.of("fire: a quarter of LEL"), Cell.of(flow(air.need().fire()))));
    rows.add(
        List.of(Cell.of("health: strictest 8-hour limits"), Cell.of(flow(air.need().health()))));
    rows.add(List.of(Cell.of("1 cfm to the square foot"), Cell.of(flow(air.need().byFloor()))));
    rows.add(List.of(Cell.of("on the plan"), Cell.of(stated())));
    return Table.of(List.of(Column.words("for"), Column.number("airflow")), rows);
  }

  private String stated() {
    return air.stated().map(f -> flow(f.airflow())).orElse("none");
  }
}
