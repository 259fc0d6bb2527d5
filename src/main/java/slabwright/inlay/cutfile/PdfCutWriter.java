package slabwright.inlay.cutfile;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Drawing;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.paint.PdfFile;

/**
 * Cut files as pages of one PDF in true size: closed hairline cut lines in ink, trim in blue,
 * witness marks in amber, and no words.
 */
final class PdfCutWriter {
  private static final double HAIRLINE = 0.05;

  private PdfCutWriter() {}

  static PdfFile pdf(String title, Instant made, List<CutFile> files) {
    return new PdfFile(title, made, files.stream().map(PdfCutWriter::page).toList());
  }

  private static Drawing page(CutFile file) {
    List<Ink> inks = new ArrayList<>();
    inks.add(Stroke.rings(Pen.of(HAIRLINE, Palette.INK), file.rings()));
    inks.add(Stroke.lines(Pen.of(HAIRLINE, Palette.BLUE), file.trim()));
    inks.add(Stroke.lines(Pen.of(HAIRLINE, Palette.AMBER), file.witness()));
    return Drawing.paper(file.width(), file.height(), inks);
  }
}
