package slabwright.desk.cards;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.Bench;
import slabwright.desk.model.Job;
import slabwright.desk.shell.Controls;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.Spot;
import slabwright.work.AirWork;
import slabwright.work.AreaWork;
import slabwright.work.WorkPlan;
import slabwright.work.air.AirPath;
import slabwright.work.rule.RuleNote;

/** Every caution of a floor area, the gravest first, each with the way to its place. */
public final class CautionsCard extends Card {
  private final Bench bench;
  private final Job job;
  private final Places places;
  private final FieldRows rows;
  private Optional<AreaWork> shown = Optional.empty();

  public CautionsCard(Bench bench, Job job, Places places) {
    super("Cautions");
    this.bench = bench;
    this.job = job;
    this.places = places;
    rows = new FieldRows(bench.desk());
    body().getChildren().add(rows);
  }

  private Optional<AreaWork> work() {
    Optional<String> id = bench.focus().area().map(FloorArea::id);
    return job.done().flatMap(d -> id.flatMap(d.work()::area));
  }

  private void fill(AreaWork w) {
    rows.clear();
    List<Finding> all = new ArrayList<>();
    w.air().maybe().ifPresent(a -> air(all, a, w.floor().area()));
    w.notes().forEach(n -> all.add(rule(n, w)));
    for (Finding.Sign sign : List.of(Finding.Sign.CANT, Finding.Sign.LOOK, Finding.Sign.FINE)) {
      all.stream().filter(f -> f.sign() == sign).forEach(f -> rows.getChildren().add(f.row()));
    }
    rows.getChildren().add(Controls.sentence(WorkPlan.NOTICE, "card-hint"));
  }

  private void air(List<Finding> all, AirWork air, FloorArea area) {
    air.fire()
        .reasons()
        .forEach(
            r ->
                all.add(
                    look(
                        "Fire code, flammable finishes: " + r + ". Ask the authority.",
                        this::showFloor)));
    if (air.screening().isPresent() || air.fire().applies()) {
      for (Mark m : area.marks()) {
        if (m.kind() instanceof MarkKind.IgnitionSource) {
          all.add(look(m.name() + ": made safe before the first can is opened.", place(m)));
        } else if (m.kind() instanceof MarkKind.Detector) {
          all.add(look(m.name() + ": isolated by the owner, and restored after.", place(m)));
        }
      }
      air.path().ifPresent(p -> path(all, p));
    }
  }

  private void path(List<Finding> all, AirPath p) {
    all.add(look("Fresh air comes in by " + p.inlet().name() + ".", at(p.inlet().at())));
    all.add(look("Air is drawn out low by " + p.outlet().name() + ".", at(p.outlet().at())));
  }

  private Finding rule(RuleNote n, AreaWork w) {
    Finding.Sign sign =
        switch (n.verdict()) {
          case FINE -> Finding.Sign.FINE;
          case NOT_MET -> Finding.Sign.CANT;
          case LOOK, UNKNOWN -> Finding.Sign.LOOK;
        };
    String todo = n.todo().isEmpty() ? "" : " " + n.todo();
    String source = n.number().isEmpty() ? n.rule() : n.rule() + ", " + n.number();
    String words = "%s: %s.%s (%s)".formatted(n.subject(), n.finding(), todo, source);
    return new Finding(sign, words, Optional.of(() -> places.show(where(n, w))));
  }

  /** A mark that the rule names, else the whole floor. */
  private static Bounds where(RuleNote n, AreaWork w) {
    return w.floor().area().marks().stream()
        .filter(m -> !m.name().isBlank() && n.subject().contains(m.name()))
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

  private Finding look(String words, Runnable show) {
    return new Finding(Finding.Sign.LOOK, words, Optional.of(show));
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
    Optional<AreaWork> now = work();
    if (!now.equals(shown)) {
      shown = now;
      now.ifPresent(this::fill);
    }
  }

  @Override
  public boolean isWanted() {
    return work().isPresent();
  }
}
