package slabwright.inlay.proof;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.artwork.ArtworkRefusal;
import slabwright.inlay.artwork.DrawnOutlines;
import slabwright.inlay.artwork.GraphicFormat;
import slabwright.inlay.artwork.OutlinesResult;
import slabwright.inlay.artwork.PaintedPage;
import slabwright.inlay.artwork.batik.SvgOutlinesReader;
import slabwright.inlay.artwork.pdf.PdfArtworkReader;
import slabwright.inlay.artwork.picture.PictureOutlinesReader;
import slabwright.inlay.cutfile.CutLayer;
import slabwright.pdfin.outline.PdfOutlines;
import slabwright.pdfin.picture.PdfPicture;
import slabwright.pdfin.picture.Picture;
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * A file that the sign shop sent back: an SVG, every page of a PDF, or a picture.
 *
 * @param unpainted pages of which fills alone were read
 */
record ReturnedFile(List<ReturnedPage> pages, List<ProofNote.PaintUnread> unpainted) {
  private static final int MOST_PAGES = 60;

  /** A page whose largest picture covers less of it is a drawing with a logo. */
  private static final double SCAN = 0.2;

  public ReturnedFile {
    pages = List.copyOf(pages);
    unpainted = List.copyOf(unpainted);
  }

  /**
   * Reads a file by its first bytes, whatever it is called.
   *
   * @throws IOException when the file breaks while it is read
   */
  public static Result<ReturnedFile> read(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      return Result.refused(Message.of("inlay.returned-file.not-there", file.toString()));
    }
    byte[] bytes = Files.readAllBytes(file);
    String name = String.valueOf(file.getFileName());
    GraphicFormat format = GraphicFormat.of(bytes);
    Optional<Message> why = format.refusal();
    if (why.isPresent()) {
      return graphicRefused(Message.of("inlay.artwork.refused", name, why.get()));
    }
    return switch (format) {
      case PDF -> pdf(bytes, name);
      case PICTURE -> picture(bytes, name);
      default -> svg(bytes, name);
    };
  }

  /**
   * One page of it alone.
   *
   * @param page from 1
   */
  public Result<ReturnedFile> only(int page) {
    return page < 1 || page > pages.size()
        ? Result.refused(Message.of("inlay.returned-file.no-such-page", page, pages.size()))
        : Result.ok(
            new ReturnedFile(
                List.of(pages.get(page - 1)),
                unpainted.stream().filter(n -> n.page() == page).toList()));
  }

  private static Result<ReturnedFile> pdf(byte[] bytes, String name) {
    List<ReturnedPage> pages = new ArrayList<>();
    List<ProofNote.PaintUnread> unpainted = new ArrayList<>();
    int count = 1;
    for (int page = 1; page <= Math.min(count, MOST_PAGES); page++) {
      int number = page;
      Result<PdfOutlines> read = PdfOutlines.read(bytes, page);
      if (read instanceof Result.Refused<PdfOutlines> refused) {
        return Result.refused(refused.refusals());
      }
      PdfOutlines drawn = read.orThrow();
      count = drawn.pages();
      Optional<ShopDrawing> scan =
          drawn.pictured() >= SCAN ? scan(bytes, name, page, drawn) : Optional.empty();
      Result<ShopDrawing> seen =
          scan.<Result<ShopDrawing>>map(Result::ok)
              .orElseGet(() -> inColours(bytes, name, drawn, number, unpainted))
              .flatMap(d -> DrawingBudget.checked(d, name));
      if (seen instanceof Result.Refused<ShopDrawing> refused) {
        return graphicRefused(refused.message());
      }
      pages.add(ReturnedPage.of(name, page, seen.orThrow()));
    }
    return Result.ok(new ReturnedFile(pages, unpainted));
  }

  /** With what shows of each color, unless it is one of our own files, which say what they mean. */
  private static Result<ShopDrawing> inColours(
      byte[] bytes,
      String name,
      PdfOutlines drawn,
      int page,
      List<ProofNote.PaintUnread> unpainted) {
    ShopDrawing drawing = ShopDrawing.of(drawn);
    if (drawing.isOurs()) {
      return Result.ok(drawing);
    }
    return PdfArtworkReader.painted(bytes, name, page, drawn.doubt())
        .map(
            painted -> {
              unpainted.addAll(unpainted(name, page, painted));
              return drawing.painted(painted.areas());
            });
  }

  private static List<ProofNote.PaintUnread> unpainted(String name, int page, PaintedPage painted) {
    return painted.unread().stream()
        .map(why -> new ProofNote.PaintUnread(name, page, why))
        .toList();
  }

  /** A page that is mostly a picture, as it is seen; nothing when no drawing is seen in it. */
  private static Optional<ShopDrawing> scan(
      byte[] bytes, String name, int page, PdfOutlines drawn) {
    if (!(PdfPicture.read(bytes, page) instanceof Result.Ok<PdfPicture> seen)) {
      return Optional.empty();
    }
    Picture picture = seen.value().picture();
    double size = Math.max(picture.width(), picture.height()) * seen.value().mmPerPixel();
    return PictureOutlinesReader.ofSize(picture.png(), name, size) instanceof DrawnOutlines o
        ? Optional.of(ShopDrawing.of(o).worded(drawn))
        : Optional.empty();
  }

  private static Result<ReturnedFile> picture(byte[] bytes, String name) {
    OutlinesResult read = PictureOutlinesReader.unsized(bytes, name);
    return read instanceof ArtworkRefusal refusal
        ? graphicRefused(refusal.message())
        : one(name, ShopDrawing.of((DrawnOutlines) read), List.of());
  }

  private static Result<ReturnedFile> one(
      String name, ShopDrawing drawing, List<ProofNote.PaintUnread> unpainted) {
    return DrawingBudget.checked(drawing, name)
        .map(d -> new ReturnedFile(List.of(ReturnedPage.of(name, 1, d)), unpainted));
  }

  private static Result<ReturnedFile> graphicRefused(Message why) {
    return Result.refused(Message.of("inlay.returned-file.graphic-refused", why));
  }

  private static Result<ReturnedFile> svg(byte[] bytes, String name) throws IOException {
    OutlinesResult read =
        SvgOutlinesReader.read(new ByteArrayInputStream(bytes), name, CutLayer.ids());
    if (read instanceof ArtworkRefusal refusal) {
      return graphicRefused(refusal.message());
    }
    DrawnOutlines drawn = (DrawnOutlines) read;
    return one(
        name,
        ReturnedPage.labelled(ShopDrawing.of(drawn), drawn.title()),
        unpainted(name, 1, drawn.painted()));
  }
}
