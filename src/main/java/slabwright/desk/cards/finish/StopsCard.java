package slabwright.desk.cards.finish;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.model.Desk;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.SiteComputation;
import slabwright.desk.shell.Controls;
import slabwright.site.FloorArea;
import slabwright.site.edit.AreaEdit;
import slabwright.site.job.Stop;
import slabwright.units.Message;
import slabwright.work.AreaWorkPlan;
import slabwright.work.stop.JobStop;

/** What must be settled before work starts: each question with who settled it, when and how. */
public final class StopsCard extends Card {
  private final DeskContext bench;
  private final Desk desk;
  private final SiteComputation job;
  private final FieldRows rows;
  private List<String> shown = List.of();

  public StopsCard(DeskContext bench, SiteComputation job) {
    super(bench, "stops", bench.words().say("desk.cards.finish.stops.before-work-starts"));
    this.bench = bench;
    this.desk = bench.desk();
    this.job = job;
    rows = new FieldRows(bench);
    body()
        .getChildren()
        .addAll(
            rows, Controls.sentence(words().say("desk.cards.finish.stops.how-to"), "card-hint"));
  }

  private List<JobStop> asked() {
    return job.done()
        .flatMap(d -> bench.focus().area().map(FloorArea::id).flatMap(d.work()::area))
        .map(AreaWorkPlan::stops)
        .orElse(List.of());
  }

  @Override
  public boolean isWanted() {
    return !asked().isEmpty();
  }

  /** Rows stay while the same is asked, so that a field keeps its cursor. */
  @Override
  protected void refresh() {
    List<JobStop> asked = asked();
    List<String> now = asked.stream().map(s -> s.area() + " " + s.kind()).toList();
    if (!now.equals(shown)) {
      shown = now;
      rows.clear();
      asked.forEach(this::rows);
    }
    rows.refresh();
  }

  private void rows(JobStop s) {
    String id = s.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
    rows.sentence(
        () -> words().say("desk.cards.finish.stops.stands", s.question(), standing(s)), "figure");
    rows.getChildren().add(Controls.sentence(words().say(s.reason()), "card-hint"));
    rows.text(
            words().say("desk.cards.finish.stops.cleared"),
            () -> state(s) instanceof Stop.Cleared c ? SettledStop.text(c) : "",
            t -> SettledStop.cleared(t).map(v -> rows.taken(v, to -> settle(s, to))))
        .wide()
        .id("stop-cleared-" + id);
    rows.text(
            words().say("desk.cards.finish.stops.confirmed"),
            () -> state(s) instanceof Stop.Confirmed c ? SettledStop.text(c) : "",
            t -> SettledStop.confirmed(t).map(v -> rows.taken(v, to -> settle(s, to))))
        .wide()
        .id("stop-confirmed-" + id);
  }

  private Message standing(JobStop s) {
    Stop.State now = state(s);
    if (now instanceof Stop.Cleared) {
      return Message.of("desk.cards.finish.stops.is-cleared");
    }
    if (now instanceof Stop.Confirmed) {
      return Message.of("desk.cards.finish.stops.is-confirmed");
    }
    return s.kind() == Stop.Kind.OWNERS_SURVEY
        ? Message.of("desk.cards.finish.stops.open")
        : Message.of("desk.cards.finish.stops.open-no-dates");
  }

  private Optional<FloorArea> area(JobStop s) {
    return desk.site().area(s.area());
  }

  private Stop.State state(JobStop s) {
    return area(s).stream()
        .flatMap(a -> a.details().stops().stream())
        .filter(t -> t.kind() == s.kind())
        .map(Stop::state)
        .findFirst()
        .orElseGet(Stop.Open::new);
  }

  private void settle(JobStop s, Stop.State to) {
    area(s)
        .ifPresent(
            a ->
                desk.push(
                    new AreaEdit.SetDetails(
                        a.id(),
                        Message.of("desk.cards.finish.stops.settle", s.question()),
                        a.details().withStops(SettledStop.in(a.details().stops(), s.kind(), to)))));
  }
}
