package slabwright.desk.cards;

import java.util.List;
import java.util.Optional;
import slabwright.desk.model.Bench;
import slabwright.desk.model.Job;
import slabwright.desk.model.LaneInks;
import slabwright.desk.shell.Controls;
import slabwright.site.FloorArea;
import slabwright.units.Quantity;
import slabwright.units.UnitSystem;
import slabwright.work.AreaWork;
import slabwright.work.WorkPlan;
import slabwright.work.coat.CoatPlan;

/** The coats of the finish system: how much of each, in which kits. */
public final class CoatsCard extends Card {
  private final Bench bench;
  private final Job job;
  private final HintLine working = new HintLine();
  private final FieldRows rows;
  private List<Object> shown = List.of();

  public CoatsCard(Bench bench, Job job) {
    super("Coats");
    this.bench = bench;
    this.job = job;
    rows = new FieldRows(bench.desk());
    body().getChildren().addAll(working.node(job::cancel), rows);
  }

  private Optional<AreaWork> work() {
    Optional<String> id = bench.focus().area().map(FloorArea::id);
    return job.done().flatMap(d -> id.flatMap(d.work()::area));
  }

  private void fill(AreaWork w) {
    rows.clear();
    UnitSystem units = rows.units();
    for (CoatPlan c : w.coats()) {
      int n = c.job().coats();
      rows.getChildren().add(Controls.sentence(c.product().label(), "coat-name"));
      rows.figure(
          n + (n == 1 ? " coat" : " coats"),
          () -> c.totalVolume().text(v -> Quantity.volume(v, units)));
      rows.figure("To lay one coat", () -> c.coatTime().text(DaysCard::hours));
      LaneInks.of(c, w.floor().wayOut(), PictureRow.WIDTH)
          .map(d -> PictureRow.of(d, bench, "Lanes of " + c.product().label()))
          .ifPresent(rows.getChildren()::add);
      warnings(c);
    }
    w.unknownProducts()
        .forEach(
            id ->
                rows.getChildren()
                    .add(Finding.look("The shop book has no product \"" + id + "\".").row()));
    if (w.coats().isEmpty()) {
      rows.getChildren()
          .add(Controls.sentence("No finish system is set in this plan yet.", "card-words"));
    }
    String from = job.done().map(Job.Done::bookFrom).orElse("");
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
    rows.getChildren().add(Finding.look(words).row());
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
