package slabwright.desk.cards.prep;

import java.util.List;
import java.util.Optional;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import slabwright.desk.canvas.FxPainter;
import slabwright.desk.canvas.Tone;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FindingRow;
import slabwright.desk.cards.PlaceNavigator;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.SelectedAreaResults;
import slabwright.desk.model.compute.SelectedAreaRoutes;
import slabwright.desk.shell.Controls;
import slabwright.drawing.Drawing;
import slabwright.drawing.Ink;
import slabwright.figures.ReachChart;
import slabwright.figures.ReachCurveLabels;
import slabwright.figures.WaysWords;
import slabwright.floor.HandWorkKind;
import slabwright.floor.reach.PocketAccess;
import slabwright.floor.reach.ReachAnalysis;
import slabwright.floor.reach.ReachCurve;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;

/**
 * Reach against width as a picture that reads off where it is pointed at; the way to each pocket.
 */
public final class ReachCard extends Card {
  private static final double WIDE = 306;
  private static final double HIGH = 170;
  private static final int MOST = 12;

  private final DeskContext bench;
  private final SelectedAreaResults answers;
  private final SelectedAreaRoutes source;
  private final PlaceNavigator places;
  private final Canvas picture = new Canvas(WIDE, HIGH);
  private final Label reading = Controls.sentence("", "card-words");
  private final VBox list = new VBox();
  private List<Object> shown = List.of();
  private Optional<ReachChart> chart = Optional.empty();

  public ReachCard(
      DeskContext bench,
      SelectedAreaResults answers,
      SelectedAreaRoutes source,
      PlaceNavigator places) {
    super(bench, "how-wide-how-far", bench.words().say("desk.cards.prep.reach.how-wide-how-far"));
    this.bench = bench;
    this.answers = answers;
    this.source = source;
    this.places = places;
    picture.setId("reach-curve");
    picture.setOnMouseMoved(e -> point(Optional.of(e.getX() / FxPainter.SCREEN)));
    picture.setOnMouseExited(e -> point(Optional.empty()));
    list.getStyleClass().add("field-rows");
    body().getChildren().addAll(picture, reading, list);
  }

  private UnitSystem units() {
    return bench.desk().shown().units();
  }

  private void fill(ReachAnalysis ways) {
    List<ReachCurve> curves = ways.curves();
    chart =
        curves.isEmpty()
            ? Optional.empty()
            : Optional.of(
                new ReachChart(
                    curves,
                    ReachCurveLabels.machines(ways.takeoff()),
                    units(),
                    bench.words(),
                    WIDE / FxPainter.SCREEN,
                    HIGH / FxPainter.SCREEN,
                    1));
    Controls.show(picture, chart.isPresent());
    Controls.show(reading, chart.isPresent());
    point(Optional.empty());
    list.getChildren().clear();
    WaysWords say = new WaysWords(units(), words());
    if (chart.isPresent()) {
      curves.stream()
          .flatMap(c -> say.drops(c).stream().limit(2))
          .forEach(s -> list.getChildren().add(FindingRow.look(s).row(words())));
      String about = ReachCurveLabels.about(ways.takeoff(), words());
      String hint =
          curves.size() > 1
              ? words().say("desk.cards.prep.reach.line-as-found-dashes-once", about)
              : about;
      list.getChildren().add(Controls.sentence(hint, "card-hint"));
    }
    ways.pockets().stream()
        .limit(MOST)
        .forEach(p -> list.getChildren().add(pocket(say, p).row(words())));
  }

  private FindingRow pocket(WaysWords say, PocketAccess p) {
    Runnable show =
        p.pass().isPresent()
            ? () -> places.show(p.pass().get().where())
            : () -> places.show(p.pocket().region().bounds());
    return new FindingRow(
        FindingRow.Sign.LOOK,
        words()
            .say(
                "desk.cards.prep.reach.pocket-of-out-of-reach",
                QuantityFormat.area(p.pocket().area(), units()),
                say.way(p)),
        Optional.of(show));
  }

  /** Draws the chart, with what is pointed at; else with the widest machine read off. */
  private void point(Optional<Double> x) {
    chart.ifPresent(
        c -> {
          double body = x.map(c::bodyAt).orElse(c.machines().get(0).body().mm());
          reading.setText(new WaysWords(units(), bench.words()).reading(c.curves(), body));
          var g = picture.getGraphicsContext2D();
          g.clearRect(0, 0, WIDE, HIGH);
          FxPainter painter =
              new FxPainter(g, FxPainter.SCREEN, bench.settings().dark() ? Tone.DARK : Tone.LIGHT);
          List<Ink> inks = new java.util.ArrayList<>(c.inks());
          inks.addAll(c.pointer(body));
          Drawing d = Drawing.paper(c.width(), c.height(), inks);
          d.paintOn(painter, d.bounds());
        });
  }

  private void wait(int pockets) {
    chart = Optional.empty();
    Controls.show(picture, false);
    Controls.show(reading, true);
    reading.setText(
        pockets == 0
            ? words().say("desk.cards.prep.reach.working-out-the-curve")
            : words().say("desk.cards.prep.reach.working-out-the-curve-and-ways"));
    list.getChildren().clear();
  }

  @Override
  protected void refresh() {
    Optional<ReachAnalysis> now = source.ways();
    List<Object> seen = List.of(now, units(), bench.settings().dark());
    if (!seen.equals(shown)) {
      shown = seen;
      now.ifPresentOrElse(this::fill, () -> wait(pockets()));
    }
  }

  @Override
  public boolean isWanted() {
    return hasMachines() && (source.ways().isPresent() || source.isWorking());
  }

  private boolean hasMachines() {
    return answers.takeoff().map(t -> !t.area().machines().isEmpty()).orElse(false);
  }

  private int pockets() {
    return answers.takeoff().map(t -> t.asFound().pieces(HandWorkKind.POCKET).size()).orElse(0);
  }
}
