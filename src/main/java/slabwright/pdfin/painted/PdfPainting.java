package slabwright.pdfin.painted;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import slabwright.units.Message;
import slabwright.units.Result;

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
 * @param pages how many pages the file has
 * @param names of colours that the file gives a name, by {@code #rrggbb}
 */
public record PdfPainting(
    List<PdfPaintedShape> shapes,
    double width,
    double height,
    int pages,
    Map<String, String> names,
    List<PdfNote> notes) {
  private static final double PX_PER_POINT = 96 / 72.0;

  public PdfPainting {
    shapes = List.copyOf(shapes);
    names = Map.copyOf(names);
    notes = List.copyOf(notes);
  }

  /** Reads page {@code page}, from 1. */
  public static Result<PdfPainting> read(byte[] file, int page) {
    try {
      PdfInflation.checkRaw(file);
      return opened(file, page);
    } catch (PdfBudgetException tooMuch) {
      return Result.refused(tooMuch.why());
    } catch (InvalidPasswordException locked) {
      return Result.refused(Message.of("pdfin.locked"));
    } catch (IOException
        | IllegalArgumentException
        | IllegalStateException
        | ClassCastException
        | IndexOutOfBoundsException
        | NullPointerException
        | StackOverflowError broken) {
      // the PDF library lets these through where a file contradicts itself
      return Result.refused(Message.of("pdfin.painting.unreadable"));
    }
  }

  private static Result<PdfPainting> opened(byte[] file, int page) throws IOException {
    try (PDDocument document = Loader.loadPDF(file)) {
      int pages = document.getNumberOfPages();
      if (page < 1 || page > pages) {
        return Result.refused(Message.of("pdfin.no-such-page", page, pages));
      }
      PDPage chosen = document.getPage(page - 1);
      PdfInflation.checkChains(chosen.getCOSObject());
      PdfPaintCollector walk =
          new PdfPaintCollector(chosen, new OptionalContent(document.getDocumentCatalog()));
      walk.processPage(chosen);
      boolean turned = chosen.getRotation() % 180 != 0;
      double k = PX_PER_POINT * chosen.getUserUnit();
      double wide = k * chosen.getCropBox().getWidth();
      double high = k * chosen.getCropBox().getHeight();
      return Result.ok(
          new PdfPainting(
              walk.shapes(),
              turned ? high : wide,
              turned ? wide : high,
              pages,
              walk.names(),
              walk.notes()));
    }
  }
}
