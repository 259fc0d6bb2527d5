package slabwright.sheets.air;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.CautionBlock;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.work.air.AirFigures;
import slabwright.work.air.AirScreening;
import slabwright.work.air.ClearingTime;
import slabwright.work.air.FreshAirNeed;
import slabwright.work.air.LimitComparison;
import slabwright.work.air.StepAirFigures;

/** The screening of one floor area's air: picture, figures, limits, and the air it needs. */
record AirColumn(AirScreening air, String assumption, JobClock clock, SheetContext context) {
  private static final double CUBIC_FOOT_M3 = 0.3048 * 0.3048 * 0.3048;

  void addTo(List<Block> blocks) {
    blocks.add(
        new CautionBlock(
            context.say("sheets.air-column.solvent-vapour"), context.say(AirScreening.NOTICE)));
    blocks.add(new Heading(context.say("sheets.air-column.vapour-over-time")));
    blocks.add(new VapourBlock(air, clock, context.words()));
    blocks.add(new Gap(3));
    blocks.add(new Heading(context.say("sheets.air-column.what-the-air-gets-to")));
    blocks.add(figures());
    blocks.add(new Paragraph(context.say("sheets.air-column.careful")));
    if (!assumption.isEmpty()) {
      blocks.add(new Paragraph(assumption));
    }
    blocks.add(new Gap(3));
    steps(blocks, context.say("sheets.air-column.step-by-step-closed"), air.closed());
    air.stated()
        .ifPresent(f -> steps(blocks, context.say("sheets.air-column.step-by-step-stated"), f));
    blocks.add(new Heading(context.say("sheets.air-column.limits-closed")));
    blocks.add(limits(air.closed()));
    blocks.add(new Gap(3));
    air.stated()
        .ifPresent(
            f -> {
              blocks.add(new Heading(context.say("sheets.air-column.limits-stated")));
              blocks.add(limits(f));
              blocks.add(new Gap(3));
            });
    blocks.add(new Heading(context.say("sheets.air-column.fresh-air-needed")));
    blocks.add(need());
    blocks.add(new Gap(3));
  }

  private TableBlock figures() {
    Optional<AirFigures> stated = air.stated();
    List<List<TableCell>> rows = new ArrayList<>();
    rows.add(
        row(
            context.say("sheets.air-column.fresh-air"),
            f -> f.airflow() > 0 ? flow(f.airflow()) : context.say("sheets.air-column.none")));
    rows.add(row(context.say("sheets.air-column.peak-low"), f -> ofLel(f.layerPeakLel())));
    rows.add(row(context.say("sheets.air-column.peak-mean"), f -> ofLel(f.peakLel())));
    rows.add(row(context.say("sheets.air-column.reached-during"), f -> context.say(f.peakStep())));
    rows.add(
        row(
            context.say("sheets.air-column.limits-together"),
            f -> QuantityFormat.number(f.layerTogether(), 2) + " ×"));
    rows.add(
        row(context.say("sheets.air-column.clears-to-health"), f -> clearing(f.layerToHealth())));
    rows.add(row(context.say("sheets.air-column.clears-to-fire"), f -> clearing(f.layerToFire())));
    List<TableColumn> columns = new ArrayList<>();
    columns.add(TableColumn.words(""));
    columns.add(TableColumn.number(context.say("sheets.air-column.no-fresh-air")));
    stated.ifPresent(
        f -> columns.add(TableColumn.number(context.say("sheets.air-column.with-stated-air"))));
    return TableBlock.of(columns, rows);
  }

  private void steps(List<Block> blocks, String heading, AirFigures figures) {
    List<List<TableCell>> rows = new ArrayList<>();
    for (StepAirFigures s : figures.steps()) {
      rows.add(
          List.of(
              TableCell.of(
                  context.say("sheets.air-column.step-from", s.name(), clock.moment(s.from()))),
              TableCell.of(ShareFormat.percent(s.peakLel())),
              TableCell.of(ShareFormat.percent(s.layerPeakLel())),
              TableCell.of(clearing(s.layerToHealth()))));
    }
    blocks.add(new Heading(heading));
    blocks.add(
        TableBlock.of(
            List.of(
                TableColumn.words(context.say("sheets.air-column.peak-while-laying")),
                TableColumn.number(context.say("sheets.air-column.mixed")),
                TableColumn.number(context.say("sheets.air-column.low")),
                TableColumn.number(context.say("sheets.air-column.clear-in"))),
            rows));
    blocks.add(new Gap(3));
  }

