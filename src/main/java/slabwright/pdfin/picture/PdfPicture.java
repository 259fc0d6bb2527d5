package slabwright.pdfin.picture;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import slabwright.pdfin.page.PdfPageReader;
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * One page of a PDF as a picture.
 *
 * @param pages how many pages the file has
 * @param mmPerPixel millimetres of paper a pixel; times the drawing's scale it is that of the floor
 */
public record PdfPicture(Picture picture, int pages, double mmPerPixel) {
  private static final double POINT_MM = 25.4 / 72;

  /** Fine enough for hairlines on paper. */
  private static final double USUAL_DPI = 200;

  /**
   * Renders a page of a file that is not too large.
   *
   * @throws java.io.UncheckedIOException when the file cannot be opened
   */
  public static Result<PdfPicture> read(Path file, int page) {
    return Picture.bytes(file).flatMap(b -> read(b, page));
  }

  /** Renders page {@code page}, from 1, at 200 dots an inch or what the longest side allows. */
  public static Result<PdfPicture> read(byte[] file, int page) {
    return PdfPageReader.read(
        file,
        page,
        Message.of("pdfin.picture.unreadable-pdf"),
        (document, chosen) -> rendered(document, chosen, page));
  }

  private static Result<PdfPicture> rendered(PDDocument document, PDPage chosen, int page)
      throws IOException {
    PDRectangle size = chosen.getCropBox();
    double longest = Math.max(size.getWidth(), size.getHeight());
    if (!(longest > 0)) {
      return Result.refused(Message.of("pdfin.picture.page-without-size", page));
    }
    double scale = Math.min(USUAL_DPI / 72, Picture.LONGEST_SIDE / longest);
    BufferedImage image =
        new PDFRenderer(document).renderImage(page - 1, (float) scale, ImageType.RGB);
    double mmPerPixel = POINT_MM / scale;
    return Result.ok(new PdfPicture(new Picture(image), document.getNumberOfPages(), mmPerPixel));
  }
}
