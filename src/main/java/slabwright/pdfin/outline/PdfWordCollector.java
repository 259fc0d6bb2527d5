package slabwright.pdfin.outline;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Vec;

/** Glyphs that follow each other on one line are one text. */
final class PdfWordCollector {
  /**
   * A gap of this share of the type size is a space; a larger one than the second ends the text.
   */
  private static final double SPACE = 0.15;

  private static final double END = 0.8;

  private final List<PdfOutlines.PdfWords> done = new ArrayList<>();
  private final StringBuilder text = new StringBuilder();
  private Vec start = Vec.ZERO;
  private Vec end = Vec.ZERO;
  private double size;

  /**
   * Takes the next glyph.
   *
   * @param at its origin, mm
   * @param em along its baseline, as long as its type size, mm
   * @param advance as a share of the type size
   * @param unicode its characters; null when the file does not say
   */
  void glyph(Vec at, Vec em, double advance, String unicode) {
    double gap = at.minus(end).dot(em.unit());
    double off = Math.abs(at.minus(end).cross(em.unit()));
    boolean follows =
        text.length() > 0 && off < SPACE * size && gap > -SPACE * size && gap < END * size;
    if (!follows) {
      finish();
      start = at;
    } else if (gap > SPACE * size) {
      text.append(' ');
    }
    text.append(unicode == null ? "\ufffd" : unicode);
    size = em.length();
    end = at.plus(em.times(advance));
  }

  private void finish() {
    if (!text.toString().isBlank()) {
      done.add(new PdfOutlines.PdfWords(text.toString().strip(), start.towards(end, 0.5)));
    }
    text.setLength(0);
  }

  List<PdfOutlines.PdfWords> words() {
    finish();
    return List.copyOf(done);
  }
}
