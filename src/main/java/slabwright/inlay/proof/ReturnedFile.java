package slabwright.inlay.proof;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slabwright.inlay.artwork.ArtworkRefusal;
import slabwright.inlay.artwork.DrawnOutlines;
import slabwright.inlay.artwork.OutlinesResult;
import slabwright.inlay.artwork.batik.SvgOutlinesReader;
import slabwright.inlay.cutfile.CutLayer;
import slabwright.pdfin.outline.PdfOutlines;
import slabwright.units.Message;
import slabwright.units.Result;

/** A file that the sign shop sent back: an SVG, or every page of a PDF. */
public record ReturnedFile(List<ReturnedPage> pages) {
  private static final int MOST_PAGES = 60;

  public ReturnedFile {
    pages = List.copyOf(pages);
  }

  /**
   * Reads an SVG or a PDF by the file's ending.
   *
   * @throws IOException when the file breaks while it is read
   */
  public static Result<ReturnedFile> read(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      return Result.refused(Message.of("inlay.returned-file.not-there", file.toString()));
    }
    byte[] bytes = Files.readAllBytes(file);
    String name = String.valueOf(file.getFileName());
    return name.toLowerCase(Locale.ROOT).endsWith(".pdf") ? pdf(bytes, name) : svg(bytes, name);
  }

  /**
   * One page of it alone.
   *
   * @param page from 1
   */
  public Result<ReturnedFile> only(int page) {
    return page < 1 || page > pages.size()
        ? Result.refused(Message.of("inlay.returned-file.no-such-page", page, pages.size()))
        : Result.ok(new ReturnedFile(List.of(pages.get(page - 1))));
  }

  private static Result<ReturnedFile> pdf(byte[] bytes, String name) {
    List<ReturnedPage> pages = new ArrayList<>();
    int count = 1;
    for (int page = 1; page <= Math.min(count, MOST_PAGES); page++) {
      Result<PdfOutlines> read = PdfOutlines.read(bytes, page);
      if (read instanceof Result.Refused<PdfOutlines> refused) {
        return Result.refused(refused.refusals());
      }
      PdfOutlines drawn = read.orThrow();
      count = drawn.pages();
      pages.add(ReturnedPage.of(name, page, ShopDrawing.of(drawn)));
    }
    return Result.ok(new ReturnedFile(pages));
  }

  private static Result<ReturnedFile> svg(byte[] bytes, String name) throws IOException {
    OutlinesResult read =
        SvgOutlinesReader.read(new ByteArrayInputStream(bytes), name, CutLayer.ids());
    if (read instanceof ArtworkRefusal refusal) {
      return Result.refused(Message.of("inlay.returned-file.graphic-refused", refusal.message()));
    }
    DrawnOutlines drawn = (DrawnOutlines) read;
    ShopDrawing drawing = ReturnedPage.labelled(ShopDrawing.of(drawn), drawn.title());
    return Result.ok(new ReturnedFile(List.of(ReturnedPage.of(name, 1, drawing))));
  }
}
