package slabwright.inlay;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkQuestion;
import slabwright.inlay.artwork.ArtworkQuestion.Kind;
import slabwright.inlay.artwork.batik.SvgArtworkReader;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.shape.Vec;
import slabwright.site.StencilSpec;
import slabwright.units.Length;

class OpenQuestionsTest {
  private static final StencilSpec USUAL = StencilSpec.forRoll(Length.mm(1220));
  private static final String BLACK = "<rect width='60' height='60' fill='#202020'/>";

  @Test
  void plain_colours_ask_nothing() throws IOException {
    assertThat(kinds(BLACK + rect(10, "fill='#c03020'"), USUAL)).isEmpty();
  }

  @Test
  void white_is_asked_about_until_it_is_left_bare() throws IOException {
    String body = BLACK + rect(10, "fill='white'");
    assertThat(kinds(body, USUAL)).containsExactly(Kind.WHITE);
    StencilSpec answered = OpenQuestions.accepted(questions(body, USUAL).get(0), USUAL);
    assertThat(answered.colours()).extracting(c -> c.colour()).containsExactly("#ffffff");
    assertThat(kinds(body, answered)).isEmpty();
  }

  @Test
  void near_white_is_white_and_light_yellow_is_not() throws IOException {
    assertThat(kinds(BLACK + rect(10, "fill='#f6f6f2'"), USUAL)).containsExactly(Kind.WHITE);
    assertThat(kinds(BLACK + rect(10, "fill='#fff080'"), USUAL)).isEmpty();
  }

  @Test
  void colours_that_the_eye_cannot_tell_apart_are_asked_about_and_merged() throws IOException {
    String body = BLACK + rect(10, "fill='#222222'");
    ArtworkQuestion close = questions(body, USUAL).get(0);
    assertThat(close.kind()).isEqualTo(Kind.CLOSE_COLOURS);
    assertThat(close.colours()).containsExactly("#222222", "#202020");
    StencilSpec merged = OpenQuestions.accepted(close, USUAL);
    assertThat(kinds(body, merged)).isEmpty();
    assertThat(artwork(body, merged).colours()).hasSize(1);
  }

  @Test
  void a_veil_is_asked_about_apart_from_the_solid_parts_of_its_paint() throws IOException {
    String body = BLACK + rect(50, "fill='#202020' fill-opacity='.04'");
    ArtworkQuestion veil = questions(body, USUAL).get(0);
    assertThat(veil.kind()).isEqualTo(Kind.VEIL);
    Artwork without = artwork(body, OpenQuestions.accepted(veil, USUAL));
    assertThat(without.colours()).extracting(c -> c.hex()).containsExactly("#202020");
  }

  private static void assertLeftBare(String body, Kind kind) throws IOException {
    assertThat(kinds(body, USUAL)).containsExactly(kind);
    ArtworkQuestion asked = questions(body, USUAL).get(0);
    StencilSpec answered = OpenQuestions.accepted(asked, USUAL);
    assertThat(kinds(body, answered)).isEmpty();
    assertThat(DyedGraphic.of(artwork(body, answered), answered).layers())
        .extracting(DyeLayer::colour)
        .containsExactly("#202020");
  }

  @Test
  void a_fade_is_asked_about_until_it_is_left_bare() throws IOException {
    String fade =
        "<linearGradient id='f'><stop stop-color='red'/><stop offset='1' stop-color='blue'/>"
            + "</linearGradient>";
    assertLeftBare(fade + BLACK + rect(10, "fill='url(#f)'"), Kind.FADE);
  }

  @Test
  void a_pattern_is_asked_about_until_it_is_left_bare() throws IOException {
    String dots =
        "<pattern id='p' width='4' height='4' patternUnits='userSpaceOnUse'>"
            + "<circle cx='2' cy='2' r='1' fill='#c03020'/></pattern>";
    assertLeftBare(dots + BLACK + rect(10, "fill='url(#p)'"), Kind.PATTERN);
  }

  @Test
  void of_a_kilometre_of_stripes_one_is_shown() throws IOException {
    StringBuilder stripes = new StringBuilder();
    for (int i = 0; i < 900; i++) {
      stripes.append("<path d='M%d,0h3v6000h-3z' fill='#c03020'/>".formatted(7 * i));
    }
    Artwork artwork = artwork(stripes.toString(), USUAL);
    assertThat(artwork.colours().get(0).region().boundaryLength()).isGreaterThan(1e6);
    Vec at = artwork.questions().get(0).place().orElseThrow();
    assertThat(artwork.colours().get(0).region().contains(at)).isTrue();
  }

  @Test
  void very_many_dots_are_asked_about_until_they_are_left_bare() throws IOException {
    assertLeftBare(BLACK + grid(14), Kind.MANY_OPENINGS);
    assertThat(kinds(BLACK + grid(10), USUAL)).isEmpty();
  }

  @Test
  void forty_colours_are_asked_about_until_all_are_named() throws IOException {
    StringBuilder body = new StringBuilder();
    for (int i = 0; i < 40; i++) {
      body.append(rect(i * 10, "fill='hsl(%d,80%%,%d%%)'".formatted(i * 9, 30 + i % 3 * 15)));
    }
    assertThat(kinds(body.toString(), USUAL)).contains(Kind.MANY_COLOURS);
    StencilSpec named = OpenQuestions.asDrawn(artwork(body.toString(), USUAL), USUAL);
    assertThat(kinds(body.toString(), named)).isEmpty();
    assertThat(DyedGraphic.of(artwork(body.toString(), named), named).layers()).hasSize(40);
  }

  private static String grid(int side) {
    StringBuilder dots = new StringBuilder();
    for (int i = 0; i < side * side; i++) {
      dots.append(
          "<circle cx='%d' cy='%d' r='1' fill='#c03020'/>".formatted(i % side * 4, i / side * 4));
    }
    return dots.toString();
  }

  private static String rect(int x, String paint) {
    return "<rect x='%d' y='10' width='10' height='10' %s/>".formatted(x, paint);
  }

  private static List<Kind> kinds(String body, StencilSpec spec) throws IOException {
    return questions(body, spec).stream().map(ArtworkQuestion::kind).toList();
  }

  private static List<ArtworkQuestion> questions(String body, StencilSpec spec) throws IOException {
    return OpenQuestions.of(artwork(body, spec), spec);
  }

  private static Artwork artwork(String body, StencilSpec spec) throws IOException {
    String svg = "<svg xmlns='http://www.w3.org/2000/svg'>" + body + "</svg>";
    return (Artwork)
        SvgArtworkReader.read(
            new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)),
            "graphic.svg",
            DyedGraphic.options(600, spec));
  }
}
