package slabwright.drawing.paint;

import java.awt.Color;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;
import slabwright.drawing.Colour;
import slabwright.drawing.CurveStroke;
import slabwright.drawing.Fill;
import slabwright.drawing.FontFace;
import slabwright.drawing.Painter;
import slabwright.drawing.Pen;
import slabwright.drawing.PrimitiveInk;
import slabwright.drawing.Raster;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.shape.curve.CurvedRing;

/** Paints the plain inks of one page into a PDF content stream whose unit is one paper mm. */
final class PdfPainter implements Painter {
  private static final int BUTT = 0;
  private static final int ROUND = 1;

  private final PDPageContentStream out;
  private final PdfFonts fonts;
  private final PdfImages images;
  private final Bounds paper;

  PdfPainter(PDPageContentStream out, PdfFonts fonts, PdfImages images, Bounds paper) {
    this.out = out;
    this.fonts = fonts;
    this.images = images;
    this.paper = paper;
  }

  void paint(List<PrimitiveInk> parts) throws IOException {
    out.transform(Matrix.getScaleInstance(PdfFile.POINTS_PER_MM, PdfFile.POINTS_PER_MM));
    more(parts);
  }

  /** Paints more of the same page. */
  void more(List<PrimitiveInk> parts) throws IOException {
    try {
      parts.forEach(part -> part.paintOn(this));
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  @Override
  public void fill(Fill f) {
    written(() -> writeFill(f));
  }

  @Override
  public void stroke(Stroke s) {
    written(() -> writeStroke(s));
  }

  @Override
  public void curves(CurveStroke s) {
    written(() -> writeCurves(s));
  }

  @Override
  public void text(Text t) {
    written(() -> writeText(t));
  }

  private interface Writing {
    void run() throws IOException;
  }

  private static void written(Writing writing) {
    try {
      writing.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void writeFill(Fill f) throws IOException {
    if (f.rings().isEmpty()) {
      return;
    }
    out.setNonStrokingColor(colour(f.colour()));
    for (Ring r : f.rings()) {
      ring(r);
    }
    out.fillEvenOdd();
  }

  private void writeStroke(Stroke s) throws IOException {
    if (s.rings().isEmpty() && s.lines().isEmpty()) {
      return;
    }
    pen(s.pen());
    for (Ring r : s.rings()) {
      ring(r);
    }
    for (Line l : s.lines()) {
      chain(l.points());
    }
    out.stroke();
  }

  private void writeCurves(CurveStroke s) throws IOException {
    if (s.rings().isEmpty()) {
      return;
    }
    pen(s.pen());
    for (CurvedRing ring : s.rings()) {
      out.moveTo(x(ring.start()), y(ring.start()));
      for (CurvedRing.Piece piece : ring.pieces()) {
        if (piece instanceof CurvedRing.Curve c) {
          out.curveTo(
              x(c.first()), y(c.first()), x(c.second()), y(c.second()), x(c.end()), y(c.end()));
        } else {
          out.lineTo(x(piece.end()), y(piece.end()));
        }
      }
      out.closePath();
    }
    out.stroke();
  }

  private void pen(Pen pen) throws IOException {
    out.setStrokingColor(colour(pen.colour()));
    out.setLineWidth((float) pen.width());
    out.setLineCapStyle(pen.round() ? ROUND : BUTT);
    out.setLineJoinStyle(pen.round() ? ROUND : 0);
    float[] dash = new float[pen.dash().size()];
    for (int i = 0; i < dash.length; i++) {
      dash[i] = pen.dash().get(i).floatValue();
    }
    out.setLineDashPattern(dash, 0);
  }

  private void ring(Ring ring) throws IOException {
    chain(ring.points());
    out.closePath();
  }

  private void chain(List<Vec> points) throws IOException {
    PaperChain.lead(
        points,
        (p, begins) -> {
          if (begins) {
            out.moveTo(x(p), y(p));
          } else {
            out.lineTo(x(p), y(p));
          }
        });
  }

  private void writeText(Text t) throws IOException {
    String words = TextMeasure.showable(t.words());
    double back = TextMeasure.width(words, t.style()) * t.anchor().shareBefore();
    double a = Math.toRadians(t.turn());
    float cos = (float) Math.cos(a);
    float sin = (float) Math.sin(a);
    out.beginText();
    out.setFont(fonts.of(FontFace.of(t.style())), (float) t.style().size());
    out.setNonStrokingColor(colour(t.style().colour()));
    out.setTextMatrix(
        new Matrix(
            cos, sin, -sin, cos, x(t.at()) - (float) back * cos, y(t.at()) - (float) back * sin));
    out.showText(Ligatures.joined(words));
    out.endText();
  }

  @Override
  public void raster(Raster r) {
    written(
        () -> {
          Bounds b = r.at();
          float left = x(new Vec(b.minX(), b.minY()));
          float foot = y(new Vec(b.minX(), b.maxY()));
          out.drawImage(images.of(r.picture()), left, foot, (float) b.width(), (float) b.height());
        });
  }

  private float x(Vec p) {
    return (float) (p.x() - paper.minX());
  }

  private float y(Vec p) {
    return (float) (paper.maxY() - p.y());
  }

  private static Color colour(Colour c) {
    return new Color(c.red(), c.green(), c.blue());
  }
}
