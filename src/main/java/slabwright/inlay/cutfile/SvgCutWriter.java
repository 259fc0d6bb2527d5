package slabwright.inlay.cutfile;

import java.util.List;
import java.util.function.Function;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
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
    open(CutLayer.KISS_CUT, "#000000");
    file.openings().parts().forEach(this::part);
    out.append("</g>\n");
    lines(CutLayer.THROUGH_CUT, "#0060a0", file.trim());
    lines(CutLayer.PEN, "#a06000", file.witness());
    return out.append("</svg>\n").toString();
  }

  private void open(CutLayer layer, String colour) {
    out.append("<g id=\"").append(layer.id()).append("\" stroke=\"").append(colour).append("\">\n");
  }

  private void part(Region part) {
    out.append("<path d=\"");
    for (Ring ring : part.rings()) {
      points(ring.points());
      out.append('Z');
    }
    out.append("\"/>\n");
  }

  private void lines(CutLayer layer, String colour, List<Line> lines) {
    open(layer, colour);
    for (Line line : lines) {
      out.append("<path d=\"");
      points(line.points());
      out.append("\"/>\n");
    }
    out.append("</g>\n");
  }

  private void points(List<Vec> points) {
    char command = 'M';
    for (Vec p : points) {
      out.append(command).append(LengthFormat.plain(p.x())).append(' ');
      out.append(LengthFormat.plain(p.y()));
      command = 'L';
    }
  }

  private static String escaped(String text) {
    String plain = text.replaceAll("\\p{Cntrl}", " ");
    return plain.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
