package slabwright.inlay.cutfile;

import java.time.Instant;
import java.util.List;
import slabwright.drawing.Colour;
import slabwright.drawing.Drawing;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.paint.PdfFile;

/**
 * Cut files as pages of one PDF in true size, in the layers of {@link CutLayer}: closed hairline
 * kiss-cuts in ink, through-cuts in blue, the pen in amber, and no words.
 */
final class PdfCutWriter {
  private static final double HAIRLINE = 0.05;

  private PdfCutWriter() {}

  static PdfFile pdf(String title, Instant made, List<CutFile> files) {
    return new PdfFile(
        title,
        made,
        files.stream().map(f -> Drawing.paper(f.width(), f.height(), List.of())).toList(),
        files.stream().map(PdfCutWriter::layers).toList());
  }

  private static List<PdfFile.PdfLayer> layers(CutFile file) {
    return List.of(
        layer(file, CutLayer.KISS_CUT, Stroke.rings(pen(Palette.INK), file.rings())),
        layer(file, CutLayer.THROUGH_CUT, Stroke.lines(pen(Palette.BLUE), file.trim())),
        layer(file, CutLayer.PEN, Stroke.lines(pen(Palette.AMBER), file.witness())));
  }

  private static PdfFile.PdfLayer layer(CutFile file, CutLayer layer, Stroke stroke) {
    return new PdfFile.PdfLayer(
        layer.id(), Drawing.paper(file.width(), file.height(), List.of(stroke)));
  }

  private static Pen pen(Colour colour) {
    return Pen.of(HAIRLINE, colour);
  }
}
