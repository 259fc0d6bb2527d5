package slabwright.pdfin.page;

import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * Opens one page of a PDF for whoever reads it: bounded in what it unpacks, and refused where the
 * file contradicts itself.
 */
public final class PdfPageReader {
  private PdfPageReader() {}

  /** What is made of a page. */
  public interface Use<T> {
    /**
     * Reads the page.
     *
     * @throws IOException when the file breaks on the way
     */
    T read(PDDocument document, PDPage page) throws IOException;
  }

  /**
   * Reads page {@code page}, from 1.
   *
   * @param broken what to say of a file that can't be read
   */
  public static <T> Result<T> read(byte[] file, int page, Message broken, Use<Result<T>> use) {
    try {
      PdfInflation.checkRaw(file);
      return opened(file, page, use);
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
        | NegativeArraySizeException
        | ArithmeticException
        | StackOverflowError contradiction) {
      // the PDF library lets these through where a file contradicts itself
      return Result.refused(broken);
    }
  }

  private static <T> Result<T> opened(byte[] file, int page, Use<Result<T>> use)
      throws IOException {
    try (PDDocument document = Loader.loadPDF(file)) {
      int pages = document.getNumberOfPages();
      if (page < 1 || page > pages) {
        return Result.refused(Message.of("pdfin.no-such-page", page, pages));
      }
      PDPage chosen = document.getPage(page - 1);
      PdfInflation.checkChains(chosen.getCOSObject());
      PdfInflation.checkContents(chosen.getContentStreams());
      return use.read(document, chosen);
    }
  }
}
