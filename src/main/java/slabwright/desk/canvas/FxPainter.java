package slabwright.desk.canvas;

import java.io.ByteArrayInputStream;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.Image;
import javafx.scene.paint.Color;
import javafx.scene.shape.FillRule;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;
import slabwright.drawing.Colour;
import slabwright.drawing.Fill;
import slabwright.drawing.FontFace;
import slabwright.drawing.Painter;
import slabwright.drawing.Pen;
import slabwright.drawing.Raster;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** Paints inks on a canvas: paper millimetres times {@code k} are pixels, y down. */
public final class FxPainter implements Painter {
  /** Pixels to a millimetre of paper at the usual 96 to the inch. */
  public static final double SCREEN = 96 / 25.4;

  /**
   * Words lower than this are left out, px: on a fine screen they are read half as high, on others
   * they still show where something is written.
   */
  private static final double SMALLEST = 1.5;

  private final GraphicsContext g;
  private final double k;
  private final Tone tone;

  public FxPainter(GraphicsContext g, double k, Tone tone) {
    this.g = g;
    this.k = k;
    this.tone = tone;
  }

  @Override
  public void stroke(Stroke s) {
    Pen pen = s.pen();
    g.setStroke(colour(pen.colour()));
    g.setLineWidth(Math.max(0.6, pen.width() * k));
    g.setLineCap(pen.round() ? StrokeLineCap.ROUND : StrokeLineCap.BUTT);
    g.setLineJoin(pen.round() ? StrokeLineJoin.ROUND : StrokeLineJoin.MITER);
    g.setLineDashes(pen.dash().stream().mapToDouble(d -> d * k).toArray());
    g.beginPath();
    s.rings().forEach(r -> chain(r.points(), true));
    for (Line line : s.lines()) {
      chain(line.points(), false);
    }
    g.stroke();
  }

  @Override
  public void fill(Fill f) {
    g.setFill(colour(f.colour()));
    g.setFillRule(FillRule.EVEN_ODD);
    g.beginPath();
    for (Ring ring : f.rings()) {
      chain(ring.points(), true);
    }
    g.fill();
  }

  @Override
  public void text(Text t) {
    double size = t.style().size() * k;
    if (size < SMALLEST) {
      return;
    }
    g.save();
    g.translate(t.at().x() * k, t.at().y() * k);
    g.rotate(-t.turn());
    g.setFont(
        Font.font(FontFace.FAMILY, t.style().bold() ? FontWeight.BOLD : FontWeight.NORMAL, size));
    g.setTextAlign(
        switch (t.anchor()) {
          case START -> TextAlignment.LEFT;
          case MIDDLE -> TextAlignment.CENTER;
          case END -> TextAlignment.RIGHT;
        });
    g.setFill(colour(t.style().colour()));
    g.fillText(TextMeasure.showable(t.words()), 0, 0);
    g.restore();
  }

  @Override
  public void raster(Raster r) {
    Bounds b = r.at();
    Image image = new Image(new ByteArrayInputStream(r.picture().jpeg()));
    g.drawImage(image, b.minX() * k, b.minY() * k, b.width() * k, b.height() * k);
  }

  private void chain(List<Vec> points, boolean closed) {
    for (int i = 0; i < points.size(); i++) {
      Vec p = points.get(i);
      if (i == 0) {
        g.moveTo(p.x() * k, p.y() * k);
      } else {
        g.lineTo(p.x() * k, p.y() * k);
      }
    }
    if (closed && !points.isEmpty()) {
      g.closePath();
    } else if (points.size() == 2 && points.get(0).equals(points.get(1))) {
      g.lineTo(points.get(0).x() * k + 0.01, points.get(0).y() * k);
    }
  }

  private Color colour(Colour c) {
    return tone.of(c);
  }
}
