package slabwright.desk.cards.finish;

import java.util.List;
import java.util.Optional;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.FindingRow;
import slabwright.desk.cards.PictureRow;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.SiteComputation;
import slabwright.desk.shell.Controls;
import slabwright.sheets.air.VapourDrawing;
import slabwright.site.FloorArea;
import slabwright.units.QuantityFormat;
import slabwright.work.AirPlan;
import slabwright.work.AreaWorkPlan;
import slabwright.work.air.AirFigures;
import slabwright.work.air.AirScreening;
import slabwright.work.book.Figure;

/** Solvent vapour as a screening estimate, with its caution beside it. */
public final class AirCard extends Card {
  private final DeskContext bench;
  private final SiteComputation job;
  private final FieldRows rows;
  private List<Object> shown = List.of();

  public AirCard(DeskContext bench, SiteComputation job) {
    super(bench, "air-while-coating", bench.words().say("desk.cards.finish.air.air-while-coating"));
    this.bench = bench;
    this.job = job;
    rows = new FieldRows(bench);
    body().getChildren().add(rows);
  }

  private Optional<Figure<AirPlan>> air() {
    Optional<String> id = bench.focus().area().map(FloorArea::id);
    return job.done().flatMap(d -> id.flatMap(d.work()::area)).map(AreaWorkPlan::air);
  }

  private void fill(Figure<AirPlan> figure) {
    rows.clear();
    Optional<AirPlan> air = figure.maybe();
    if (air.isEmpty()) {
      rows.getChildren().add(FindingRow.look(words().say(figure.text(a -> ""))).row(words()));
      return;
    }
    Optional<AirScreening> s = air.get().screening();
    if (s.isEmpty()) {
      rows.getChildren()
          .add(
              FindingRow.fine(words().say("desk.cards.finish.air.no-solvent-vapour-indoors-to"))
                  .row(words()));
    } else {
      picture(s.get());
      figures(words().say("desk.cards.finish.air.peak-fan-off"), s.get().closed());
      warning(s.get().closed(), words().say("desk.cards.finish.air.hazardous-fan-off"));
      s.get().stated().ifPresent(this::stated);
    }
    air.get()
        .advice()
        .forEach(a -> rows.getChildren().add(FindingRow.look(words().say(a)).row(words())));
    String taken = words().say(air.get().assumption());
    if (!taken.isBlank()) {
      rows.getChildren().add(Controls.sentence(taken, "card-hint"));
    }
    rows.getChildren().add(Controls.sentence(words().say(AirScreening.NOTICE), "card-hint"));
  }

  private void picture(AirScreening s) {
    job.done()
        .map(d -> VapourDrawing.of(s, d.work(), words(), PictureRow.WIDTH))
        .map(
            d ->
                PictureRow.of(
                    d, bench, words().say("desk.cards.finish.air.vapour-over-time-against-its")))
        .ifPresent(rows.getChildren()::add);
  }

  private void stated(AirFigures f) {
    figures(words().say("desk.cards.finish.air.peak-fan-as-stated"), f);
    warning(f, words().say("desk.cards.finish.air.hazardous-fan-as-stated"));
  }

  /** The careful reading, all vapour in the lowest metre, stands first: it rules. */
  private void figures(String peak, AirFigures f) {
    rows.figure(peak, () -> words().say("desk.cards.finish.air.of-lel", percent(f.layerPeakLel())));
    rows.figure(
        words().say("desk.cards.finish.air.room-mean"),
        () -> words().say("desk.cards.finish.air.of-lel", percent(f.peakLel())));
    rows.figure(
        words().say("desk.cards.finish.air.hour-limits-together"),
        () ->
            words()
                .say("desk.cards.finish.air.times", QuantityFormat.number(f.layerTogether(), 2)));
  }

  private void warning(AirFigures f, String hazardous) {
    if (f.layerPeakLel() >= AirFigures.HAZARDOUS_SHARE) {
      rows.getChildren()
          .add(new FindingRow(FindingRow.Sign.CANT, hazardous, Optional.empty()).row(words()));
    }
  }

  static String percent(double share) {
    return QuantityFormat.number(share * 100, share < 0.1 ? 1 : 0) + " %";
  }

  @Override
  protected void refresh() {
    Optional<Figure<AirPlan>> now = air();
    List<Object> key = List.of(now, bench.settings().dark());
    if (!key.equals(shown)) {
      shown = key;
      now.ifPresent(this::fill);
    }
    rows.refresh();
  }

  @Override
  public boolean isWanted() {
    return air().isPresent();
  }
}
