package slabwright.inlay;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.batik.SvgArtworkReader;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.site.ColourChoice;
import slabwright.site.ColourChoice.Use;
import slabwright.site.StencilSpec;
import slabwright.units.Length;
import slabwright.words.Words;

class DyedGraphicTest {
  private static final String FLAG =
      "<svg xmlns='http://www.w3.org/2000/svg' width='60' height='20'>"
          + "<rect width='20' height='20' fill='#202020'/>"
          + "<rect x='20' width='20' height='20' fill='#e0c040'/>"
          + "<rect x='40' width='20' height='20' fill='#4060a0'/></svg>";

  @Test
  void with_nothing_chosen_every_colour_is_dyed_lightest_first() throws IOException {
    assertThat(graphic(List.of()).layers())
        .extracting(DyeLayer::colour)
        .containsExactly("#e0c040", "#4060a0", "#202020");
  }

  @Test
  void choices_are_laid_in_their_order() throws IOException {
    DyedGraphic graphic =
        graphic(List.of(dye("#202020"), choice("#e0c040", Use.LEAVE), dye("#4060a0")));
    assertThat(graphic.layers()).extracting(DyeLayer::colour).containsExactly("#202020", "#4060a0");
    assertThat(graphic.findings()).isEmpty();
  }

  @Test
  void a_colour_without_a_choice_is_left_as_floor_and_said() throws IOException {
    DyedGraphic graphic = graphic(List.of(dye("#202020"), dye("#4060a0")));
    assertThat(graphic.findings())
        .singleElement()
        .extracting(f -> Words.english().say(f.message()))
        .asString()
        .startsWith("#e0c040 has no choice yet");
  }

  @Test
  void a_chosen_colour_that_is_not_seen_is_said() throws IOException {
    DyedGraphic graphic =
        graphic(List.of(dye("#202020"), dye("#4060a0"), dye("#e0c040"), dye("#ffffff")));
    assertThat(graphic.findings())
        .singleElement()
        .extracting(f -> Words.english().say(f.message()))
        .asString()
        .contains("#ffffff is to be dyed but is not seen");
  }

  private static ColourChoice dye(String colour) {
    return choice(colour, Use.DYE);
  }

  private static ColourChoice choice(String colour, Use use) {
    return new ColourChoice(colour, use, "");
  }

  private static DyedGraphic graphic(List<ColourChoice> choices) throws IOException {
    StencilSpec usual = StencilSpec.forRoll(Length.mm(1220));
    StencilSpec spec = usual.withColours(choices);
    byte[] svg = FLAG.getBytes(StandardCharsets.UTF_8);
    return DyedGraphic.of(
        (Artwork)
            SvgArtworkReader.read(
                new ByteArrayInputStream(svg), "flag.svg", DyedGraphic.options(600, spec)),
        spec);
  }
}
