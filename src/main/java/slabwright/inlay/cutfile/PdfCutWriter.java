package slabwright.inlay.cutfile;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import slabwright.drawing.Colour;
import slabwright.drawing.CurveStroke;
import slabwright.drawing.Drawing;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.paint.PdfFile;
import slabwright.units.Message;

/**
 * Cut files as pages of one PDF in true size, in the layers of {@link CutLayer}: closed hairline
 * kiss-cuts in ink, through-cuts in blue, the pen in amber, and no words.
 */
final class PdfCutWriter {
  private static final double HAIRLINE = 0.05;

  private PdfCutWriter() {}

  static PdfFile pdf(
      String title, Instant made, List<CutFile> files, Function<Message, String> words) {
    return new PdfFile(
        title,
        made,
        files.stream().map(f -> Drawing.paper(f.width(), f.height(), List.of())).toList(),
        files.stream().map(f -> layers(f, words)).toList());
  }

  private static List<PdfFile.PdfLayer> layers(CutFile file, Function<Message, String> words) {
    Pen pen = pen(Palette.AMBER);
    List<PdfFile.PdfLayer> layers = new ArrayList<>();
    file.label()
        .ifPresent(
            label ->
                layers.add(
                    new PdfFile.PdfLayer(
                        CutLayer.PEN.id(),
                        page(file, Stroke.lines(pen, label.strokes(words))),
                        label.text(words))));
    layers.add(layer(file, CutLayer.PEN, Stroke.lines(pen, file.drawn())));
    layers.add(layer(file, CutLayer.KISS_CUT, new CurveStroke(file.outlines(), pen(Palette.INK))));
    layers.add(layer(file, CutLayer.WEED_CUT, Stroke.lines(pen(Palette.SOFT), file.weedCuts())));
    layers.add(layer(file, CutLayer.THROUGH_CUT, Stroke.lines(pen(Palette.BLUE), file.trim())));
    return layers;
  }

  private static PdfFile.PdfLayer layer(CutFile file, CutLayer layer, Ink ink) {
    return new PdfFile.PdfLayer(layer.id(), page(file, ink));
  }

  private static Drawing page(CutFile file, Ink ink) {
    return Drawing.paper(file.width(), file.height(), List.of(ink));
  }

  private static Pen pen(Colour colour) {
    return Pen.of(HAIRLINE, colour);
  }
}
