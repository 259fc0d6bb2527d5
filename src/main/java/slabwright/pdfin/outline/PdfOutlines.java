package slabwright.pdfin.outline;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import slabwright.pdfin.page.PdfPageReader;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * The outlines of one page in paint order, at the size the page states (72 points to the inch,
 * times its user unit): fills with their colour, and closed lines as lines. Pictures, shadings and
 * text kept as text are left out, and so is what clips hide; a line that a clip cuts no longer
 * closes. Neither the page's own rotation nor its edge nor soft masks are applied.
 *
 * @param lines lines that do not close, in the outlines' frame
 * @param pages how many pages the file has
 * @param words texts kept as text, each run on one line, in the outlines' frame
 * @param doubt mm that flattening a curve may put an edge elsewhere
 * @param pictured the share of the page that its largest picture covers; pictures have no outlines
 */
public record PdfOutlines(
    List<PdfOutline> outlines,
    List<PdfLine> lines,
    List<PdfWords> words,
    int pages,
    double pictured,
    double doubt) {
  /** A line that does not close, and the name of its layer. */
  public record PdfLine(Line line, String layer) {}

  /** A text and its middle. */
  public record PdfWords(String text, Vec at) {}

  public PdfOutlines {
    words = List.copyOf(words);
    outlines = List.copyOf(outlines);
    lines = List.copyOf(lines);
  }

  /** Reads page {@code page}, from 1. */
  public static Result<PdfOutlines> read(byte[] file, int page) {
    return PdfPageReader.read(
        file, page, Message.of("pdfin.outlines.unreadable-pdf"), PdfOutlines::drawn);
  }

  private static Result<PdfOutlines> drawn(PDDocument document, PDPage page) throws IOException {
    PdfPathCollector walk = new PdfPathCollector(page);
    walk.processPage(page);
    return Result.ok(
        new PdfOutlines(
            walk.outlines(),
            walk.lines(),
            walk.words(),
            document.getNumberOfPages(),
            walk.pictured(),
            walk.tolerance()));
  }
}
