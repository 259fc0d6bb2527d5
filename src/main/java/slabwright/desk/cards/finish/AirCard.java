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
    super("Air while coating");
    this.bench = bench;
    this.job = job;
    rows = new FieldRows(bench.desk());
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
      rows.getChildren().add(FindingRow.look(figure.text(a -> "")).row());
      return;
    }
    Optional<AirScreening> s = air.get().screening();
    if (s.isEmpty()) {
      rows.getChildren()
          .add(FindingRow.fine("No solvent vapour indoors to screen for this area.").row());
    } else {
      picture(s.get());
      figures("fan off", s.get().closed());
      s.get().stated().ifPresent(f -> figures("fan as stated", f));
    }
    air.get().advice().forEach(a -> rows.getChildren().add(FindingRow.look(a).row()));
    if (!air.get().assumption().isBlank()) {
      rows.getChildren().add(Controls.sentence(air.get().assumption(), "card-hint"));
    }
    rows.getChildren().add(Controls.sentence(AirScreening.NOTICE, "card-hint"));
  }

  private void picture(AirScreening s) {
    job.done()
        .map(d -> VapourDrawing.of(s, d.work(), bench.words(), PictureRow.WIDTH))
        .map(d -> PictureRow.of(d, bench, "Vapour over time against its limits"))
        .ifPresent(rows.getChildren()::add);
  }

  private void figures(String when, AirFigures f) {
    rows.figure("Peak, " + when, () -> percent(f.peakLel()) + " of LEL");
    rows.figure("In the lowest metre", () -> percent(f.layerPeakLel()) + " of LEL");
    rows.figure("8-hour limits, together", () -> QuantityFormat.number(f.together(), 2) + " times");
    if (f.peakLel() >= AirFigures.HAZARDOUS_SHARE) {
      cant(
          "Above a tenth of the explosive limit with the "
              + when
              + ": a hazardous atmosphere (29 CFR 1926.1202).");
    } else if (f.layerPeakLel() >= AirFigures.HAZARDOUS_SHARE) {
      cant(
          "Where vapour lies low it passes a tenth of the explosive limit with the "
              + when
              + ": measure at the floor (29 CFR 1926.1202).");
    }
  }

  private void cant(String words) {
    rows.getChildren().add(new FindingRow(FindingRow.Sign.CANT, words, Optional.empty()).row());
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
