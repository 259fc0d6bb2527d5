package slabwright.desk.cards.finish;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import javafx.scene.canvas.Canvas;
import slabwright.desk.canvas.FxPainter;
import slabwright.desk.canvas.Tone;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.FindingRow;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.SiteComputation;
import slabwright.desk.shell.Controls;
import slabwright.figures.DayBarChart;
import slabwright.units.QuantityFormat;
import slabwright.units.QuarterHour;
import slabwright.work.Presence;
import slabwright.work.book.Figure;
import slabwright.work.days.DayBars;
import slabwright.work.days.DayPlan;

/** The days of the whole site as bars. */
public final class DaysCard extends Card {
  private static final double WIDE = 306;

  private final DeskContext bench;
  private final SiteComputation job;
  private final FieldRows rows;
  private final Canvas picture = new Canvas(WIDE, 10);
  private List<Object> shown = List.of();

  public DaysCard(DeskContext bench, SiteComputation job) {
    super(bench, "days-whole-site", bench.words().say("desk.cards.finish.days.days-whole-site"));
    this.bench = bench;
    this.job = job;
    rows = new FieldRows(bench);
    body().getChildren().addAll(rows, picture);
  }

  static String hours(Duration d) {
    double h = QuarterHour.nearest(d).toMinutes() / 60.0;
    return QuantityFormat.number(h, h < 10 ? 2 : 0) + " h";
  }

  private void fill(Figure<DayPlan> days) {
    rows.clear();
    Optional<DayPlan> plan = days.maybe();
    if (plan.isEmpty()) {
      rows.getChildren().add(FindingRow.look(words().say(days.text(d -> ""))).row(words()));
      picture.setHeight(1);
      return;
    }
    Optional<Presence> here = job.done().flatMap(d -> d.work().presence().maybe());
    here.ifPresent(
        p -> {
          rows.figure(
              words().say("desk.cards.finish.days.hours-of-people"), () -> hours(p.steps()));
          rows.figure(
              words().say("desk.cards.finish.days.hours-of-presence"), () -> hours(p.present()));
        });
    rows.figure(words().say("desk.cards.finish.days.from"), () -> plan.get().firstDay().toString());
    rows.figure(
        words().say("desk.cards.finish.days.to"), () -> plan.get().end().toLocalDate().toString());
    rows.getChildren()
        .add(Controls.sentence(words().say("desk.cards.finish.days.what-bars-mean"), "card-hint"));
    var drawing = DayBarChart.of(DayBars.of(plan.get()), WIDE / FxPainter.SCREEN, words());
    picture.setHeight(drawing.bounds().height() * FxPainter.SCREEN);
    var g = picture.getGraphicsContext2D();
    g.clearRect(0, 0, WIDE, picture.getHeight());
    Tone tone = bench.settings().dark() ? Tone.DARK : Tone.LIGHT;
    drawing.paintOn(new FxPainter(g, FxPainter.SCREEN, tone), drawing.bounds());
  }

  @Override
  protected void refresh() {
    Optional<Figure<DayPlan>> days = job.done().map(d -> d.work().days());
    List<Object> now = List.of(days, bench.settings().dark());
    if (!now.equals(shown)) {
      shown = now;
      days.ifPresent(this::fill);
    }
  }

  @Override
  public boolean isWanted() {
    return job.done().isPresent();
  }
}
