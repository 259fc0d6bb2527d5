package slabwright.inlay.artwork.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ArtworkQuestion;
import slabwright.inlay.artwork.ArtworkRefusal;
import slabwright.inlay.artwork.ArtworkWarning;
import slabwright.inlay.artwork.ColourRegion;
import slabwright.inlay.artwork.batik.SvgArtworkReader;
import slabwright.shape.Region;
import slabwright.words.Words;

class PdfArtworkReaderTest {
  private static final double WIDTH = 1000;

  /** Farthest that an edge of a PDF may lie from that of the SVG, mm: two tolerances, rounded. */
  private static final double APART = 0.03;

  private static final String RED = "0.8 0.2 0.2 rg 0.8 0.2 0.2 RG ";

  /** Half way from red to blue; 127.5 may be rounded either way. */
  private static final List<String> MIDDLES = List.of("#7f007f", "#800080");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // a star wound twice round its middle, by both rules
        "200 40 m 300 340 l 40 150 l 360 150 l 100 340 l h f | "
            + "<path d='M200 40 300 340 40 150 360 150 100 340z'/>",
        "200 40 m 300 340 l 40 150 l 360 150 l 100 340 l h f* | "
            + "<path fill-rule='evenodd' d='M200 40 300 340 40 150 360 150 100 340z'/>",
        // curves, also those that repeat a point
        "40 200 m 40 20 360 20 360 200 c 300 300 200 360 v 100 380 40 200 y f | "
            + "<path d='M40 200C40 20 360 20 360 200C360 200 300 300 200 360C100 380 40 200 40 200'/>",
        // a rectangle, filled and stroked
        "20 w 60 60 200 150 re B | <rect x='60' y='60' width='200' height='150' stroke-width='20'"
            + " stroke='#cc3333'/>",
        // caps, joins, miters
        "30 w 1 J 1 j 60 300 m 200 60 l 340 300 l S | <path fill='none' stroke='#cc3333'"
            + " stroke-width='30' stroke-linecap='round' stroke-linejoin='round' d='M60 300 200 60"
            + " 340 300'/>",
        "30 w 2 J 0 j 1.2 M 60 300 m 200 60 l 340 300 l S | <path fill='none' stroke='#cc3333'"
            + " stroke-width='30' stroke-linecap='square' stroke-miterlimit='1.2' d='M60 300 200 60"
            + " 340 300'/>",
        // dashes, an odd list with a phase
        "12 w [30 12 20] 9 d 40 200 m 40 20 360 20 360 200 c S | <path fill='none'"
            + " stroke='#cc3333' stroke-width='12' stroke-dasharray='30 12 20'"
            + " stroke-dashoffset='9' d='M40 200C40 20 360 20 360 200'/>",
        // a pen squeezed by its frame
        "q 2 0 0 0.5 0 0 cm 20 w 30 600 m 100 200 l 170 600 l S Q | <path fill='none'"
            + " transform='scale(2 .5)' stroke='#cc3333' stroke-width='20' stroke-miterlimit='10' d='M30 600 100 200 170"
            + " 600'/>",
        // two clips, the second by the even-odd rule
        "100 100 200 200 re W n 50 50 300 300 re 150 150 100 100 re W* n 0 0 400 400 re f |"
            + " <path fill-rule='evenodd' d='M100 100h200v200h-200zM150 150h100v100h-100z'/>",
      })
  void the_same_shapes_in_a_pdf_and_in_an_svg_give_the_same_regions(String pdf, String svg)
      throws IOException {
    assertSame(art(PdfFile.of(PdfFile.AS_SVG + RED + pdf.strip())), svg(svg.strip()));
  }

  @Test
  void copies_are_painted_in_their_place_and_clipped_to_their_box() throws IOException {
    byte[] pdf =
        PdfFile.of(
            PdfFile.AS_SVG + RED + "q 1 0 0 1 50 50 cm /F Do Q q 2 0 0 2 150 150 cm /F Do Q",
            (document, page) -> {
              PDFormXObject form =
                  new PDFormXObject(PdfFile.stream(document, "0 0 m 80 0 l 80 90 l 0 80 l h f"));
              form.setBBox(new PDRectangle(0, 0, 60, 100));
              page.getResources().put(COSName.getPDFName("F"), form);
            });
    assertSame(
        art(pdf),
        svg(
            "<path id='a' d='M0 0H60V87.5L0 80Z' transform='translate(50 50)'/>"
                + "<path d='M0 0H60V87.5L0 80Z' transform='translate(150 150) scale(2)'/>"));
  }

  @ParameterizedTest
  @CsvSource({"90", "180", "270"})
  void a_turned_page_is_read_as_it_is_shown(int turn) throws IOException {
    byte[] pdf =
        PdfFile.of(
            PdfFile.AS_SVG + RED + "40 40 m 360 40 l 40 200 l h f",
            (document, page) -> page.setRotation(turn));
    assertSame(
        art(pdf), svg("<path transform='rotate(" + turn + " 200 200)' d='M40 40H360L40 200Z'/>"));
  }

  @Test
  void letters_are_their_outlines_where_the_file_puts_them() throws IOException {
    byte[] pdf =
        PdfFile.of(
            PdfFile.AS_SVG + RED + "BT /T 100 Tf 1 0 0 -1 40 250 Tm <" + "0024" + "> Tj ET",
            PdfArtworkReaderTest::dejaVu);
    // glyph 0x24 of DejaVu Sans is the letter A
    assertSame(
        art(pdf), svg("<text x='40' y='250' font-family='DejaVu Sans' font-size='100'>A</text>"));
  }

  private static void dejaVu(PDDocument document, PDPage page) throws IOException {
    try (InputStream font =
        PdfArtworkReaderTest.class.getResourceAsStream("/fonts/DejaVuSans.ttf")) {
      page.getResources().put(COSName.getPDFName("T"), PDType0Font.load(document, font, false));
    }
  }

  @Test
  void letters_of_a_font_that_is_not_in_the_file_are_said() throws IOException {
    byte[] pdf =
        PdfFile.of(
            RED + "BT /T 80 Tf 20 100 Td (Heron) Tj ET",
            (document, page) -> {
              COSDictionary font = new COSDictionary();
              font.setItem(COSName.TYPE, COSName.FONT);
              font.setItem(COSName.SUBTYPE, COSName.TYPE1);
              font.setName(COSName.BASE_FONT, "Helvetica");
              COSDictionary fonts = new COSDictionary();
              fonts.setItem(COSName.getPDFName("T"), font);
              page.getResources().getCOSObject().setItem(COSName.FONT, fonts);
            });
    assertThat(art(pdf).warnings())
        .extracting(ArtworkWarning::kind)
        .contains(ArtworkWarning.Kind.FONT_SUBSTITUTED);
  }

  @Test
  void spot_colours_keep_their_names_and_no_ink_leaves_no_mark() throws IOException {
    byte[] pdf =
        PdfFile.of(
            "/S cs 1 scn 20 20 100 100 re f /N cs 1 scn 200 20 80 80 re f"
                + " 0 1 1 0 k 20 150 100 100 re f",
            (document, page) -> {
              separation(page, "S", "Heron Blue");
              separation(page, "N", "None");
            });
    Artwork art = art(pdf);
    assertThat(art.colours()).hasSize(2);
    assertThat(art.colours().get(0).hex()).isEqualTo("#1a334d");
    assertThat(said(art)).anyMatch(s -> s.contains("#1a334d is called \"Heron Blue\""));
    // pure magenta and yellow together are a red, whatever the profile
    assertThat(art.colours().get(1).hex()).matches("#[ef].[0-4].[0-4].");
  }

  /** An ink that is 0.1, 0.2, 0.3 in red, green and blue where it is laid on in full. */
  private static void separation(PDPage page, String key, String name) throws IOException {
    COSDictionary tint = new COSDictionary();
    tint.setInt(COSName.FUNCTION_TYPE, 2);
    tint.setItem(COSName.DOMAIN, numbers(0, 1));
    tint.setItem(COSName.C0, numbers(1, 1, 1));
    tint.setItem(COSName.C1, numbers(0.1f, 0.2f, 0.3f));
    tint.setItem(COSName.N, COSInteger.ONE);
    COSArray space = new COSArray();
    space.add(COSName.SEPARATION);
    space.add(COSName.getPDFName(name));
    space.add(COSName.DEVICERGB);
    space.add(tint);
    page.getResources().put(COSName.getPDFName(key), PDColorSpace.create(space));
  }

  private static COSArray numbers(float... values) {
    COSArray a = new COSArray();
    for (float v : values) {
      a.add(new COSFloat(v));
    }
    return a;
  }

  @Test
  void a_layer_that_is_switched_off_is_left_out_and_said() throws IOException {
    byte[] pdf =
        PdfFile.of(
            RED
                + "/OC /On BDC 20 20 100 100 re f EMC"
                + " /OC /Off BDC /OC /On BDC 200 200 50 50 re f EMC EMC",
            (document, page) -> {
              PDOptionalContentProperties layers = new PDOptionalContentProperties();
              for (String name : List.of("On", "Off")) {
                PDOptionalContentGroup layer = new PDOptionalContentGroup(name);
                layers.addGroup(layer);
                layers.setGroupEnabled(layer, name.equals("On"));
                page.getResources().put(COSName.getPDFName(name), layer);
              }
              document.getDocumentCatalog().setOCProperties(layers);
            });
    Artwork art = art(pdf);
    assertThat(art.painted().height()).isCloseTo(WIDTH, within(0.1));
    assertThat(said(art)).anyMatch(s -> s.contains("switched off"));
  }

  @Test
  void a_fade_is_one_colour_and_asked_about() throws IOException {
    byte[] pdf =
        PdfFile.of(
            "20 20 200 100 re W n /G sh",
            (document, page) -> {
              COSDictionary mix = new COSDictionary();
              mix.setInt(COSName.FUNCTION_TYPE, 2);
              mix.setItem(COSName.DOMAIN, numbers(0, 1));
              mix.setItem(COSName.C0, numbers(1, 0, 0));
              mix.setItem(COSName.C1, numbers(0, 0, 1));
              mix.setItem(COSName.N, COSInteger.ONE);
              COSDictionary fade = new COSDictionary();
              fade.setInt(COSName.SHADING_TYPE, 2);
              fade.setItem(COSName.COLORSPACE, COSName.DEVICERGB);
              fade.setItem(COSName.COORDS, numbers(20, 0, 220, 0));
              fade.setItem(COSName.FUNCTION, mix);
              COSDictionary fades = new COSDictionary();
              fades.setItem(COSName.getPDFName("G"), fade);
              page.getResources().getCOSObject().setItem(COSName.SHADING, fades);
            });
    Artwork art = art(pdf);
    assertThat(art.colours()).singleElement().extracting(ColourRegion::hex).isIn(MIDDLES);
    assertThat(art.painted().height()).isCloseTo(WIDTH / 2, within(0.1));
    assertThat(art.questions())
        .extracting(ArtworkQuestion::kind)
        .containsExactly(ArtworkQuestion.Kind.FADE);
  }

  @Test
  void the_page_is_chosen_and_one_that_is_not_there_is_refused() throws IOException {
    byte[] pdf =
        PdfFile.of(
            "20 20 200 100 re f",
            (document, page) -> {
              PDPage second = new PDPage(new PDRectangle(300, 300));
              second.setContents(PdfFile.stream(document, "20 20 100 100 re f"));
              document.addPage(second);
            });
    assertThat(art(pdf).painted().height()).isCloseTo(WIDTH / 2, within(0.1));
    Artwork other = (Artwork) PdfArtworkReader.read(pdf, "logo.pdf", 2, wide());
    assertThat(other.painted().height()).isCloseTo(WIDTH, within(0.1));
    assertThat(refusal(pdf, 3)).contains("pdfin.no-such-page, values=[3, 2]");
  }

  @Test
  void a_page_that_is_empty_or_no_pdf_at_all_is_refused() throws IOException {
    assertThat(refusal(PdfFile.of("n"), 1)).contains("inlay.artwork.nothing-painted");
    byte[] broken = "%PDF-1.7\nnothing more".getBytes(StandardCharsets.US_ASCII);
    assertThat(refusal(broken, 1)).contains("pdfin.painting.unreadable");
  }

  private static ArtworkOptions wide() {
    return ArtworkOptions.ofWidth(WIDTH);
  }

  /** The key of a refusal with those of the messages in it. */
  private static String refusal(byte[] pdf, int page) {
    return ((ArtworkRefusal) PdfArtworkReader.read(pdf, "logo.pdf", page, wide()))
        .message()
        .toString();
  }

  private static List<String> said(Artwork art) {
    return art.warnings().stream().map(w -> Words.english().say(w.message())).toList();
  }

  private static Artwork art(byte[] pdf) {
    return (Artwork) PdfArtworkReader.read(pdf, "logo.pdf", 1, wide());
  }

  private static Artwork svg(String body) throws IOException {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' width='400' height='400' fill='#cc3333'>"
            + body
            + "</svg>";
    return (Artwork)
        SvgArtworkReader.read(
            new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)), "logo.svg", wide());
  }

  private static void assertSame(Artwork pdf, Artwork svg) {
    assertThat(pdf.colours()).extracting(ColourRegion::hex).containsExactly("#cc3333");
    assertThat(svg.colours()).extracting(ColourRegion::hex).containsExactly("#cc3333");
    Region a = pdf.colours().get(0).region();
    Region b = svg.colours().get(0).region();
    double differing = a.minus(b).area() + b.minus(a).area();
    assertThat(differing).isLessThan(APART * b.boundaryLength());
    assertThat(pdf.mmPerPx()).isCloseTo(svg.mmPerPx(), within(1e-4));
  }
}
