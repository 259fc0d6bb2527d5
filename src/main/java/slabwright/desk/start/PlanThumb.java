package slabwright.desk.start;

import java.util.Optional;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import slabwright.desk.canvas.FxPainter;
import slabwright.desk.canvas.Tone;
import slabwright.desk.model.plan.PlanSketch;
import slabwright.drawing.Drawing;
import slabwright.drawing.Palette;
import slabwright.drawing.View;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

/** A plan as small as a stamp; a bare sheet until it is drawn, and where it can't be. */
final class PlanThumb extends Canvas {
  private static final double WIDE = 72;
  private static final double HIGH = 52;
  private static final double EDGE = 4;

  private Optional<PlanSketch> sketch = Optional.empty();
  private Tone tone;

  PlanThumb(Tone tone) {
    super(WIDE, HIGH);
    this.tone = tone;
    getStyleClass().add("plan-thumb");
    paint();
  }

  void show(Optional<PlanSketch> now) {
    if (!now.equals(sketch)) {
      sketch = now;
      paint();
    }
  }

  void setTone(Tone now) {
    tone = now;
    paint();
  }

  private void paint() {
    GraphicsContext g = getGraphicsContext2D();
    g.clearRect(0, 0, WIDE, HIGH);
    sketch.ifPresentOrElse(s -> paint(g, s), () -> bare(g));
  }

  private void bare(GraphicsContext g) {
    g.setStroke(tone.of(Palette.SOFT));
    g.setLineWidth(1);
    g.strokeRect(WIDE / 2 - 20.5, EDGE + 6.5, 41, HIGH - 2 * EDGE - 13);
  }

  private void paint(GraphicsContext g, PlanSketch s) {
    Bounds b = s.bounds();
    double k = Math.min((WIDE - 2 * EDGE) / b.width(), (HIGH - 2 * EDGE) / b.height());
    double paper = k / FxPainter.SCREEN;
    Vec m = b.middle();
    double x = WIDE / 2 / FxPainter.SCREEN - m.x() * paper;
    double y = HIGH / 2 / FxPainter.SCREEN + m.y() * paper;
    Drawing placed = new View(new Affine(paper, 0, 0, -paper, x, y)).place(s.drawing());
    placed.paintOn(new FxPainter(g, FxPainter.SCREEN, tone), placed.bounds().grown(2));
  }
}
