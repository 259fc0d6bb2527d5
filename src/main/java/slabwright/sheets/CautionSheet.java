package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.units.Quantity;
import slabwright.units.UnitSystem;
import slabwright.work.AirWork;
import slabwright.work.AreaWork;
import slabwright.work.WorkPlan;
import slabwright.work.air.AirFigures;
import slabwright.work.air.AirScreening;
import slabwright.work.air.Clearing;
import slabwright.work.air.LimitRow;
import slabwright.work.book.ShopBook;
import slabwright.work.rule.RuleNote;

/** Sheet 7: air, ignition, dust and the rules that apply on one floor area. */
final class CautionSheet {
  private static final double CUBIC_FOOT_M3 = 0.3048 * 0.3048 * 0.3048;

  private final AreaWork work;
  private final ShopBook book;
  private final SheetContext context;

  CautionSheet(AreaWork work, ShopBook book, SheetContext context) {
    this.work = work;
    this.book = book;
    this.context = context;
  }

  List<Draft> drafts() {
    Draft draft =
        new Draft(
            "7",
            "Air, ignition and other cautions",
            "Screening figures and the rules they are held against; numbers are never softened",
            work.name(),
            Optional.empty(),
            List.of());
    List<Block> blocks = new ArrayList<>();
    Optional<AirWork> air = work.air().maybe();
    if (air.isPresent()) {
      air(blocks, air.get());
    } else {
      blocks.add(new Heading("Air"));
      blocks.add(new Caution("Not computed", work.air().text(a -> "")));
    }
    rules(blocks);
    blocks.add(new Prose(book.origin()));
    blocks.add(new Caution("Estimate", WorkPlan.NOTICE));
    return ColumnPages.of(context.page(), draft, blocks);
  }

  private void air(List<Block> blocks, AirWork air) {
    air.screening().ifPresent(s -> screening(blocks, s, air.assumption()));
    if (air.fire().applies()) {
      blocks.add(
          new Caution(
              "Fire code: flammable finishes",
              String.join("; ", air.fire().reasons())
                  + ". The chapter on flammable finishes applies: ask the fire authority."));
    }
    if (air.screening().isPresent() || air.fire().applies()) {
      checklist(blocks, "Before the first can is opened", air.ignition().before());
      checklist(blocks, "When the air is clear", air.ignition().after());
      blocks.add(new Heading("Moving air"));
      air.path()
          .ifPresent(
              p ->
                  blocks.add(
                      new Prose(
                          "In by " + p.inlet().name() + ", out by " + p.outlet().name() + ".")));
      air.advice().forEach(a -> blocks.add(new Prose(a)));
      blocks.add(new Gap(3));
    }
  }

  private void screening(List<Block> blocks, AirScreening s, String assumption) {
    blocks.add(new Caution("Solvent vapour", AirScreening.NOTICE));
    blocks.add(new Heading("Vapour over time"));
    blocks.add(new AirPicture(s));
    blocks.add(new Gap(3));
    blocks.add(new Heading("What the air gets to"));
    blocks.add(figures(s));
    if (!assumption.isEmpty()) {
      blocks.add(new Prose(assumption));
    }
    blocks.add(new Gap(3));
    blocks.add(new Heading("Against published limits, no fresh air"));
    blocks.add(limits(s.closed()));
    blocks.add(new Gap(3));
    s.stated()
        .ifPresent(
            f -> {
              blocks.add(new Heading("The same with the stated air"));
              blocks.add(limits(f));
              blocks.add(new Gap(3));
            });
    blocks.add(new Heading("Fresh air needed, worst step"));
    blocks.add(need(s));
    blocks.add(new Gap(3));
  }

  private Table figures(AirScreening s) {
    Optional<AirFigures> stated = s.stated();
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(row("fresh air", s, f -> f.airflow() > 0 ? flow(f.airflow()) : "none"));
    rows.add(row("peak, room mean", s, f -> Words.percent(f.peakLel()) + " of LEL"));
    rows.add(
        row("peak, all in the lowest metre", s, f -> Words.percent(f.layerPeakLel()) + " of LEL"));
    rows.add(row("reached during", s, AirFigures::peakStep));
    rows.add(row("to the 8-hour limits", s, f -> clearing(f.toHealth())));
    rows.add(row("to 10 % of LEL", s, f -> clearing(f.toFire())));
    List<Column> columns = new ArrayList<>();
    columns.add(Column.words(""));
    columns.add(Column.number("no fresh air"));
    stated.ifPresent(f -> columns.add(Column.number("with stated air")));
    return Table.of(columns, rows);
  }

  private interface Shown {
    String of(AirFigures figures);
  }

  private static List<Cell> row(String label, AirScreening s, Shown shown) {
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.of(label));
    cells.add(Cell.of(shown.of(s.closed())));
    s.stated().ifPresent(f -> cells.add(Cell.of(shown.of(f))));
    return cells;
  }

  private static String clearing(Clearing c) {
    if (c instanceof Clearing.After after) {
      return Quantity.number(after.minutes(), 0) + " min";
    }
    return c instanceof Clearing.Never ? "never without air" : "never above";
  }

  private String flow(double cubicMetresPerMinute) {
    return context.units() == UnitSystem.FEET_INCHES
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

  private Table need(AirScreening s) {
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(List.of(Cell.of("fire: a quarter of LEL"), Cell.of(flow(s.need().fire()))));
    rows.add(List.of(Cell.of("health: strictest 8-hour limits"), Cell.of(flow(s.need().health()))));
    rows.add(List.of(Cell.of("1 cfm to the square foot"), Cell.of(flow(s.need().byFloor()))));
    return Table.of(List.of(Column.words("for"), Column.number("airflow")), rows);
  }

  private static void checklist(List<Block> blocks, String heading, List<String> lines) {
    blocks.add(new Heading(heading));
    List<List<Cell>> rows =
        lines.stream().map(l -> List.<Cell>of(new Cell.Tick(), Cell.of(l))).toList();
    blocks.add(Table.of(List.of(Column.narrow(""), Column.words("")), rows));
    blocks.add(new Gap(3));
  }

  private void rules(List<Block> blocks) {
    if (work.notes().isEmpty()) {
      return;
    }
    blocks.add(new Heading("Rules that apply"));
    for (RuleNote n : work.notes()) {
      blocks.add(new RuleBlock(n));
    }
    blocks.add(new Gap(3));
  }

  /** The sign of a verdict. */
  static String sign(RuleNote.Verdict verdict) {
    return switch (verdict) {
      case FINE -> "✓";
      case LOOK -> "!";
      case NOT_MET -> "✕";
      case UNKNOWN -> "?";
    };
  }
}
