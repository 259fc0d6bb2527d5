package slabwright.desk.cards.finish;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.FindingRow;
import slabwright.desk.cards.PlaceNavigator;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.SiteComputation;
import slabwright.desk.shell.Controls;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.Spot;
import slabwright.work.AirPlan;
import slabwright.work.AreaWorkPlan;
import slabwright.work.HeldGroup;
import slabwright.work.JobOutlook;
import slabwright.work.WorkPlan;
import slabwright.work.air.AirPath;
import slabwright.work.rule.RuleNote;

/** Every caution of a floor area, the gravest first, each with the way to its place. */
public final class CautionsCard extends Card {
  private final DeskContext bench;
  private final SiteComputation job;
  private final PlaceNavigator places;
  private final FieldRows rows;
  private List<Object> shown = List.of();

  public CautionsCard(DeskContext bench, SiteComputation job, PlaceNavigator places) {
    super(bench, "cautions", bench.words().say("desk.cards.finish.cautions.cautions"));
    this.bench = bench;
    this.job = job;
    this.places = places;
    rows = new FieldRows(bench);
    body().getChildren().add(rows);
  }

  private Optional<AreaWorkPlan> work() {
    Optional<String> id = bench.focus().area().map(FloorArea::id);
    return job.done().flatMap(d -> id.flatMap(d.work()::area));
  }

  private void fill(AreaWorkPlan w) {
    rows.clear();
    List<FindingRow> all = new ArrayList<>();
    job.done().ifPresent(d -> outlook(all, d.work().outlook(), w.floor().area().id()));
    w.air().maybe().ifPresent(a -> air(all, a, w.floor().area()));
    w.notes().forEach(n -> all.add(rule(n, w)));
    for (FindingRow.Sign sign :
        List.of(FindingRow.Sign.CANT, FindingRow.Sign.LOOK, FindingRow.Sign.FINE)) {
      all.stream()
          .filter(f -> f.sign() == sign)
          .forEach(f -> rows.getChildren().add(f.row(words())));
    }
    rows.getChildren().add(Controls.sentence(bench.words().say(WorkPlan.NOTICE), "card-hint"));
  }

  /** What stands against the whole job, then the steps of this floor that are held. */
  private void outlook(List<FindingRow> all, JobOutlook outlook, String area) {
    outlook.cannotStart().stream()
        .distinct()
        .forEach(m -> all.add(cant(words().say("desk.cards.finish.cautions.cannot-start", m))));
    HeldGroup.of(outlook.held()).stream()
        .filter(h -> h.first().area().equals(area))
        .forEach(
            h ->
                all.add(
                    cant(
                        words()
                            .say(
                                "desk.cards.finish.cautions.held",
                                h.why(),
                                h.worst().frees().stream()
                                    .map(words()::say)
                                    .collect(Collectors.joining("; "))))));
  }

  private static FindingRow cant(String said) {
    return new FindingRow(FindingRow.Sign.CANT, said, Optional.empty());
  }

  private void air(List<FindingRow> all, AirPlan air, FloorArea area) {
    air.fire()
        .reasons()
        .forEach(
            r ->
                all.add(
                    look(
                        words().say("desk.cards.finish.cautions.fire-code-flammable-finishes", r),
                        this::showFloor)));
    if (air.screening().isPresent() || air.fire().applies()) {
      for (Mark m : area.marks()) {
        if (m.kind() instanceof MarkKind.IgnitionSource) {
          all.add(
              look(
                  words().say("desk.cards.finish.cautions.made-safe-before-the-first", m.name()),
                  place(m)));
        } else if (m.kind() instanceof MarkKind.Detector) {
          all.add(
              look(
                  words().say("desk.cards.finish.cautions.isolated-by-the-owner-and", m.name()),
                  place(m)));
        }
      }
      air.path().ifPresent(p -> path(all, p));
    }
  }

  private void path(List<FindingRow> all, AirPath p) {
    all.add(
        look(
            words().say("desk.cards.finish.cautions.fresh-air-comes-in-by", p.inlet().name()),
            at(p.inlet().at())));
    all.add(
        look(
            words().say("desk.cards.finish.cautions.air-is-drawn-out-low", p.outlet().name()),
            at(p.outlet().at())));
  }

  private FindingRow rule(RuleNote n, AreaWorkPlan w) {
    FindingRow.Sign sign =
        switch (n.verdict()) {
          case FINE -> FindingRow.Sign.FINE;
          case NOT_MET -> FindingRow.Sign.CANT;
          case LOOK, UNKNOWN -> FindingRow.Sign.LOOK;
        };
    String source = words().say("desk.cards.finish.cautions.source", n.rule(), n.number());
    String said =
        n.hasTodo()
            ? words()
                .say(
                    "desk.cards.finish.cautions.rule-with-duty",
                    n.subject(),
                    n.finding(),
                    n.todo(),
                    source)
            : words().say("desk.cards.finish.cautions.rule", n.subject(), n.finding(), source);
    return new FindingRow(sign, said, Optional.of(() -> places.show(where(n, w))));
  }

  /** A mark that the rule names, else the whole floor. */
  private static Bounds where(RuleNote n, AreaWorkPlan w) {
    return w.floor().area().marks().stream()
        .filter(m -> !m.name().isBlank() && n.subject().values().contains(m.name()))
        .findFirst()
        .map(CautionsCard::bounds)
        .orElse(w.floor().floor().bounds());
  }

  private static Bounds bounds(Mark m) {
    Bounds b = Bounds.EMPTY;
    for (Spot s : m.form().spots()) {
      b = b.including(s.vec());
    }
    return b;
  }

  private FindingRow look(String words, Runnable show) {
    return new FindingRow(FindingRow.Sign.LOOK, words, Optional.of(show));
  }

  private Runnable place(Mark m) {
    return at(m.form().spots().get(0).vec());
  }

  private Runnable at(Vec v) {
    return () -> places.show(v);
  }

  private void showFloor() {
    work().ifPresent(w -> places.show(w.floor().floor().bounds()));
  }

  @Override
  protected void refresh() {
    Optional<AreaWorkPlan> area = work();
    List<Object> now = List.of(area, job.done().map(d -> d.work().outlook()));
    if (!now.equals(shown)) {
      shown = now;
      area.ifPresent(this::fill);
    }
  }

  @Override
  public boolean isWanted() {
    return work().isPresent();
  }
}
