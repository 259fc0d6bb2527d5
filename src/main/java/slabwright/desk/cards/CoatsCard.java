package slabwright.desk.cards;

import java.util.List;
import java.util.Optional;
import slabwright.desk.model.Bench;
import slabwright.desk.model.Job;
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
    rows.getChildren().add(Controls.sentence("Rates: " + from, "card-hint"));
    rows.getChildren().add(Controls.sentence(WorkPlan.NOTICE, "card-hint"));
  }

  @Override
  public boolean refresh() {
    working.show(job.isWorking());
    List<Object> now = List.of(work(), rows.units());
    if (!now.equals(shown)) {
      shown = now;
      work().ifPresent(this::fill);
    }
    return bench.focus().area().isPresent();
  }
}
