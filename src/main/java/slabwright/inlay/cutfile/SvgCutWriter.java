package slabwright.inlay.cutfile;

import java.util.List;
import java.util.function.Function;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.shape.curve.CurvedRing;
import slabwright.units.LengthFormat;
import slabwright.units.Message;

/**
 * Writes a cut file as SVG: width, height and viewBox in true millimetres. Its groups are {@link
 * CutLayer}s: the kiss-cut one holds closed lines and nothing else. The release stands in title and
 * description.
 */
final class SvgCutWriter {
  private static final double HAIRLINE = 0.05;

  private final CutFile file;
  private final Function<Message, String> words;
  private final StringBuilder out = new StringBuilder();

  SvgCutWriter(CutFile file, Function<Message, String> words) {
    this.file = file;
    this.words = words;
  }

  String write() {
    String w = LengthFormat.plain(file.width());
    String h = LengthFormat.plain(file.height());
    out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"").append(w);
    out.append("mm\" height=\"").append(h).append("mm\" viewBox=\"0 0 ").append(w).append(' ');
    out.append(h).append("\" fill=\"none\" stroke-width=\"").append(HAIRLINE).append("\">\n");
    out.append("<title>").append(escaped(words.apply(file.title()))).append("</title>\n<desc>");
    out.append(escaped(words.apply(Message.of("inlay.svg-cut-writer.description"))))
        .append("</desc>\n");
    open(CutLayer.PEN, "#a06000");
    file.label()
        .ifPresent(
            label -> {
              out.append("<g><title>").append(escaped(label.text(words))).append("</title>\n");
              label.strokes(words).forEach(this::line);
              out.append("</g>\n");
            });
    file.drawn().forEach(this::line);
    out.append("</g>\n");
    open(CutLayer.KISS_CUT, "#000000");
    file.outlines().forEach(this::outline);
    out.append("</g>\n");
    lines(CutLayer.WEED_CUT, "#806080", file.weedCuts());
    lines(CutLayer.THROUGH_CUT, "#0060a0", file.trim());
    return out.append("</svg>\n").toString();
  }

  private void open(CutLayer layer, String colour) {
    out.append("<g id=\"").append(layer.id()).append("\" stroke=\"").append(colour).append("\">\n");
  }

  private void outline(CurvedRing ring) {
    out.append("<path d=\"M");
    point(ring.start());
    int last = ring.pieces().size() - 1;
    for (int i = 0; i <= last; i++) {
      if (ring.pieces().get(i) instanceof CurvedRing.Curve c) {
        out.append('C');
        point(c.first());
        out.append(' ');
        point(c.second());
        out.append(' ');
        point(c.end());
      } else if (i < last) {
        out.append('L');
        point(ring.pieces().get(i).end());
      }
    }
    out.append("Z\"/>\n");
  }

  private void lines(CutLayer layer, String colour, List<Line> lines) {
    open(layer, colour);
    lines.forEach(this::line);
    out.append("</g>\n");
  }

  private void line(Line line) {
    out.append("<path d=\"");
    List<Vec> points = line.points();
    int last = points.size() - 1;
    boolean closes = last > 1 && points.get(0).equals(points.get(last));
    char command = 'M';
    for (Vec p : closes ? points.subList(0, last) : points) {
      out.append(command);
      point(p);
      command = 'L';
    }
    out.append(closes ? "Z\"/>\n" : "\"/>\n");
  }

  private void point(Vec p) {
    out.append(LengthFormat.plain(p.x())).append(' ').append(LengthFormat.plain(p.y()));
  }

  private static String escaped(String text) {
    String plain = text.replaceAll("\\p{Cntrl}", " ");
    return plain.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
