package slabwright.inlay.artwork.batik;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ArtworkWarning;
import slabwright.shape.Region;
import slabwright.words.Words;

/** Letters are set as a browser sets them, or the drawing asks for paths. */
class TextSettingTest {
  private static final double EM = 2048;

  /** Kerning of A before V in DejaVu Sans, by its own table. */
  private static final double A_V = -131 / EM;

  private static final double SIZE = 100;

  @Test
  void letters_are_as_near_each_other_as_the_font_says() throws IOException {
    double apart = width("style='font-kerning:none'", "AVA");
    assertThat(width("", "AVA") - apart).isCloseTo(2 * A_V * SIZE, within(0.02));
    assertThat(width("font-kerning='none'", "AVA")).isCloseTo(apart, within(1e-6));
  }

  @Test
  void kerning_adds_to_spacing_and_gives_way_to_places_of_ones_own() throws IOException {
    double wider = width("letter-spacing='10'", "AVA") - width("", "AVA");
    assertThat(wider).isCloseTo(20, within(0.02));
    double placed = width("x='0 100 200'", "AVA");
    assertThat(placed).isCloseTo(200 + width("", "A"), within(0.02));
  }

  /** DejaVu Sans joins f, f and i by its table of ligatures; a browser does so too. */
  @Test
  void letters_join_as_the_font_says_unless_they_stand_apart() throws IOException {
    Region joined = region("", "office");
    assertThat(unlike(joined, region("", "o\ufb03ce"))).isLessThan(1e-3);
    assertThat(unlike(joined, region("style='font-variant-ligatures:none'", "office")))
        .isGreaterThan(0.01);
    double spread = width("letter-spacing='10'", "office");
    assertThat(spread - width("style='font-variant-ligatures:none'", "office"))
        .isCloseTo(50, within(0.02));
    // the same letter by itself is drawn plain afterwards
    assertThat(region("", "f").parts()).hasSize(1);
    assertThat(width("", "f")).isLessThan(width("", "\ufb03") / 2);
  }

  @Test
  void the_last_turn_holds_for_all_letters_that_follow() throws IOException {
    assertThat(region("rotate='30 -20'", "HHHH"))
        .isEqualTo(region("rotate='30 -20 -20 -20'", "HHHH"));
    assertThat(region("rotate='20'", "HH")).isEqualTo(region("rotate='20 20'", "HH"));
  }

