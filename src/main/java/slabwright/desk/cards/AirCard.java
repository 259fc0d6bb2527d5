package slabwright.desk.cards;

import java.util.List;
import java.util.Optional;
import slabwright.desk.model.Bench;
import slabwright.desk.model.Job;
import slabwright.desk.shell.Controls;
import slabwright.sheets.AirDrawing;
import slabwright.site.FloorArea;
import slabwright.units.Quantity;
import slabwright.work.AirWork;
import slabwright.work.AreaWork;
import slabwright.work.air.AirFigures;
import slabwright.work.air.AirScreening;
import slabwright.work.book.Figure;

/** Solvent vapour as a screening estimate, with its caution beside it. */
public final class AirCard extends Card {
  private final Bench bench;
  private final Job job;
  private final FieldRows rows;
  private List<Object> shown = List.of();

  public AirCard(Bench bench, Job job) {
    super("Air while coating");
    this.bench = bench;
    this.job = job;
    rows = new FieldRows(bench.desk());
    body().getChildren().add(rows);
  }

  private Optional<Figure<AirWork>> air() {
    Optional<String> id = bench.focus().area().map(FloorArea::id);
    return job.done().flatMap(d -> id.flatMap(d.work()::area)).map(AreaWork::air);
  }

  private void fill(Figure<AirWork> figure) {
    rows.clear();
    Optional<AirWork> air = figure.maybe();
    if (air.isEmpty()) {
      rows.getChildren().add(Finding.look(figure.text(a -> "")).row());
      return;
    }
    Optional<AirScreening> s = air.get().screening();
    if (s.isEmpty()) {
      rows.getChildren()
          .add(Finding.fine("No solvent vapour indoors to screen for this area.").row());
    } else {
      picture(s.get());
      figures("fan off", s.get().closed());
      s.get().stated().ifPresent(f -> figures("fan as stated", f));
    }
    air.get().advice().forEach(a -> rows.getChildren().add(Finding.look(a).row()));
    if (!air.get().assumption().isBlank()) {
      rows.getChildren().add(Controls.sentence(air.get().assumption(), "card-hint"));
    }
    rows.getChildren().add(Controls.sentence(AirScreening.NOTICE, "card-hint"));
  }

  private void picture(AirScreening s) {
    job.done()
        .map(d -> AirDrawing.of(s, d.work(), PictureRow.WIDTH))
        .map(d -> PictureRow.of(d, bench, "Vapour over time against its limits"))
        .ifPresent(rows.getChildren()::add);
  }

  private void figures(String when, AirFigures f) {
    rows.figure("Peak, " + when, () -> percent(f.peakLel()) + " of LEL");
    rows.figure("In the lowest metre", () -> percent(f.layerPeakLel()) + " of LEL");
    rows.figure("8-hour limits, together", () -> Quantity.number(f.together(), 2) + " times");
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
    rows.getChildren().add(new Finding(Finding.Sign.CANT, words, Optional.empty()).row());
  }

  static String percent(double share) {
    return Quantity.number(share * 100, share < 0.1 ? 1 : 0) + " %";
  }

  @Override
  protected void refresh() {
    Optional<Figure<AirWork>> now = air();
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
