package slabwright.drawing.paint;

import java.io.IOException;
import java.io.OutputStream;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.function.IntConsumer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;
import slabwright.drawing.Drawing;
import slabwright.shape.Bounds;

/**
 * A PDF of drawings in true size, one page each: vector lines, and real words in embedded subsets
 * of the bundled font. The same drawings, title and moment give the same bytes.
 *
 * @param made the moment written into the file as its making
 */
public record PdfFile(String title, Instant made, List<Drawing> pages) {
  static final float POINTS_PER_MM = 72 / 25.4f;
  private static final int MOST_UNITS = 14_400;

  public PdfFile {
    pages = List.copyOf(pages);
  }

  /** Writes the file; the stream stays open. */
  public void write(OutputStream out) throws IOException {
    write(out, n -> {});
  }

  /**
   * Writes the file; the stream stays open.
   *
   * @param before told before each page how many are done; may throw to give up
   */
  public void write(OutputStream out, IntConsumer before) throws IOException {
    try (PDDocument document = new PDDocument()) {
      document.setDocumentInformation(information());
      document.setDocumentId(made.toEpochMilli() ^ title.hashCode());
      PdfFonts fonts = new PdfFonts(document);
      for (int i = 0; i < pages.size(); i++) {
        before.accept(i);
        add(document, fonts, pages.get(i));
      }
      document.save(out);
    }
  }

  private static void add(PDDocument document, PdfFonts fonts, Drawing drawing) throws IOException {
    Bounds b = drawing.bounds();
    int unit = userUnit(Math.max(b.width(), b.height()));
    double perMm = 72 / 25.4 / unit;
    PDPage page =
        new PDPage(new PDRectangle((float) (b.width() * perMm), (float) (b.height() * perMm)));
    page.setUserUnit(unit);
    document.addPage(page);
    try (PDPageContentStream content = new PDPageContentStream(document, page)) {
      content.transform(Matrix.getScaleInstance(1f / unit, 1f / unit));
      new PdfPainter(content, fonts, b).paint(drawing.plain());
    }
  }

  /** Pages over 200 in (ISO 32000-1, Annex C: 14 400 units) need a larger unit. */
  private static int userUnit(double longestMm) {
    return (int) Math.max(1, Math.ceil(longestMm * POINTS_PER_MM / MOST_UNITS));
  }

  private PDDocumentInformation information() {
    PDDocumentInformation info = new PDDocumentInformation();
    info.setTitle(title);
    info.setCreator("Slabwright");
    info.setProducer("Slabwright");
    GregorianCalendar when = GregorianCalendar.from(made.atZone(ZoneOffset.UTC));
    info.setCreationDate(when);
    info.setModificationDate(when);
    return info;
  }
}
