package slabwright.pdfin.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.units.Result;
import slabwright.words.Words;

class PdfPictureTest {
  /** An A4 page with a red block 20 mm square in its lower-left corner. */
  private static byte[] pdf(PDRectangle size, String password) throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(size);
      document.addPage(page);
      try (PDPageContentStream out = new PDPageContentStream(document, page)) {
        out.setNonStrokingColor(Color.RED);
        out.addRect(0, 0, 20 * 72 / 25.4f, 20 * 72 / 25.4f);
        out.fill();
      }
      if (!password.isEmpty()) {
        document.protect(new StandardProtectionPolicy("owner", password, new AccessPermission()));
      }
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.save(bytes);
      return bytes.toByteArray();
    }
  }

  private static String refusal(byte[] file, int page) {
    return Words.english()
        .say(((Result.Refused<PdfPicture>) PdfPicture.read(file, page)).message());
  }

  @Test
  void a_page_becomes_a_picture_of_known_scale() throws IOException {
    PdfPicture page = PdfPicture.read(pdf(PDRectangle.A4, ""), 1).orThrow();
    assertThat(page.picture().width() * page.mmPerPixel()).isEqualTo(210, within(0.3));
    int inside = (int) (19 / page.mmPerPixel());
    int outside = (int) (21 / page.mmPerPixel());
    int bottom = page.picture().height() - 1;
    assertThat(SamplePictures.red(page.picture().image(), inside, bottom - inside)).isTrue();
    assertThat(SamplePictures.red(page.picture().image(), outside, bottom - outside)).isFalse();
  }

  @Test
  void a_sheet_of_any_size_stays_within_the_longest_side() throws IOException {
    PdfPicture page = PdfPicture.read(pdf(new PDRectangle(7200, 3600), ""), 1).orThrow();
    assertThat(page.picture().width()).isEqualTo(Picture.LONGEST_SIDE);
    assertThat(page.picture().width() * page.mmPerPixel()).isEqualTo(2540, within(1.0));
  }

  @Test
  void a_page_that_is_not_there_is_refused() throws IOException {
    assertThat(refusal(pdf(PDRectangle.A4, ""), 2))
        .isEqualTo("There is no page 2: the file has 1.");
  }

  @Test
  void locked_and_broken_files_are_refused() throws IOException {
    assertThat(refusal(pdf(PDRectangle.A4, "secret"), 1)).contains("locked with a password");
    assertThat(refusal(new byte[] {1, 2, 3}, 1)).startsWith("This PDF cannot be read");
  }

  @Test
  void the_file_s_name_says_what_it_is(@TempDir Path folder) throws IOException {
    Path pdf = Files.write(folder.resolve("hall.PDF"), pdf(PDRectangle.A4, ""));
    Path png =
        Files.write(
            folder.resolve("hall.png"), SamplePictures.file(SamplePictures.marked(8, 4), "png"));
    assertThat(Picture.read(pdf, 1).orThrow().width()).isGreaterThan(1000);
    assertThat(Picture.read(png, 1).orThrow().width()).isEqualTo(8);
  }
}
