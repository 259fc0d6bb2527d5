package slabwright.inlay.artwork.batik;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.inlay.artwork.batik.Svg.OPEN;
import static slabwright.inlay.artwork.batik.Svg.art;
import static slabwright.inlay.artwork.batik.Svg.page;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkWarning;
import slabwright.inlay.artwork.ArtworkWarning.Kind;
import slabwright.shape.Vec;
import slabwright.words.Words;

class PageEdgeCheckTest {
  @Test
  void what_reaches_over_the_page_is_named_with_the_place_where_it_is_cut() {
    Artwork art = art(page("<rect x='50' y='20' width='80' height='20' fill='#123456'/>"), 500);
    List<ArtworkWarning> cut = cut(art);
    assertThat(cut).hasSize(1);
    assertThat(Words.english().say(cut.get(0).message()))
        .startsWith("#123456 reaches over the edge of the page");
    Vec at = cut.get(0).place().orElseThrow();
    assertThat(at.x()).as("right edge of what is left").isCloseTo(500, within(0.1));
    assertThat(at.y()).isCloseTo(100, within(0.1));
  }

  @Test
  void each_colour_is_named_once() {
    String two =
        "<circle cx='0' cy='50' r='9' fill='#123456'/><circle cx='100' cy='50' r='9' fill='#123456'/>"
            + "<circle cx='50' cy='120' r='30' fill='#fedcba'/>";
    assertThat(cut(art(page(two), 500))).hasSize(2);
  }

  @Test
  void what_lies_on_the_page_up_to_its_edge_is_whole() {
    assertThat(cut(art(page("<rect width='100' height='100'/>"), 500))).isEmpty();
    assertThat(cut(art(page("<circle cx='50' cy='50' r='50'/>"), 500))).isEmpty();
  }

  @Test
  void a_curve_is_judged_by_itself_not_by_its_control_points() {
    String arch = "<path d='M10 60 C10 -20 90 -20 90 60 Z'/>";
    assertThat(cut(art(page(arch), 500))).isEmpty();
  }

  @Test
  void what_its_own_clip_keeps_on_the_page_is_not_cut_by_it() {
    String clipped =
        "<clipPath id='c'><rect x='10' y='10' width='50' height='50'/></clipPath>"
            + "<rect x='20' y='20' width='500' height='20' clip-path='url(#c)'/>";
    assertThat(cut(art(page(clipped), 500))).isEmpty();
  }

  @Test
  void a_background_may_bleed() {
    String bleed =
        "<rect x='-5' y='-5' width='110' height='110' fill='#eeeeee'/>"
            + "<rect x='20' y='20' width='50' height='20' fill='#123456'/>";
    assertThat(cut(art(page(bleed), 500))).isEmpty();
  }

  @Test
  void a_drawing_without_a_page_is_not_cut() {
    assertThat(cut(art(OPEN + "><rect x='-50' width='400' height='100'/></svg>", 600))).isEmpty();
  }

  private static List<ArtworkWarning> cut(Artwork art) {
    return art.warnings().stream().filter(w -> w.kind() == Kind.CUT_AT_PAGE).toList();
  }
}
