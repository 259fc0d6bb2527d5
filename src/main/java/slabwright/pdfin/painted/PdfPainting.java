package slabwright.pdfin.painted;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import slabwright.pdfin.page.PdfPageReader;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.units.SortedCopy;

/**
 * All that one page paints, in paint order: fills, strokes, letters as outlines, copies (form
 * XObjects), cut by clips and masks. Frame: pixels of 1/96 inch from the top-left of the page as it
 * is shown, x right, y down.
 *
 * <p>Known limits: meshes are left out, fades and patterns are one colour, each with a note. How
 * much a file may ask for is bounded, so that a small file can't fill the memory.
 *
 * @param width of the page, px
 * @param height as the width
 * @param quarters clockwise turns of a right angle by which the page is shown turned, 0 to 3
 * @param pages how many pages the file has
 * @param names of colours that the file gives a name, by {@code #rrggbb}
 */
public record PdfPainting(
    List<PdfPaintedShape> shapes,
    double width,
    double height,
    int quarters,
    int pages,
    Map<String, String> names,
    List<PdfNote> notes) {
  private static final double PX_PER_POINT = 96 / 72.0;

  public PdfPainting {
    shapes = List.copyOf(shapes);
    names = SortedCopy.of(names);
    notes = List.copyOf(notes);
  }

  /** Reads page {@code page}, from 1. */
  public static Result<PdfPainting> read(byte[] file, int page) {
    return PdfPageReader.read(
        file, page, Message.of("pdfin.painting.unreadable"), PdfPainting::painted);
  }

  private static Result<PdfPainting> painted(PDDocument document, PDPage chosen)
      throws IOException {
    PdfPaintCollector walk =
        new PdfPaintCollector(chosen, new OptionalContent(document.getDocumentCatalog()));
    walk.processPage(chosen);
    int quarters = chosen.getRotation() / 90;
    boolean turned = quarters % 2 != 0;
    double k = PX_PER_POINT * chosen.getUserUnit();
    double wide = k * chosen.getCropBox().getWidth();
    double high = k * chosen.getCropBox().getHeight();
    return Result.ok(
        new PdfPainting(
            walk.shapes(),
            turned ? high : wide,
            turned ? wide : high,
            quarters,
            document.getNumberOfPages(),
            walk.names(),
            walk.notes()));
  }
}
