package slabwright.desk.cards.finish;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.FindingRow;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.SiteComputation;
import slabwright.desk.model.plan.ShopBookEditor;
import slabwright.desk.shell.Controls;
import slabwright.project.SiteResult;
import slabwright.units.Result;
import slabwright.units.UnitSystem;
import slabwright.work.WorkPlan;
import slabwright.work.actuals.WriteBack;

/**
 * After the job: hours and volumes as they really were, shown as old and new values of the shop
 * book and written into it only when asked.
 */
public final class ActualsCard extends Card {
  private final ShopBookEditor keeper;
  private final SiteComputation job;
  private final FieldRows rows;
  private final Map<WriteBack.Actual, String> typed = new LinkedHashMap<>();
  private WriteBack.ActualKind what = WriteBack.ActualKind.USED;
  private List<Object> shown = List.of();

  public ActualsCard(DeskContext bench, SiteComputation job, ShopBookEditor keeper) {
    super(bench, "after-the-job", bench.words().say("desk.cards.finish.actuals.after-the-job"));
    this.keeper = keeper;
    this.job = job;
    rows = new FieldRows(bench);
    body().getChildren().add(rows);
  }

  private Optional<WorkPlan> work() {
    return job.done().map(SiteResult::work);
  }

  private void fill(WorkPlan plan) {
    rows.clear();
    rows.choice(
            words().say("desk.cards.finish.actuals.measured"),
            List.of(WriteBack.ActualKind.values()),
            WriteBack.ActualKind::word,
            () -> what,
            this::show)
        .setId("actual-what");
    rows.getChildren()
        .add(
            Controls.sentence(
                words().say("desk.cards.finish.actuals.the", what.asks()), "card-hint"));
    WriteBack.askable(plan).stream().filter(a -> a.what() == what).forEach(this::field);
    changes();
  }

  private void show(WriteBack.ActualKind next) {
    what = next;
    refresh();
  }

  private void field(WriteBack.Actual a) {
    rows.text(a.name(), () -> typed.getOrDefault(a, ""), v -> take(a, v))
        .id("actual-" + a.name().replace(' ', '-'));
  }

  private Result<?> take(WriteBack.Actual a, String text) {
    if (text.isBlank()) {
      typed.remove(a);
      refresh();
      return Result.ok(text);
    }
    Optional<Result<WriteBack.NewBook>> tried = result(List.of(filled(a, text)));
    if (tried.isPresent() && tried.get() instanceof Result.Refused<WriteBack.NewBook> bad) {
      return bad;
    }
    typed.put(a, text.strip());
    refresh();
    return Result.ok(text);
  }

  /** A bare number is a volume in the site's unit where one was poured. */
  private WriteBack.Actual filled(WriteBack.Actual a, String text) {
    boolean bare = a.what() == WriteBack.ActualKind.USED && text.strip().matches("[\\d.,]+");
    String unit = rows.units() == UnitSystem.METRIC ? " L" : " gal";
    return new WriteBack.Actual(a.what(), a.name(), text.strip() + (bare ? unit : ""));
  }

  private Optional<Result<WriteBack.NewBook>> result(List<WriteBack.Actual> measured) {
    return work().flatMap(w -> keeper.text().map(t -> WriteBack.of(w, t, measured)));
  }

  /** What would be written, old and new, with the button that does it. */
  private void changes() {
    List<WriteBack.Actual> measured = new ArrayList<>();
    typed.forEach((a, text) -> measured.add(filled(a, text)));
    Optional<Result<WriteBack.NewBook>> result = result(measured);
    if (measured.isEmpty() || result.isEmpty()) {
      return;
    }
    if (result.get() instanceof Result.Refused<WriteBack.NewBook> bad) {
      rows.getChildren().add(FindingRow.look(words().say(bad.message())).row(words()));
      return;
    }
    WriteBack.NewBook r = result.get().orThrow();
    r.changes().forEach(c -> rows.getChildren().add(Controls.sentence(words().say(c.sentence()))));
    var write =
        Controls.button(
            words().say("desk.cards.finish.actuals.write-into-the-shop-book"),
            "link",
            () -> write(r));
    write.setId("actual-write");
    rows.getChildren().add(write);
  }

  private void write(WriteBack.NewBook r) {
    typed.clear();
    keeper.write(r.text(), "");
  }

  @Override
  protected void refresh() {
    List<Object> now =
        List.of(
            work().map(WorkPlan::areas),
            what,
            new LinkedHashMap<>(typed),
            keeper.text().map(t -> t.text()));
    if (!now.equals(shown)) {
      shown = now;
      work().ifPresent(this::fill);
    }
    rows.refresh();
  }

  @Override
  public boolean isWanted() {
    return work().isPresent() && keeper.form().isPresent();
  }
}
