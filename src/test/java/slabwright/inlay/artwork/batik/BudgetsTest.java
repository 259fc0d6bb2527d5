package slabwright.inlay.artwork.batik;

import static org.assertj.core.api.Assertions.assertThat;
import static slabwright.inlay.artwork.batik.Svg.art;
import static slabwright.inlay.artwork.batik.Svg.page;
import static slabwright.inlay.artwork.batik.Svg.refusal;

import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.inlay.artwork.ArtworkRefusal.Reason;

/** Drawings of a few lines that would grow without end are refused before they are unfolded. */
@Timeout(60)
class BudgetsTest {
  private static final int DEEP = 9;

  private static String each(int n, IntFunction<String> one) {
    return IntStream.range(0, n).mapToObj(one).collect(Collectors.joining());
  }

  /** Patterns in patterns, eight at each level; {@code inside} fills level {@code i}. */
  private static String patterns(String inside) {
    return "<defs>"
        + each(
            DEEP,
            i ->
                "<pattern id='p"
                    + i
                    + "' width='9' height='9'>"
                    + inside.replace("@", "" + (i + 1))
                    + "</pattern>")
        + "<pattern id='p"
        + DEEP
        + "' width='9' height='9'><rect width='1' height='1'/></pattern>"
        + "</defs>";
  }

  private static String path(int corners) {
    return "M0 0" + each(corners, i -> "L" + (i % 97) + " " + (i / 97 + i % 2));
  }

  @Test
  void patterns_in_patterns_by_class_are_counted() {
    String rules = each(DEEP + 1, i -> ".c" + i + "{fill:url(#p" + i + ")}");
    String inside = each(8, k -> "<rect class='c@' x='" + k + "' width='1' height='1'/>");
    String svg = "<style>" + rules + "</style>" + patterns(inside);
    assertThat(refusal(page(svg + "<rect class='c0' width='50' height='50'/>")).reason())
        .isEqualTo(Reason.USE_TOO_MANY);
  }

  @Test
  void patterns_in_patterns_by_a_fill_that_is_handed_down_are_counted() {
    String inside =
        "<g fill='url(#p@)'>" + each(8, k -> "<rect x='" + k + "' width='1' height='1'/>") + "</g>";
    String svg = patterns(inside) + "<rect fill='url(#p0)' width='50' height='50'/>";
    assertThat(refusal(page(svg)).reason()).isEqualTo(Reason.USE_TOO_MANY);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<style>.m{marker-mid:url(#k)}</style><path class='m' d='@'/>",
        "<style>path{marker:url(#k)}</style><path d='@'/>",
        "<path marker-mid='url(#k)' d='@'/>",
        "<g style='marker-mid:url(#k)'><path d='@'/></g>"
      })
  void a_marker_counts_once_for_each_corner(String marked) {
    String marker =
        "<marker id='k'>"
            + each(300, i -> "<rect x='" + i + "' width='1' height='1'/>")
            + "</marker>";
    String bomb = marker + marked.replace("@", path(2000));
    assertThat(refusal(page(bomb)).reason()).isEqualTo(Reason.USE_TOO_MANY);
    assertThat(art(page(marker + marked.replace("@", path(5))), 1000).colours()).isNotEmpty();
  }

  @Test
  void many_style_rules_for_many_elements_are_counted_before_they_are_tried() {
    String rules = "<style>" + each(10_000, i -> ".c" + i + " *{fill:#123456}") + "</style>";
    String shapes = each(2_500, i -> "<path d='M0 0h1v1z'/>");
    assertThat(refusal(page(rules + shapes)).reason()).isEqualTo(Reason.USE_TOO_MANY);
  }

  @Test
  void a_pattern_by_class_that_holds_itself_is_a_ring() {
    String svg =
        "<style>.a{fill:url(#p)}</style><pattern id='p' width='9' height='9'>"
            + "<rect class='a' width='3' height='3'/></pattern><rect class='a' width='9' height='9'/>";
    assertThat(refusal(page(svg)).reason()).isEqualTo(Reason.USE_LOOP);
  }

  @Test
  void a_rule_for_elsewhere_makes_no_ring() {
    String svg =
        "<style>g>.a{fill:url(#p)}</style><pattern id='p' width='9' height='9'>"
            + "<rect class='a' width='3' height='3'/></pattern>"
            + "<g><rect class='a' width='9' height='9'/></g>";
    assertThat(art(page(svg), 1000).colours()).hasSize(1);
  }

  @Test
  void crossings_are_counted_before_they_are_noded() {
    Random random = new Random(1);
    String points =
        each(2000, i -> random.nextInt(100_000) / 1000.0 + "," + random.nextInt(100) + " ");
    assertThat(refusal(page("<polygon points='" + points + "'/>")).reason())
        .isEqualTo(Reason.TOO_LARGE);
    String clip = "<clipPath id='c'><polygon points='" + points + "'/></clipPath>";
    String clipped = clip + "<rect width='90' height='90' clip-path='url(#c)'/>";
    assertThat(refusal(page(clipped)).reason()).isEqualTo(Reason.TOO_LARGE);
  }

  @Test
  void many_lines_of_fine_dashes_are_counted() {
    String line =
        "<path stroke='red' stroke-width='2' stroke-dasharray='.03' fill='none' d='M0 0H400'/>";
    assertThat(refusal(page(line.repeat(300))).reason()).isEqualTo(Reason.TOO_LARGE);
    assertThat(art(page(line), 1000).colours()).isNotEmpty();
  }
}
