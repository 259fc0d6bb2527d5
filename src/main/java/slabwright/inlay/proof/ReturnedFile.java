package slabwright.inlay.proof;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import slabwright.inlay.artwork.ArtworkRefusal;
import slabwright.inlay.artwork.DrawnOutlines;
import slabwright.inlay.artwork.OutlinesResult;
import slabwright.inlay.artwork.batik.SvgOutlinesReader;
import slabwright.pdfin.outline.PdfOutlines;
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * The file the sign shop sent back.
 *
 * @param pages how many pages it has; 1 for an SVG
 */
public record ReturnedFile(ShopDrawing drawing, int pages) {
  /**
   * Reads an SVG, or one page of a PDF by the file's ending.
   *
   * @param page of a PDF, from 1
   * @throws IOException when the file breaks while it is read
   */
  public static Result<ReturnedFile> read(Path file, int page) throws IOException {
    if (!Files.isRegularFile(file)) {
      return Result.refused(Message.of("inlay.returned-file.not-there", file.toString()));
    }
    byte[] bytes = Files.readAllBytes(file);
    String name = String.valueOf(file.getFileName());
    return name.toLowerCase(Locale.ROOT).endsWith(".pdf")
        ? PdfOutlines.read(bytes, page).map(p -> new ReturnedFile(ShopDrawing.of(p), p.pages()))
        : svg(bytes, name);
  }

  private static Result<ReturnedFile> svg(byte[] bytes, String name) throws IOException {
    OutlinesResult read = SvgOutlinesReader.read(new ByteArrayInputStream(bytes), name);
    return read instanceof ArtworkRefusal refusal
        ? Result.refused(Message.of("inlay.returned-file.graphic-refused", refusal.message()))
        : Result.ok(new ReturnedFile(ShopDrawing.of((DrawnOutlines) read), 1));
  }
}
