package slabwright.desk.cards.inlay;

import java.util.Optional;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Label;
import slabwright.desk.canvas.FxPainter;
import slabwright.desk.canvas.Tone;
import slabwright.desk.cards.Card;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.SelectedAreaResults;
import slabwright.desk.shell.Controls;
import slabwright.drawing.Drawing;
import slabwright.figures.RollDiagram;
import slabwright.inlay.ComputedInlay;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.panel.PanelPlan;
import slabwright.units.LengthFormat;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;

/** The panels for the sign shop: how many, how much of the roll, and a picture of them on it. */
public final class PanelsCard extends Card {
  private static final double WIDE = 306;

  private final DeskContext bench;
  private final SelectedAreaResults answers;
  private final SelectedInlay inlay;
  private final Label roll = Controls.sentence("", "card-words");
  private final Label sum = Controls.sentence("", "big-figure");
  private final Canvas picture = new Canvas(WIDE, 92);
  private Optional<ComputedInlay> shown = Optional.empty();
  private UnitSystem units = UnitSystem.METRIC;
  private boolean dark;

  public PanelsCard(DeskContext bench, SelectedAreaResults answers) {
    super(
        bench,
        "panels-for-the-sign-shop",
        bench.words().say("desk.cards.inlay.panels.panels-for-the-sign-shop"));
    this.bench = bench;
    this.answers = answers;
    this.inlay = new SelectedInlay(bench);
    body().getChildren().addAll(sum, roll, picture);
  }

  private void fill(InlayPlan plan, PanelPlan p, ComputedInlay.Film film) {
    int stencils = plan.stencils().stencils().size();
    sum.setText(
        words()
            .say(
                "desk.cards.inlay.panels.of-roll-waste",
                p.all().size(),
                p.laps(plan.stencils().stencils()).size(),
                QuantityFormat.run(film.roll(), units),
                Math.round(film.waste() * 100)));
    roll.setText(
        words()
            .say(
                "desk.cards.inlay.panels.blank-cut",
                stencils,
                LengthFormat.show(plan.stencils().blank().width(), units),
                LengthFormat.show(plan.stencils().blank().height(), units),
                QuantityFormat.run(plan.cutLength(), units)));
  }

  private void draw(ComputedInlay answer, PanelPlan p) {
    GraphicsContext g = picture.getGraphicsContext2D();
    double k = FxPainter.SCREEN;
    var diagram = new RollDiagram(p, p.all(), answer.cutOut(), answer.inlay().spec().roll().mm());
    double scale = diagram.scale(WIDE / k, 24);
    var drawing = Drawing.paper(WIDE / k, diagram.roll() * scale, diagram.inks(scale, 0, 3.6));
    picture.setHeight(drawing.bounds().height() * k + 2);
    g.clearRect(0, 0, WIDE, picture.getHeight());
    drawing.paintOn(new FxPainter(g, k, dark ? Tone.DARK : Tone.LIGHT), drawing.bounds());
  }

  private Optional<ComputedInlay> answer() {
    return inlay.now().flatMap(i -> answers.inlay(i.id()));
  }

  @Override
  protected void refresh() {
    Optional<ComputedInlay> now = answer();
    UnitSystem u = bench.desk().shown().units();
    boolean d = bench.settings().dark();
    if (isWanted() && (!now.equals(shown) || u != units || d != dark)) {
      shown = now;
      units = u;
      dark = d;
      InlayPlan plan = now.flatMap(ComputedInlay::plan).orElseThrow();
      fill(plan, plan.panels().orElseThrow(), now.get().film());
      draw(now.get(), plan.panels().orElseThrow());
    }
  }

  @Override
  public boolean isWanted() {
    return answer().flatMap(ComputedInlay::plan).flatMap(InlayPlan::panels).isPresent();
  }
}
