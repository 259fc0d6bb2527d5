package slabwright.inlay.artwork.batik;

import static org.assertj.core.api.Assertions.assertThat;
import static slabwright.inlay.artwork.batik.Svg.OPEN;
import static slabwright.inlay.artwork.batik.Svg.page;
import static slabwright.inlay.artwork.batik.Svg.refusal;

import org.junit.jupiter.api.Test;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ArtworkRefusal;
import slabwright.inlay.artwork.ArtworkRefusal.Reason;
import slabwright.words.Words;

/** One graphic for each reason to refuse; each is refused quickly and in one sentence. */
class RefusalsTest {
  private static void refused(String svg, Reason reason) {
    ArtworkRefusal r = refusal(svg);
    assertThat(r.reason()).as("%s", r.message()).isEqualTo(reason);
    assertThat(Words.english().say(r.message()))
        .startsWith("test.svg: ")
        .endsWith(".")
        .doesNotContain("\n");
  }

  @Test
  void text_that_is_not_xml() {
    refused("%PDF-1.7 nonsense", Reason.NOT_XML);
    refused(page("<rect width='10' height='10'>"), Reason.NOT_XML);
    refused("", Reason.NOT_XML);
  }

  @Test
  void xml_that_is_not_svg() {
    refused("<html><body/></html>", Reason.NOT_SVG);
  }

  @Test
  void a_declared_entity_that_is_no_constant_even_an_unused_one() {
    refused(
        "<!DOCTYPE svg [<!ENTITY a '&#38;b;'>]>" + page("<rect width='9' height='9'/>"),
        Reason.ENTITY_DECLARED);
  }

  @Test
  void an_external_entity() {
    refused(
        "<!DOCTYPE svg [<!ENTITY a SYSTEM 'file:///etc/hostname'>]>" + page("<text>&a;</text>"),
        Reason.ENTITY_DECLARED);
  }

  @Test
  void groups_nested_twenty_thousand_deep() {
    refused(
        page("<g>".repeat(20_000) + "<rect width='9' height='9'/>" + "</g>".repeat(20_000)),
        Reason.TOO_DEEP);
  }

  @Test
  void too_many_elements() {
    refused(page("<rect/>".repeat(200_001)), Reason.TOO_LARGE);
  }

  @Test
  void a_copy_that_contains_itself() {
    refused(page("<g id='a'><g id='b'><use href='#a'/></g></g>"), Reason.USE_LOOP);
  }

  @Test
  void a_pattern_that_is_filled_with_itself() {
    refused(
        page(
            "<pattern id='p' width='9' height='9'><rect width='5' height='5' fill='url(#p)'/>"
                + "</pattern><rect width='50' height='50' fill='url(#p)'/>"),
        Reason.USE_LOOP);
  }

  @Test
  void ten_lines_that_stand_for_a_billion_shapes() {
    StringBuilder s = new StringBuilder("<defs><rect id='c0' width='1' height='1'/>");
    for (int i = 1; i < 10; i++) {
      s.append("<g id='c%d'>".formatted(i))
          .append("<use xlink:href='#c%d'/>".formatted(i - 1).repeat(10))
          .append("</g>");
    }
    refused(page(s + "</defs><use xlink:href='#c9'/>"), Reason.USE_TOO_MANY);
  }

  @Test
  void a_long_chain_of_copies() {
    StringBuilder s = new StringBuilder("<rect id='c0' width='1' height='1'/>");
    for (int i = 1; i < 50_000; i++) {
      s.append("<use id='c%d' href='#c%d'/>".formatted(i, i - 1));
    }
    refused(page(s.toString()), Reason.TOO_DEEP);
  }

  @Test
  void a_picture_beside_the_file() {
    refused(page("<image href='logo.png' width='9' height='9'/>"), Reason.EXTERNAL_RESOURCE);
    refused(
        page("<image xlink:href='file:///etc/logo.png' width='9' height='9'/>"),
        Reason.EXTERNAL_RESOURCE);
  }

  @Test
  void a_shape_or_style_beside_the_file() {
    refused(page("<use href='other.svg#a'/>"), Reason.EXTERNAL_RESOURCE);
    refused(
        page("<style>@import 'colours.css';</style><rect width='9' height='9'/>"),
        Reason.EXTERNAL_RESOURCE);
    refused(page("<rect width='9' height='9' fill='url(a.svg#g)'/>"), Reason.EXTERNAL_RESOURCE);
    refused("<?xml-stylesheet href='a.css'?>" + page("<rect/>"), Reason.EXTERNAL_RESOURCE);
  }

  @Test
  void an_embedded_picture() {
    refused(
        page("<image href='data:image/png;base64,iVBORw0KGgo=' width='9' height='9'/>"),
        Reason.PICTURE);
  }

  @Test
  void nothing_painted() {
    refused(page(""), Reason.NOTHING_PAINTED);
    refused(page("<rect width='50' height='50' fill='none'/>"), Reason.NOTHING_PAINTED);
    refused(page("<path d='M10 10 L90 90'/>"), Reason.NOTHING_PAINTED);
    refused(page("<rect x='200' width='50' height='50'/>"), Reason.NOTHING_PAINTED);
  }

  @Test
  void an_absurd_page() {
    refused(OPEN + "viewBox='0 0 0 100'><rect width='9' height='9'/></svg>", Reason.ABSURD_SIZE);
    refused(
        OPEN + "width='1e30' height='5'><rect width='9' height='9'/></svg>", Reason.ABSURD_SIZE);
    refused(OPEN + "width='-5' height='5'><rect width='9' height='9'/></svg>", Reason.ABSURD_SIZE);
    refused(
        OPEN + "viewBox='0 0 1 1000000'><rect width='9' height='9'/></svg>", Reason.ABSURD_SIZE);
  }

  @Test
  void an_absurd_width() {
    String svg = page("<rect width='9' height='9'/>");
    for (double width : new double[] {0, -1, 9, 1e6, Double.NaN}) {
      assertThat(Svg.read(svg, ArtworkOptions.ofWidth(width))).isInstanceOf(ArtworkRefusal.class);
    }
  }
}
