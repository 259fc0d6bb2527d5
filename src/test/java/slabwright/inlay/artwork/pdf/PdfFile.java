package slabwright.inlay.artwork.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;

/** Makes PDF files of one page out of drawing operators. */
final class PdfFile {
  /** With this before them, operators work in pixels with y down, as an SVG of 400 by 400 does. */
  static final String AS_SVG = "0.75 0 0 -0.75 0 300 cm ";

  /** Adds what operators refer to. */
  interface Extras {
    void addTo(PDDocument document, PDPage page) throws IOException;
  }

  private PdfFile() {}

  static byte[] of(String operators) throws IOException {
    return of(operators, (document, page) -> {});
  }

  static byte[] of(String operators, Extras extras) throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(new PDRectangle(300, 300));
      page.setResources(new PDResources());
      document.addPage(page);
      extras.addTo(document, page);
      page.setContents(stream(document, operators));
      return saved(document);
    }
  }

  static PDStream stream(PDDocument document, String operators) throws IOException {
    PDStream contents = new PDStream(document);
    try (OutputStream out = contents.createOutputStream(COSName.FLATE_DECODE)) {
      out.write(operators.getBytes(StandardCharsets.US_ASCII));
    }
    return contents;
  }

  static byte[] saved(PDDocument document) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    document.save(out);
    return out.toByteArray();
  }
}