  @Test
  void turns_go_on_over_the_elements_within() throws IOException {
    Region turned = region("rotate='10 20 30 30 30'", "HHHHH");
    String[] divided = {
      "H<tspan>HH</tspan>H<tspan>H</tspan>", "<tspan>H<tspan>H</tspan></tspan><tspan>HHH</tspan>"
    };
    for (String letters : divided) {
      Artwork art =
          read(
              "<text font-family='DejaVu Sans' font-size='100' y='150' rotate='10 20 30'>"
                  + letters
                  + "</text>");
      assertThat(art.colours().get(0).region()).isEqualTo(turned);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "textLength='600', Heron Hall",
    "textLength='600', AB",
    "textLength='600' lengthAdjust='spacingAndGlyphs', Heron Hall",
    "direction='rtl', Heron!",
    "kerning='0', AVA",
    "font-kerning='none', AVA",
    "dx='1ex', AVA",
    "letter-spacing='1ex', AVA",
    "style='font:300 60px DejaVu Sans', Heron",
    "style='font:xx-large DejaVu Sans', Heron",
    "'', \u0643\u062a\u0627\u0628",
    "'', H\u0e01\u0e33\u0301",
  })
  void text_that_cannot_be_set_as_a_browser_does_asks_for_paths(String how, String text)
      throws IOException {
    assertThat(read(text(how, text)).warnings())
        .anyMatch(w -> w.kind() == ArtworkWarning.Kind.TEXT_SET_OTHERWISE);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<text y='9' textLength='600'>A<tspan>B</tspan></text>",
        "<text y='9'>A<tspan textLength='90'>BC</tspan></text>",
        "<defs><text id='r'>Ref</text></defs><text y='9'>A<tref href='#r'/></text>",
        "<path id='p' d='M0 0H900' pathLength='9' fill='none'/>"
            + "<text><textPath href='#p' startOffset='2'>A</textPath></text>",
        "<path id='p' d='M0 0H900' fill='none'/><text><textPath href='#p'>A</textPath> B</text>",
        "<text y='9'>H<tspan baseline-shift='sub' font-size='30'>2</tspan>O</text>",
        "<text y='9'>H<tspan style='font-size:65%;baseline-shift:super'>2</tspan>O</text>",
        "<text y='9'><tspan opacity='0.5'>A<tspan>B</tspan></tspan></text>",
        "<style>.f{opacity:0.5}</style><text><tspan class='f'><tspan>B</tspan></tspan></text>",
      })
  void elements_of_a_text_that_are_set_otherwise_ask_for_paths(String body) throws IOException {
    assertThat(read("<g font-family='DejaVu Sans' font-size='60'>" + body + "</g>").warnings())
        .anyMatch(w -> w.kind() == ArtworkWarning.Kind.TEXT_SET_OTHERWISE);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<text y='9' textLength='600'>A</text>",
        "<path id='p' d='M0 0H900' fill='none'/>"
            + "<text><textPath href='#p' startOffset='2'>A</textPath></text>",
        "<path id='p' d='M0 0H900' pathLength='9' fill='none'/>"
            + "<text><textPath href='#p'>A</textPath></text>",
        "<text y='9'>H<tspan baseline-shift='sub'>2</tspan>O</text>",
        "<text y='9' style='font:bold 2em/1.2 DejaVu Sans' direction='ltr'>H</text>",
        "<text y='9' letter-spacing='0.2em' dx='1em 2%'>HK</text>",
      })
  void what_the_library_sets_as_a_browser_does_asks_for_nothing(String body) throws IOException {
    assertThat(read("<g font-family='DejaVu Sans' font-size='60'>" + body + "</g>").warnings())
        .noneMatch(w -> w.kind().changesLetters());
  }

  /** What browsers take the names for: CSS Fonts 4, 2.5, from a medium size of 16 px. */
  @ParameterizedTest
  @CsvSource({"xx-small, 9", "x-small, 10", "large, 18", "xx-large, 32", "xxx-large, 48"})
  void sizes_by_name_are_those_of_browsers(String name, double px) throws IOException {
    double at100 = width("", "H");
    assertThat(width("style='font-size:" + name + "'", "H"))
        .isCloseTo(at100 * px / 100, within(0.01));
  }

  @Test
  void what_fades_away_within_a_text_is_not_drawn() throws IOException {
    String font = "<text font-family='DejaVu Sans' font-size='100' y='150'>";
    Artwork art = read(font + "A<tspan opacity='0'>BBB</tspan></text>");
    assertThat(art.painted().width() / art.mmPerPx()).isCloseTo(width("", "A"), within(0.02));
    assertThat(read(font + "A<tspan opacity='0.5' fill='#c00'>B</tspan></text>").warnings())
        .anyMatch(w -> w.kind() == ArtworkWarning.Kind.SEE_THROUGH);
  }

  @Test
  void a_word_goes_on_over_elements_when_its_first_letter_is_made_large() throws IOException {
    String start = "<text font-family='DejaVu Sans' font-size='100' y='150'";
    Artwork art =
        read(
            start
                + " style='text-transform:capitalize'>he<tspan>ron</tspan>"
                + " <tspan>h</tspan>all</text>");
    assertThat(art.colours().get(0).region()).isEqualTo(region("", "Heron Hall"));
  }

  @ParameterizedTest
  @CsvSource({
    "uppercase, heron's nest, HERON'S NEST",
    "lowercase, HeRoN, heron",
    "capitalize, heron's nest, Heron's Nest"
  })
  void the_case_that_is_asked_for_is_drawn(String how, String text, String drawn)
      throws IOException {
    for (String style : new String[] {"style='text-transform:" + how + "'", "class='t'"}) {
      String rule = "<style>.t{text-transform:" + how + "}</style>";
      Artwork art = read(rule + text(style, text));
      assertThat(art.colours().get(0).region())
          .isEqualTo(read(text("", drawn)).colours().get(0).region());
      assertThat(art.warnings()).noneMatch(w -> w.kind().changesLetters());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "writing-mode:vertical-rl",
        "writing-mode:tb",
        "inline-size:100px",
        "shape-inside:url(#r)",
        "font-variant:small-caps",
        "font-variant-caps:all-small-caps",
        "font-feature-settings:\"smcp\"",
        "font-weight:300",
        "font-weight:900",
        "font-stretch:condensed",
        "font-style:italic",
        "dominant-baseline:hanging",
        "text-decoration:underline",
      })
  void what_is_set_otherwise_than_a_browser_does_is_said_and_stops_the_cut(String style)
      throws IOException {
    Artwork art = read("<g style='" + style + "'>" + text("", "Heron") + "</g>");
    if (style.contains("-size") || style.contains("shape-inside")) {
      // these hold for a text itself
      art = read(text("style='" + style + "'", "Heron"));
    }
    assertThat(art.warnings())
        .filteredOn(w -> w.kind() == ArtworkWarning.Kind.TEXT_SET_OTHERWISE)
        .singleElement()
        .satisfies(w -> assertThat(w.kind().changesLetters()).isTrue())
        .extracting(w -> Words.english().say(w.message()))
        .asString()
        .startsWith("the text \"Heron\"")
        .endsWith("turn the text into paths.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "font-weight:bold",
        "font-weight:400",
        "font-variant:normal",
        "writing-mode:horizontal-tb",
        "font-stretch:normal",
        "white-space:pre"
      })
  void what_is_set_as_asked_says_nothing(String style) throws IOException {
    Artwork art = read(text("style='" + style + "'", "Heron"));
    assertThat(art.warnings()).noneMatch(w -> w.kind().changesLetters());
  }

  @Test
  void a_character_beyond_the_basic_plane_that_is_drawn_stops_nothing() throws IOException {
    // a double-struck capital A
    Artwork art = read(text("", "a\ud835\udd38b"));
    assertThat(art.warnings()).isEmpty();
    assertThat(width("", "a\ud835\udd38b")).isGreaterThan(width("", "ab") + SIZE / 2);
  }

  @Test
  void one_that_no_font_can_draw_is_named_whole() throws IOException {
    Artwork art = read(text("", "a\ud83e\udd8bb"));
    assertThat(art.warnings())
        .filteredOn(w -> w.kind() == ArtworkWarning.Kind.CHARACTER_MISSING)
        .singleElement()
        .extracting(w -> Words.english().say(w.message()))
        .asString()
        .contains("U+1F98B");
  }

  /** The share of one that the other doesn't have. */
  private static double unlike(Region a, Region b) {
    return (a.minus(b).area() + b.minus(a).area()) / a.area();
  }

  private static Region region(String how, String text) throws IOException {
    return read(text(how, text)).colours().get(0).region();
  }

  private static double width(String how, String text) throws IOException {
    Artwork art = read(text(how, text));
    return art.painted().width() / art.mmPerPx();
  }

  private static String text(String how, String text) {
    return "<text font-family='DejaVu Sans' font-size='100' y='150' "
        + how
        + ">"
        + text.replace("'", "&apos;")
        + "</text>";
  }

  private static Artwork read(String body) throws IOException {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='-100 -900 2400 1800'>" + body + "</svg>";
    return (Artwork)
        SvgArtworkReader.read(
            new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)),
            "drawing",
            ArtworkOptions.ofWidth(1000).withShippedFontsOnly());
  }
}
