package slabwright.desk.cards.finish;

import java.util.List;
import java.util.Optional;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.ComputingRow;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.FindingRow;
import slabwright.desk.cards.PictureRow;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.SiteComputation;
import slabwright.desk.shell.Controls;
import slabwright.figures.LaneDiagram;
import slabwright.site.FloorArea;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.work.AreaWorkPlan;
import slabwright.work.WorkPlan;
import slabwright.work.coat.CoatPlan;

/** The coats of the finish system: how much of each, in which kits. */
public final class CoatsCard extends Card {
  private final DeskContext bench;
  private final SiteComputation job;
  private final ComputingRow working = new ComputingRow();
  private final FieldRows rows;
  private List<Object> shown = List.of();

  public CoatsCard(DeskContext bench, SiteComputation job) {
    super("Coats");
    this.bench = bench;
    this.job = job;
    rows = new FieldRows(bench.desk());
    body().getChildren().addAll(working.node(job::cancel), rows);
  }

  private Optional<AreaWorkPlan> work() {
    Optional<String> id = bench.focus().area().map(FloorArea::id);
    return job.done().flatMap(d -> id.flatMap(d.work()::area));
  }

  private void fill(AreaWorkPlan w) {
    rows.clear();
    UnitSystem units = rows.units();
    for (CoatPlan c : w.coats()) {
      int n = c.job().coats();
      rows.getChildren().add(Controls.sentence(c.product().label(), "coat-name"));
      rows.figure(
          n + (n == 1 ? " coat" : " coats"),
          () -> c.totalVolume().text(v -> QuantityFormat.volume(v, units)));
      rows.figure("To lay one coat", () -> c.coatTime().text(DaysCard::hours));
      LaneDiagram.of(c, w.floor().wayOut(), bench.words(), PictureRow.WIDTH)
          .map(d -> PictureRow.of(d, bench, "Lanes of " + c.product().label()))
          .ifPresent(rows.getChildren()::add);
      warnings(c);
    }
    w.unknownProducts()
        .forEach(
            id ->
                rows.getChildren()
                    .add(FindingRow.look("The shop book has no product \"" + id + "\".").row()));
    if (w.coats().isEmpty()) {
      rows.getChildren()
          .add(Controls.sentence("No finish system is set in this plan yet.", "card-words"));
    }
    String from = job.done().map(j -> j.work().book().origin()).orElse("");
    rows.getChildren().add(Controls.sentence(from, "card-hint"));
    rows.getChildren().add(Controls.sentence(WorkPlan.NOTICE, "card-hint"));
  }

  /** What a crew must know before it opens a can. */
  private void warnings(CoatPlan c) {
    if (!c.batches().isKnown()) {
      look(c.batches().text(b -> ""));
    }
    if (c.cutInOutlastsWetEdge().maybe().orElse(false)) {
      look(
          "Cutting in takes "
              + c.cutIn().text(DaysCard::hours)
              + " and an edge stays wet "
              + c.wetEdge().text(t -> t.toMinutes() + " min")
              + ": cut in as you go.");
    }
    if (!c.keepsWetEdge().maybe().orElse(true)) {
      look("A lane is lapped after its edge has dried: add hands, or divide at a joint.");
    }
  }

  private void look(String words) {
    rows.getChildren().add(FindingRow.look(words).row());
  }

  @Override
  protected void refresh() {
    working.show(job.isWorking());
    List<Object> now = List.of(work(), rows.units(), bench.settings().dark());
    if (!now.equals(shown)) {
      shown = now;
      work().ifPresent(this::fill);
    }
  }

  @Override
  public boolean isWanted() {
    return bench.focus().area().isPresent();
  }
}
