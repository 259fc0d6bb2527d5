package slabwright.pdfin.painted;

import java.awt.BasicStroke;
import org.apache.pdfbox.pdmodel.graphics.PDLineDashPattern;
import org.apache.pdfbox.pdmodel.graphics.state.PDGraphicsState;

/** The pen of a graphics state, in its user space. */
final class PdfPens {
  private PdfPens() {}

  static BasicStroke of(PDGraphicsState gs) {
    int cap = gs.getLineCap() >= 0 && gs.getLineCap() <= 2 ? gs.getLineCap() : 0;
    int join = gs.getLineJoin() >= 0 && gs.getLineJoin() <= 2 ? gs.getLineJoin() : 0;
    float miter = Math.max(1, gs.getMiterLimit());
    PDLineDashPattern dashes = gs.getLineDashPattern();
    float[] lengths = dashes == null ? new float[0] : dashes.getDashArray();
    double cycle = 0;
    for (float length : lengths) {
      if (!(length >= 0)) {
        return new BasicStroke(gs.getLineWidth(), cap, join, miter);
      }
      cycle += length;
    }
    if (!(cycle > 0)) {
      return new BasicStroke(gs.getLineWidth(), cap, join, miter);
    }
    // a negative phase starts as much later; an odd list takes two rounds to repeat
    double round = lengths.length % 2 == 0 ? cycle : 2 * cycle;
    double phase = ((dashes.getPhase() % round) + round) % round;
    return new BasicStroke(gs.getLineWidth(), cap, join, miter, lengths, (float) phase);
  }
}
