package slabwright.inlay.artwork.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.zip.DeflaterOutputStream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ArtworkRefusal;
import slabwright.inlay.artwork.ArtworkResult;
import slabwright.words.Words;

/** Small files that ask for more than a computer has; each ends in a sentence. */
// 5 s on an idle machine; builds share one
@Timeout(40)
class PdfBombsTest {
  private static final COSName FORM = COSName.getPDFName("F");

  @Test
  void a_page_that_unpacks_to_gigabytes() throws IOException {
    byte[] zeros = packed(400 << 20);
    byte[] pdf = withContents(zeros, COSName.FLATE_DECODE);
    assertThat(pdf.length).isLessThan(1 << 20);
    assertThat(refusal(pdf)).contains("Unpacked").contains("128 MB");
  }

  @Test
  void a_page_that_is_packed_twice() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (OutputStream deflate = new DeflaterOutputStream(out)) {
      deflate.write(packed(400 << 20));
    }
    COSArray twice = new COSArray();
    twice.add(COSName.FLATE_DECODE);
    twice.add(COSName.FLATE_DECODE);
    assertThat(refusal(withContents(out.toByteArray(), twice))).contains("Unpacked");
  }

  @Test
  void a_page_that_saves_its_state_without_end() throws IOException {
    assertThat(refusal(PdfFile.of("q ".repeat(2_000_000)))).contains("saves its state");
  }

  @Test
  void a_page_of_too_many_steps_or_points() throws IOException {
    assertThat(refusal(PdfFile.of("0 g ".repeat(2_000_000)))).contains("drawing steps");
    String lines = "0 0 m " + "1 2 l 3 4 l ".repeat(600_000) + "f";
    assertThat(refusal(PdfFile.of(lines))).contains("points");
  }

  @Test
  void a_copy_of_itself() throws IOException {
    byte[] pdf =
        PdfFile.of(
            "/F Do",
            (document, page) -> {
              PDFormXObject form = form(document, "0 0 10 10 re f /F Do /F Do");
              form.getResources().put(FORM, form);
              page.getResources().put(FORM, form);
            });
    assertThat(refusal(pdf)).contains("deep");
  }

  @Test
  void copies_of_copies_of_copies() throws IOException {
    byte[] pdf =
        PdfFile.of(
            "/F Do",
            (document, page) -> {
              PDFormXObject inner = form(document, "0 0 10 10 re f ".repeat(10));
              for (int i = 0; i < 9; i++) {
                PDFormXObject outer = form(document, "/F Do ".repeat(10));
                outer.getResources().put(FORM, inner);
                inner = outer;
              }
              page.getResources().put(FORM, inner);
            });
    assertThat(refusal(pdf)).contains("more than");
  }

  @Test
  void copies_of_nothing_are_counted_too() throws IOException {
    byte[] pdf =
        PdfFile.of(
            "/F Do",
            (document, page) -> {
              PDFormXObject inner = form(document, " ");
              for (int i = 0; i < 9; i++) {
                PDFormXObject outer = form(document, "/F Do ".repeat(10));
                outer.getResources().put(FORM, inner);
                inner = outer;
              }
              page.getResources().put(FORM, inner);
            });
    assertThat(refusal(pdf)).contains("copies drawings more than 50,000 times");
  }

  @Test
  void clips_within_clips() throws IOException {
    assertThat(refusal(PdfFile.of("0 0 9 9 re W n ".repeat(2000) + "0 0 9 9 re f")))
        .contains("clips");
  }

  @Test
  void one_stream_named_thousands_of_times_as_a_pages_content() throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(new PDRectangle(300, 300));
      document.addPage(page);
      PDStream once = PdfFile.stream(document, "0 0 10 10 re f ".repeat(3000));
      page.setContents(Collections.nCopies(10_000, once));
      assertThat(refusal(PdfFile.saved(document))).contains("Unpacked");
    }
  }

  @Test
  void pages_that_lie_in_themselves() throws IOException {
    byte[] pdf =
        PdfFile.of(
            "0 0 10 10 re f",
            (document, page) -> {
              COSDictionary pages = document.getDocumentCatalog().getPages().getCOSObject();
              COSArray kids = new COSArray();
              kids.add(pages);
              kids.add(page.getCOSObject());
              pages.setItem(COSName.KIDS, kids);
            });
    assertThat(refusal(pdf)).contains("can't be read to its end");
  }

  private static PDFormXObject form(PDDocument document, String operators) throws IOException {
    PDFormXObject form = new PDFormXObject(PdfFile.stream(document, operators));
    form.setBBox(new PDRectangle(0, 0, 300, 300));
    form.setResources(new PDResources());
    return form;
  }

  private static byte[] withContents(byte[] raw, COSBase filters) throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(new PDRectangle(300, 300));
      document.addPage(page);
      COSStream stream = document.getDocument().createCOSStream();
      try (OutputStream out = stream.createRawOutputStream()) {
        out.write(raw);
      }
      stream.setItem(COSName.FILTER, filters);
      page.setContents(new PDStream(stream));
      return PdfFile.saved(document);
    }
  }

  private static byte[] packed(int spaces) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] block = " ".repeat(1 << 20).getBytes(StandardCharsets.US_ASCII);
    try (OutputStream deflate = new DeflaterOutputStream(out)) {
      for (int done = 0; done < spaces; done += block.length) {
        deflate.write(block);
      }
    }
    return out.toByteArray();
  }

  private static ArtworkResult read(byte[] pdf) {
    return PdfArtworkReader.read(pdf, "bomb.pdf", 1, ArtworkOptions.ofWidth(1000));
  }

  private static String refusal(byte[] pdf) {
    return Words.english().say(((ArtworkRefusal) read(pdf)).message());
  }
}
