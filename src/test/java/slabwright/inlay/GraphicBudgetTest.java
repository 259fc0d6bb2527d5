package slabwright.inlay;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.inlay.artwork.picture.TraceSettings;
import slabwright.site.ColourChoice;
import slabwright.site.StencilSpec;
import slabwright.units.Length;
import slabwright.units.Result;
import slabwright.words.Words;

/** Graphics made to overwhelm are told in a sentence before they are planned, 2 m wide. */
class GraphicBudgetTest {
  private static final StencilSpec USUAL = StencilSpec.forRoll(Length.mm(1220));

  private static final GraphicSettings USUAL_READING =
      new GraphicSettings(1, TraceSettings.TOLD, Map.of());

  @TempDir Path folder;

  private static String many(int count, IntFunction<String> one) {
    return IntStream.range(0, count).mapToObj(one).collect(Collectors.joining());
  }

  /** With a point, whatever the language. */
  private static String mm(double v) {
    return Double.toString(Math.rint(v * 1000) / 1000);
  }

  private Result<GraphicReader.Reading> read(String drawn, StencilSpec spec) throws IOException {
    String svg = "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 2000 2000'>";
    Path file = Files.writeString(folder.resolve("x.svg"), svg + drawn + "</svg>");
    return GraphicReader.read(file, 2000, spec, USUAL_READING);
  }

  private String refusal(String drawn) throws IOException {
    Result<GraphicReader.Reading> read = read(drawn, USUAL);
    assertThat(read).isInstanceOf(Result.Refused.class);
    return Words.english().say(((Result.Refused<GraphicReader.Reading>) read).message());
  }

  private static String dot(double x, double y, String ink) {
    return "<circle cx='" + mm(x) + "' cy='" + mm(y) + "' r='2' fill='" + ink + "'/>";
  }

  private static String dots(int across, String ink) {
    return many(across * across, i -> dot(10 + i % across * 12, 10 + i / across * 12, ink));
  }

  @Test
  void more_dots_than_are_planned_are_counted_in_the_sentence() throws IOException {
    assertThat(refusal(dots(90, "#803020")))
        .contains("8,100 outlines", "6,000", "fewer and larger dots");
  }

  @Test
  void dots_of_three_colours_count_together() throws IOException {
    List<String> inks = List.of("#803020", "#205080", "#307040");
    Random random = new Random(7);
    String drawn =
        many(
            6500,
            i -> dot(2000 * random.nextDouble(), 2000 * random.nextDouble(), inks.get(i % 3)));
    assertThat(refusal(drawn)).contains("outlines to cut, and one graphic may have 6,000");
  }

  @Test
  void markers_on_many_corners_are_counted_as_they_are_cut() throws IOException {
    String marker =
        "<marker id='m' markerWidth='4' markerHeight='4' refX='2' refY='2'"
            + " markerUnits='userSpaceOnUse'><circle cx='2' cy='2' r='2' fill='#803020'/></marker>";
    String path =
        many(80 * 80, i -> (i == 0 ? "M" : "L") + (10 + i % 80 * 20) + " " + (10 + i / 80 * 20));
    assertThat(refusal(marker + "<path fill='none' marker-mid='url(#m)' d='" + path + "'/>"))
        .contains("6,398 outlines");
  }

  /** Answering the question about dots makes room. */
  @Test
  void dots_that_are_left_bare_count_for_nothing() throws IOException {
    String drawn =
        "<rect width='2000' height='90' y='1900' fill='#205080'/>" + dots(100, "#803020");
    assertThat(refusal(drawn)).contains("10,001 outlines");
    StencilSpec bare =
        USUAL.withColours(List.of(new ColourChoice("#803020", ColourChoice.Use.LEAVE, "")));
    assertThat(read(drawn, bare).orThrow().graphic().layers()).hasSize(1);
  }

  @Test
  void five_thousand_dots_are_planned() throws IOException {
    String drawn = many(5000, i -> dot(10 + i % 71 * 28, 10 + i / 71 * 28, "#803020"));
    DyedGraphic graphic = read(drawn, USUAL).orThrow().graphic();
    assertThat(graphic.layers().get(0).artwork().parts()).hasSize(5000);
  }

  /** 600 outlines of 3983.2 mm, drawn at 2000 / 1978.3 of their size. */
  @Test
  void stripes_are_refused_by_the_length_of_their_outlines() throws IOException {
    String drawn =
        many(600, i -> "<rect x='" + mm(i * 3.3) + "' width='1.6' height='1990' fill='#803020'/>");
    assertThat(refusal(drawn)).contains("2,416 m (7,927 ft)", "1,000 m (3,281 ft)", "hatched");
  }

  @Test
  void a_wavy_outline_is_refused_by_its_corners() throws IOException {
    String saw = many(201_000, i -> "l.0045 1 .0045 -1");
    assertThat(refusal("<path fill='#803020' d='M0 0" + saw + "V1900H0z'/>"))
        .contains("corners to cut, and one graphic may have 400,000");
  }

  @Test
  void rings_in_rings_are_refused_as_their_curves_are_drawn() throws IOException {
    String drawn =
        many(
            2000,
            i ->
                "<circle cx='1000' cy='1000' r='"
                    + mm(0.495 * (i + 0.5))
                    + "' fill='none' stroke='#803020' stroke-width='.25'/>");
    assertThat(refusal(drawn))
        .contains("2,000 shapes", "more than 500,000 corners", "lay it smaller");
  }
}
