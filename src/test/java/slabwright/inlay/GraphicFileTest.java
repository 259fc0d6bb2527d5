package slabwright.inlay;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.zip.GZIPOutputStream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ArtworkRefusal;
import slabwright.inlay.artwork.ArtworkResult;
import slabwright.shape.Vec;
import slabwright.shape.fit.Homography;
import slabwright.site.GraphicSource;
import slabwright.units.Length;
import slabwright.words.Words;

class GraphicFileTest {
  private static final String SVG =
      "<svg xmlns='http://www.w3.org/2000/svg'><path d='M0 0H100V50H0Z'/></svg>";

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "%!PS-Adobe-3.0 EPSF-3.0 %PDF-1.4 | EPS",
        "C5D0D3C6 | EPS",
        "  0~SECTION~  2~HEADER~ | DXF",
        "999~a note~  0~SECTION~ | DXF",
        "504B0304 | ZIP",
        "D0CF11E0A1B11AE1 | office document",
        "<!DOCTYPE html><html><svg/></html> | web page",
        "00010000 | font",
        "00000018667479706865 | phone",
        "0123456789ABCDEF | no kind of graphic",
      })
  void anything_else_is_named_by_its_first_bytes(String head, String named) throws IOException {
    byte[] bytes = head.matches("[0-9A-F]{8,}") ? hex(head) : text(head.replace("~", "\r\n"));
    assertThat(said(read("logo.svg", bytes))).startsWith("logo.svg: it is").contains(named);
    assertThat(said(read("logo.svg", bytes))).contains("SVG or a PDF with outlines");
  }

  @Test
  void an_empty_file_is_said_to_be_empty() throws IOException {
    assertThat(keys(read("logo.svg", new byte[0]))).contains("inlay.graphic-format.empty");
  }

  @Test
  void a_packed_svg_is_unpacked_whatever_it_is_called() throws IOException {
    assertThat(height(read("logo.svg", packed(text(SVG))))).isEqualTo(500);
  }

  @Test
  void what_unpacks_to_no_end_or_to_something_else_is_refused() throws IOException {
    byte[] spaces = " ".repeat(1 << 20).getBytes(StandardCharsets.US_ASCII);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (OutputStream gzip = new GZIPOutputStream(out)) {
      for (int i = 0; i < 200; i++) {
        gzip.write(spaces);
      }
    }
    assertThat(keys(read("logo.svgz", out.toByteArray())))
        .contains("inlay.graphic-file.inflates, values=[32]");
    assertThat(keys(read("logo.svgz", packed(text("%PDF-1.7")))))
        .contains("inlay.graphic-file.packed-not-svg");
    assertThat(keys(read("logo.svgz", hex("1F8B0800000000000000FFFF"))))
        .contains("inlay.graphic-file.broken-packing");
  }

  @Test
  void a_pdf_is_read_under_another_ending_and_by_its_page() throws IOException {
    byte[] pdf = pdf();
    assertThat(height(read("logo.ai", pdf))).isEqualTo(500);
    Path file = Files.write(folder.resolve("logo.pdf"), pdf);
    GraphicSource second = new GraphicSource(OptionalInt.of(2), Optional.empty());
    assertThat(
            height(
                GraphicFile.read(file, ArtworkOptions.ofWidth(1000), GraphicSettings.of(second))))
        .isEqualTo(1000);
  }

  @Test
  void a_slanted_photo_is_squared_by_the_corners_that_the_plan_keeps() throws IOException {
    List<Vec> sign =
        List.of(new Vec(20, 30), new Vec(190, 60), new Vec(180, 110), new Vec(40, 150));
    Path file = folder.resolve("sign.png");
    ImageIO.write(slanted(sign), "png", file.toFile());
    assertThat(shareOfItsBox(file, List.of())).isLessThan(0.8);
    assertThat(shareOfItsBox(file, sign)).isGreaterThan(0.97);
  }

  /** A rectangle on a sign, as seen aslant. */
  private static BufferedImage slanted(List<Vec> sign) {
    Homography seen =
        Homography.of(List.of(Vec.ZERO, new Vec(1, 0), new Vec(1, 1), new Vec(0, 1)), sign)
            .orElseThrow();
    Path2D drawn = new Path2D.Double();
    for (Vec corner : List.of(new Vec(0.2, 0.3), new Vec(0.8, 0.3), new Vec(0.8, 0.7))) {
      Vec p = seen.apply(corner);
      if (drawn.getCurrentPoint() == null) {
        drawn.moveTo(p.x(), p.y());
      } else {
        drawn.lineTo(p.x(), p.y());
      }
    }
    Vec last = seen.apply(new Vec(0.2, 0.7));
    drawn.lineTo(last.x(), last.y());
    BufferedImage image = new BufferedImage(220, 180, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, 220, 180);
    g.setColor(Color.BLACK);
    g.fill(drawn);
    g.dispose();
    return image;
  }

  private static double shareOfItsBox(Path file, List<Vec> square) throws IOException {
    GraphicSource source =
        new GraphicSource(
            OptionalInt.empty(),
            Optional.of(
                new GraphicSource.Traced("sign.png", 2, Length.ZERO, 0, "#ffffff", square)));
    Artwork art =
        (Artwork) GraphicFile.read(file, ArtworkOptions.ofWidth(1000), GraphicSettings.of(source));
    return art.colours().get(0).region().area() / (art.painted().width() * art.painted().height());
  }

  private static byte[] pdf() throws IOException {
    try (PDDocument document = new PDDocument()) {
      for (int side : new int[] {50, 100}) {
        PDPage page = new PDPage();
        document.addPage(page);
        try (PDPageContentStream to = new PDPageContentStream(document, page)) {
          to.addRect(100, 100, 100, side);
          to.fill();
        }
      }
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return out.toByteArray();
    }
  }

  private ArtworkResult read(String name, byte[] bytes) throws IOException {
    Path file = Files.write(folder.resolve(name), bytes);
    return GraphicFile.read(
        file, ArtworkOptions.ofWidth(1000), GraphicSettings.of(GraphicSource.ITSELF));
  }

  private static double height(ArtworkResult result) {
    return Math.rint(((Artwork) result).painted().height());
  }

  /** The key of a refusal with those of the messages in it. */
  private static String keys(ArtworkResult result) {
    return ((ArtworkRefusal) result).message().toString();
  }

  private static String said(ArtworkResult result) {
    return Words.english().say(((ArtworkRefusal) result).message());
  }

  private static byte[] packed(byte[] bytes) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (OutputStream gzip = new GZIPOutputStream(out)) {
      gzip.write(bytes);
    }
    return out.toByteArray();
  }

  private static byte[] text(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] hex(String digits) {
    byte[] bytes = new byte[digits.length() / 2];
    for (int i = 0; i < bytes.length; i++) {
      bytes[i] = (byte) Integer.parseInt(digits.substring(2 * i, 2 * i + 2), 16);
    }
    return bytes;
  }
}
