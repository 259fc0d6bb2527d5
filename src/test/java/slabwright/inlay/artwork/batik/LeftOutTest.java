package slabwright.inlay.artwork.batik;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ArtworkRefusal;
import slabwright.inlay.artwork.ArtworkResult;
import slabwright.words.Words;

/** What can't be read is left out with a plain note, and the rest is drawn. */
class LeftOutTest {
  /** A square of 100 by 100 px beside each part. */
  private static final String SQUARE = "<rect width='100' height='100'/>";

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<image display='none' href='http://a/b.png' width='9' height='9'/> | hidden or empty",
        "<g style='display:none'><image href='b.png' width='9' height='9'/></g> | hidden or empty",
        "<style>.h{display:none}</style><image class='h' href='b.png' width='9' height='9'/>"
            + " | hidden or empty",
        "<image width='9' height='9'/> | hidden or empty",
        "<image href='data:image/png;base64,iVBOR' width='0' height='9'/> | hidden or empty",
        "<defs><image href='a.png' width='9' height='9'/></defs> | hidden or empty",
        "<flowRoot><flowPara>hello</flowPara></flowRoot> | broken into lines",
        "<meshgradient id='g'><meshrow/></meshgradient> | mesh",
        "<nonsense><rect width='300' height='9'/></nonsense> | <nonsense>",
        "<g filter='url(#f)'/><filter id='f'><feDropShadow/></filter> | blur or a shadow",
        "<rect width='foo' height='9'/> | no readable width",
        "<rect width='9' height='9' transform='rotate(foo)'/> | \"rotate(foo)\"",
        "<linearGradient id='g'><stop offset='x'/></linearGradient>"
            + "<rect width='9' height='9' fill='url(#g)'/> | <stop>",
        "<rect width='9' height='9' opacity='foo'/> | a style that is not understood",
      })
  void a_part_is_left_out_and_said(String part, String said) throws IOException {
    Artwork art = (Artwork) read(svg(part + SQUARE));
    assertThat(pixels(art)).isEqualTo(10_000);
    assertThat(said(art)).anyMatch(s -> s.contains(said.strip()));
  }

  @Test
  void a_picture_that_is_seen_is_still_refused() throws IOException {
    String used = "<defs><image id='i' href='a.png' width='9' height='9'/></defs><use href='#i'/>";
    for (String part : List.of("<image href='a.png' width='9' height='9'/>", used)) {
      assertThat(read(svg(part + SQUARE))).isInstanceOf(ArtworkRefusal.class);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "M0 0H100V100H0ZL5 x | 10000",
        "M0 0H100V100H0 Q 3 | 10000",
        "M0 0 100 0 100 100z M 20 20 L 30 | 5000",
        "M0,0H100V100H0z,, | 10000",
        "M0 0h100v100h-100zM0 0a50 50 0 1 2 9 9 | 10000",
      })
  void a_path_is_drawn_up_to_its_first_error(String d, double area) throws IOException {
    assertThat(pixels((Artwork) read(svg("<path d='" + d + "'/>")))).isEqualTo(area);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "M0 0H100V50Z",
        "m0-0h1e2v+50.5.5z",
        "M10.5.5.6.7L5-5",
        "M0 0a25,25 -30 01.5.5 1 1 0 0050-25z",
        "M0 0C1 2,3 4,5 6 7 8 9 10 11 12S1 1 2 2T5 5",
      })
  void sound_path_data_is_left_as_it_is(String d) throws IOException {
    ArtworkResult result = read(svg("<path d='" + d + "'/>" + SQUARE));
    assertThat(said((Artwork) result)).noneMatch(s -> s.contains("broken off"));
  }

  @Test
  void a_switch_takes_what_stands_beside_another_language() throws IOException {
    Artwork art = (Artwork) read(svg("<switch><foreignObject/>" + SQUARE + "</switch>"));
    assertThat(pixels(art)).isEqualTo(10_000);
  }

  @Test
  void entities_that_only_name_constants_are_put_in() throws IOException {
    String doctype =
        "<!DOCTYPE svg [<!ENTITY red '#ff0000'><!ENTITY ns 'http://www.w3.org/2000/svg'>]>";
    String body = "<svg xmlns='&ns;'><rect width='100' height='100' fill='&red;'/></svg>";
    Artwork art = (Artwork) read(doctype + body);
    assertThat(art.colours().get(0).hex()).isEqualTo("#ff0000");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<!ENTITY a 'xxxxxxxxxx'><!ENTITY b '&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;'>",
        "<!ENTITY a SYSTEM 'file:///etc/hostname'>",
        "<!ENTITY a '&lt;rect/>'>",
        "<!ENTITY % a 'x'>",
      })
  void entities_that_do_more_are_refused(String declared) throws IOException {
    String svg = "<!DOCTYPE svg [" + declared + "]>" + svg(SQUARE);
    assertThat(keys(svg)).contains("inlay.svg-reader.entity-declared");
  }

  @Test
  void constants_that_blow_a_file_up_are_refused() throws IOException {
    String value = "x".repeat(900);
    String many = "<g id='" + "&a;".repeat(50) + "'/>";
    String svg = "<!DOCTYPE svg [<!ENTITY a '" + value + "'>]>" + svg(many.repeat(2000));
    assertThat(refused(svg)).doesNotContain("JAXP");
  }

  @Test
  void a_parser_is_never_quoted() throws IOException {
    String broken = "<svg xmlns='http://www.w3.org/2000/svg'><rect></svg>";
    assertThat(keys(broken)).contains("inlay.svg-reader.not-well-formed, values=[1, ");
    assertThat(refused(broken)).doesNotContain("must be terminated");
  }

  private static String svg(String body) {
    return "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 400 400'>" + body + "</svg>";
  }

  private static ArtworkResult read(String svg) throws IOException {
    return SvgArtworkReader.read(
        new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)),
        "drawing",
        ArtworkOptions.ofWidth(1000));
  }

  private static double pixels(Artwork art) {
    double mm = art.mmPerPx();
    return Math.rint(art.colours().stream().mapToDouble(c -> c.region().area()).sum() / (mm * mm));
  }

  private static List<String> said(Artwork art) {
    return art.warnings().stream().map(w -> Words.english().say(w.message())).toList();
  }

  /** The key of a refusal with those of the messages in it. */
  private static String keys(String svg) throws IOException {
    return ((ArtworkRefusal) read(svg)).message().toString();
  }

  private static String refused(String svg) throws IOException {
    return Words.english().say(((ArtworkRefusal) read(svg)).message());
  }
}
