package slabwright.inlay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.site.ColourChoice;
import slabwright.site.GraphicSource;
import slabwright.site.StencilSpec;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.words.Words;

/** From a small drawing's file to its dyed colours, or to the sentence why not. */
class GraphicReaderTest {
  private static final StencilSpec SPEC = StencilSpec.forRoll(Length.mm(1220));
  private static final String TWO =
      "<svg xmlns='http://www.w3.org/2000/svg'><path d='M0 0H60V50H0Z' fill='#203040'/>"
          + "<path d='M60 0H100V50H60Z' fill='#a04020'/></svg>";

  private static final GraphicSettings HOW = GraphicSettings.of(GraphicSource.ITSELF);

  @TempDir Path folder;

  private Result<GraphicReader.Reading> read(String text, StencilSpec spec) throws IOException {
    Path file = folder.resolve("logo.svg");
    Files.writeString(file, text);
    return GraphicReader.read(file, 1_000, spec, HOW);
  }

  private static String said(Result<?> result) {
    Message why = ((Result.Refused<?>) result).refusals().get(0).message();
    return Words.english().say(why);
  }

  @Test
  void a_drawing_comes_back_at_its_width_with_the_colours_that_are_dyed() throws IOException {
    GraphicReader.Reading reading = read(TWO, SPEC).orThrow();
    assertThat(reading.artwork().painted().width()).isCloseTo(1_000, within(0.01));
    assertThat(reading.graphic().layers()).hasSize(2);
    assertThat(reading.graphic().layers().get(0).colour()).isIn("#203040", "#a04020");
  }

  @Test
  void a_file_that_is_not_there_and_a_folder_are_named_by_their_path() throws IOException {
    Path none = folder.resolve("none.svg");
    assertThat(said(GraphicReader.read(none, 1_000, SPEC, HOW)))
        .isEqualTo("There is no graphic " + none + "; check the path.");
    assertThat(said(GraphicReader.read(folder, 1_000, SPEC, HOW))).contains("There is no graphic");
  }

  @Test
  void a_file_that_is_no_drawing_is_refused_as_its_reader_says() throws IOException {
    assertThat(said(read("%!PS-Adobe-3.0 EPSF-3.0", SPEC))).contains("logo.svg").contains("EPS");
  }

  @Test
  void where_no_colour_is_dyed_the_colours_to_choose_among_are_named() throws IOException {
    StencilSpec none =
        SPEC.withColours(
            List.of(
                new ColourChoice("#203040", ColourChoice.Use.LEAVE, ""),
                new ColourChoice("#a04020", ColourChoice.Use.LEAVE, "")));
    assertThat(said(read(TWO, none)))
        .contains("none of its colors is dyed")
        .contains("#203040, #a04020");
  }

  /** Twelve bars of 50 m by 1 m, so 12 · 102 m of outline. */
  @Test
  void more_than_can_be_planned_is_refused_under_its_name() throws IOException {
    StringBuilder bars = new StringBuilder("<svg xmlns='http://www.w3.org/2000/svg'><path d='");
    for (int i = 0; i < 11; i++) {
      bars.append('M').append(9 * i).append(" 0h1v50h-1z");
    }
    Path file = folder.resolve("logo.svg");
    Files.writeString(file, bars.append("M99 0h1v50h-1z'/></svg>"));
    assertThat(said(GraphicReader.read(file, 100_000, SPEC, HOW)))
        .startsWith("logo.svg: ")
        .contains("1,224 m");
  }

  @Test
  void a_width_that_no_graphic_has_is_told_in_plain_figures() throws IOException {
    Path file = folder.resolve("logo.svg");
    Files.writeString(file, TWO);
    assertThat(said(GraphicReader.read(file, 1_000_000, SPEC, HOW)))
        .contains("a width of 1,000,000 mm;");
    assertThat(said(GraphicReader.read(file, 9.5, SPEC, HOW))).contains("a width of 9.5 mm;");
  }
}