  /** With a cross where it is a hazardous atmosphere. */
  private String ofLel(double share) {
    return share >= AirFigures.HAZARDOUS_SHARE
        ? context.say("sheets.air-column.hazardous-of-lel", ShareFormat.percent(share))
        : context.say("sheets.air-column.of-lel", ShareFormat.percent(share));
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

  private String clearing(ClearingTime c) {
    if (c instanceof ClearingTime.After after) {
      long seconds = (long) Math.ceil(after.minutes() * 60);
      return context.times().wait(Duration.ofSeconds(seconds));
    }
    return c instanceof ClearingTime.Never
        ? context.say("sheets.air-column.never")
        : context.say("sheets.air-column.not-above");
  }

  private String flow(double cubicMetresPerMinute) {
    return context.units() == UnitSystem.FEET_INCHES
        ? QuantityFormat.number(cubicMetresPerMinute / CUBIC_FOOT_M3, 0) + " cfm"
        : QuantityFormat.number(cubicMetresPerMinute * 60, 0) + " m³/h";
  }

  private TableBlock limits(AirFigures figures) {
    List<List<TableCell>> rows = new ArrayList<>();
    for (LimitComparison r : figures.limits()) {
      boolean passed = r.isPassed();
      String times = (passed ? "✕ " : "✓ ") + QuantityFormat.number(r.layerRatio(), 2) + " ×";
      rows.add(
          List.of(
              TableCell.of(limit(r)),
              TableCell.of(ShareFormat.ppm(r.limit().share())),
              TableCell.of(ShareFormat.ppm(r.layerReached())),
              passed ? TableCell.bold(times) : TableCell.of(times)));
    }
    return TableBlock.of(
        List.of(
            TableColumn.words(context.say("sheets.air-column.limit")),
            TableColumn.number(context.say("sheets.air-column.is")),
            TableColumn.number(context.say("sheets.air-column.reached")),
            TableColumn.number(context.say("sheets.air-column.times"))),
        rows);
  }

  private String limit(LimitComparison r) {
    Object solvent = r.solvent().said();
    Message limit = r.limit().name();
    return switch (r.limit().span()) {
      case EIGHT_HOURS -> context.say("sheets.air-column.eight-hours", solvent, limit);
      case FIFTEEN_MINUTES -> context.say("sheets.air-column.fifteen-minutes", solvent, limit);
      case DANGER -> context.say("sheets.air-column.at-any-time", solvent, limit);
    };
  }

  private TableBlock need() {
    FreshAirNeed need = air.need();
    String floor = flow(need.byFloor());
    return TableBlock.of(
        List.of(
            TableColumn.words(context.say("sheets.air-column.for")),
            TableColumn.number(context.say("sheets.air-column.low")),
            TableColumn.number(context.say("sheets.air-column.mixed"))),
        List.of(
            need(context.say("sheets.air-column.fire"), flow(need.layerFire()), flow(need.fire())),
            need(
                context.say("sheets.air-column.health"),
                flow(need.layerHealth()),
                flow(need.health())),
            need(byFloor(), floor, floor),
            need(context.say("sheets.air-column.on-the-plan"), stated(), stated())));
  }

  /** The careful reading in bold: it rules. */
  private static List<TableCell> need(String what, String low, String mixed) {
    return List.of(TableCell.of(what), TableCell.bold(low), TableCell.of(mixed));
  }

  /** As the codes give it in either system, NFPA 30 (from memory). */
  private String byFloor() {
    return context.units() == UnitSystem.METRIC
        ? context.say("sheets.air-column.by-floor-in-meters")
        : context.say("sheets.air-column.by-floor");
  }

  private String stated() {
    return air.stated().map(f -> flow(f.airflow())).orElse(context.say("sheets.air-column.none"));
  }
}
