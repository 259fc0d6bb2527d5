package slabwright.drawing.paint;

import java.io.IOException;
import java.io.OutputStream;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.function.IntConsumer;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.apache.pdfbox.util.Matrix;
import slabwright.drawing.Drawing;
import slabwright.shape.Bounds;

/**
 * A PDF of drawings in true size, one page each: vector lines, and real words in embedded subsets
 * of the bundled font. The same drawings, title and moment give the same bytes.
 *
 * @param made the moment written into the file as its making
 * @param layers what lies over each page in layers that a reader can tell apart and switch off;
 *     empty when no page has any
 */
public record PdfFile(
    String title, Instant made, List<Drawing> pages, List<List<PdfLayer>> layers) {
  static final float POINTS_PER_MM = 72 / 25.4f;
  private static final int MOST_UNITS = 14_400;
  private static final COSName SPAN = COSName.getPDFName(StandardStructureTypes.SPAN);

  /**
   * A named layer (optional content group, ISO 32000-1, 8.11) over a page.
   *
   * @param drawing in the page's frame
   * @param words that its strokes draw, for readers that can't read strokes (ISO 32000-1, 14.9.4);
   *     empty when they draw none
   */
  public record PdfLayer(String name, Drawing drawing, String words) {
    /** A layer that draws no words. */
    public PdfLayer(String name, Drawing drawing) {
      this(name, drawing, "");
    }
  }

  public PdfFile {
    pages = List.copyOf(pages);
    layers = List.copyOf(layers);
  }

  /** A PDF without layers. */
  public PdfFile(String title, Instant made, List<Drawing> pages) {
    this(title, made, pages, List.of());
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
      PdfLayers groups = new PdfLayers(document);
      PdfImages images = new PdfImages(document);
      for (int i = 0; i < pages.size(); i++) {
        before.accept(i);
        add(document, fonts, groups, images, i);
      }
      document.save(out);
    }
  }

  private void add(
      PDDocument document, PdfFonts fonts, PdfLayers groups, PdfImages images, int number)
      throws IOException {
    Drawing drawing = pages.get(number);
    Bounds b = drawing.bounds();
    int unit = userUnit(Math.max(b.width(), b.height()));
    double perMm = 72 / 25.4 / unit;
    PDPage page =
        new PDPage(new PDRectangle((float) (b.width() * perMm), (float) (b.height() * perMm)));
    page.setUserUnit(unit);
    document.addPage(page);
    try (PDPageContentStream content = new PDPageContentStream(document, page)) {
      content.transform(Matrix.getScaleInstance(1f / unit, 1f / unit));
      PdfPainter painter = new PdfPainter(content, fonts, images, b);
      painter.paint(drawing.plain());
      for (PdfLayer layer : layers.isEmpty() ? List.<PdfLayer>of() : layers.get(number)) {
        content.beginMarkedContent(COSName.OC, groups.of(layer.name()));
        if (!layer.words().isEmpty()) {
          COSDictionary said = new COSDictionary();
          said.setString(COSName.ACTUAL_TEXT, layer.words());
          content.beginMarkedContent(SPAN, PDPropertyList.create(said));
        }
        painter.more(layer.drawing().plain());
        if (!layer.words().isEmpty()) {
          content.endMarkedContent();
        }
        content.endMarkedContent();
      }
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
