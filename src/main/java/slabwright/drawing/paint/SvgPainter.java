package slabwright.drawing.paint;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import slabwright.drawing.Drawing;
import slabwright.drawing.Fill;
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

/**
 * Writes a drawing as one SVG in true millimetres: lines as lines, words as words. The characters
 * used travel along as an embedded subset of the font. The same drawing gives the same bytes.
 */
public final class SvgPainter implements Painter {
  private final StringBuilder out = new StringBuilder();

  private SvgPainter() {}

  /** The whole SVG document for a drawing placed on paper. */
  public static String write(Drawing drawing, String title) {
    try (SvgFonts fonts = new SvgFonts()) {
      return write(drawing, title, fonts);
    } catch (IOException e) {
      throw new UncheckedIOException("the bundled font cannot be closed", e);
    }
  }

  /**
   * The same as one of several documents.
   *
   * @param fonts shared by them
   */
  public static String write(Drawing drawing, String title, SvgFonts fonts) {
    SvgPainter p = new SvgPainter();
    List<PrimitiveInk> parts = drawing.plain();
    p.head(drawing.bounds(), title);
    p.out.append(fonts.style(parts));
    parts.forEach(part -> part.paintOn(p));
    return p.out.append("</svg>\n").toString();
  }

  private void head(Bounds b, String title) {
    out.append(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\"");
    out.append(" width=\"").append(number(b.width())).append("mm\" height=\"");
    out.append(number(b.height())).append("mm\" viewBox=\"").append(number(b.minX())).append(' ');
    out.append(number(b.minY())).append(' ').append(number(b.width())).append(' ');
    out.append(number(b.height())).append("\">\n<title>").append(escaped(title));
    out.append("</title>\n");
  }

  @Override
  public void fill(Fill f) {
    if (!f.rings().isEmpty()) {
      out.append("<path fill=\"").append(f.colour().css()).append("\" fill-rule=\"evenodd\" d=\"");
      f.rings().forEach(this::ring);
      out.append("\"/>\n");
    }
  }

  @Override
  public void stroke(Stroke s) {
    if (s.rings().isEmpty() && s.lines().isEmpty()) {
      return;
    }
    Pen pen = s.pen();
    out.append("<path fill=\"none\" stroke=\"").append(pen.colour().css());
    out.append("\" stroke-width=\"").append(number(pen.width())).append('"');
    if (pen.round()) {
      out.append(" stroke-linecap=\"round\" stroke-linejoin=\"round\"");
    }
    if (!pen.dash().isEmpty()) {
      out.append(" stroke-dasharray=\"");
      pen.dash().forEach(d -> out.append(number(d)).append(' '));
      out.append('"');
    }
    out.append(" d=\"");
    s.rings().forEach(this::ring);
    s.lines().forEach(this::line);
    out.append("\"/>\n");
  }

  private void ring(Ring ring) {
    chain(ring.points());
    out.append('Z');
  }

  private void line(Line line) {
    chain(line.points());
  }

  private void chain(List<Vec> points) {
    for (int i = 0; i < points.size(); i++) {
      out.append(i == 0 ? 'M' : 'L').append(number(points.get(i).x())).append(' ');
      out.append(number(points.get(i).y()));
    }
  }

  @Override
  public void text(Text t) {
    String words = TextMeasure.showable(t.words());
    if (words.isBlank()) {
      return;
    }
    String x = number(t.at().x());
    String y = number(t.at().y());
    out.append("<text x=\"").append(x).append("\" y=\"").append(y);
    out.append("\" font-family=\"").append(SvgFonts.FAMILIES).append("\" font-size=\"");
    out.append(number(t.style().size())).append('"');
    if (t.style().bold()) {
      out.append(" font-weight=\"bold\"");
    }
    String anchor = anchor(t.anchor());
    out.append(" text-anchor=\"").append(anchor).append("\" textLength=\"");
    out.append(number(TextMeasure.width(words, t.style()))).append('"');
    if (t.turn() != 0) {
      out.append(" transform=\"rotate(").append(number(-t.turn())).append(' ').append(x);
      out.append(' ').append(y).append(")\"");
    }
    out.append(" fill=\"").append(t.style().colour().css()).append("\" xml:space=\"preserve\">");
    out.append(escaped(words)).append("</text>\n");
  }

  @Override
  public void raster(Raster r) {
    Bounds b = r.at();
    out.append("<image x=\"").append(number(b.minX())).append("\" y=\"").append(number(b.minY()));
    out.append("\" width=\"").append(number(b.width())).append("\" height=\"");
    out.append(number(b.height())).append("\" preserveAspectRatio=\"none\" href=\"");
    out.append(r.picture().dataAddress()).append("\"/>\n");
  }

  private static String anchor(Text.Anchor anchor) {
    return switch (anchor) {
      case START -> "start";
      case MIDDLE -> "middle";
      case END -> "end";
    };
  }

  /** At most three decimals (a thousandth of a millimetre), a point in every country. */
  static String number(double v) {
    long thousandths = Math.round(v * 1000);
    String sign = thousandths < 0 ? "-" : "";
    long whole = Math.abs(thousandths) / 1000;
    long rest = Math.abs(thousandths) % 1000;
    if (rest == 0) {
      return sign + whole;
    }
    String digits = Long.toString(1000 + rest).substring(1);
    int end = digits.endsWith("00") ? 1 : digits.endsWith("0") ? 2 : 3;
    return sign + whole + "." + digits.substring(0, end);
  }

  static String escaped(String words) {
    return words
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
