package slabwright.inlay.artwork.css;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.inlay.artwork.WarningCollector;

/** SVG 2: {@code paint-order: stroke} paints the stroke first, so that the fill lies over it. */
class PaintOrderRewriterTest {
  private static SvgElement rewritten(SvgElement child) {
    return rewritten(child, new MatchedRules());
  }

  private static SvgElement rewritten(SvgElement child, MatchedRules rules) {
    SvgElement svg = new SvgElement("svg");
    svg.children.add(child);
    PaintOrderRewriter.rewrite(svg, rules, new WarningCollector());
    assertThat(svg.elements()).hasSize(1);
    return svg.elements().get(0);
  }

  private static SvgElement path(String attribute, String value) {
    SvgElement e = new SvgElement("path");
    e.attributes.put("id", "p");
    e.attributes.put("d", "M0 0H9");
    e.attributes.put(attribute, value);
    return e;
  }

  private static void isSplit(SvgElement group) {
    assertThat(group.name).isEqualTo("g");
    assertThat(group.elements()).hasSize(2);
    SvgElement under = group.elements().get(0);
    SvgElement over = group.elements().get(1);
    assertThat(under.get("style")).contains("fill").contains("none").doesNotContain("stroke");
    assertThat(over.get("style")).contains("stroke").contains("none").doesNotContain("fill");
    assertThat(under.get("marker")).isEqualTo("none");
    assertThat(over.get("marker")).isEmpty();
    assertThat(List.of(under.get("id"), over.get("id"))).containsExactly("", "p");
    assertThat(List.of(under.get("d"), over.get("d"))).containsExactly("M0 0H9", "M0 0H9");
    for (SvgElement e : group.elements()) {
      assertThat(e.get("style")).doesNotContain("paint-order");
      assertThat(e.attributes).doesNotContainKey("paint-order");
    }
  }

  @Test
  void a_stroke_asked_first_is_an_element_of_its_own_under_the_fill() {
    isSplit(rewritten(path("paint-order", "stroke")));
    isSplit(rewritten(path("paint-order", " stroke fill")));
    isSplit(rewritten(path("paint-order", "markers stroke")));
    isSplit(rewritten(path("style", "paint-order: stroke")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"normal", "fill stroke", "markers fill", "markers", ""})
  void any_other_order_is_left_as_it_is(String order) {
    SvgElement path = path("paint-order", order);
    assertThat(rewritten(path)).isSameAs(path);
    assertThat(path.get("style")).isEmpty();
  }

  @Test
  void a_rule_of_a_style_sheet_counts_before_the_attribute_and_after_the_style() {
    MatchedRules under = new MatchedRules();
    under.add("svg > path", Map.of("paint-order", "stroke"));
    isSplit(rewritten(path("paint-order", "fill"), under));
    SvgElement own = path("style", "paint-order:fill");
    assertThat(rewritten(own, under)).isSameAs(own);
    MatchedRules over = new MatchedRules();
    over.add("path", Map.of("paint-order", "normal"));
    SvgElement asking = path("paint-order", "stroke");
    assertThat(rewritten(asking, over)).isSameAs(asking);
  }

  @Test
  void a_style_counts_before_the_attribute() {
    SvgElement path = path("paint-order", "stroke");
    path.attributes.put("style", "paint-order:fill");
    assertThat(rewritten(path)).isSameAs(path);
  }

  @Test
  void inside_a_group_it_is_done_too_and_a_group_itself_is_kept_whole() {
    SvgElement inside = new SvgElement("g");
    inside.children.add(path("paint-order", "stroke"));
    isSplit(rewritten(inside).elements().get(0));
    SvgElement asking = new SvgElement("g");
    asking.attributes.put("paint-order", "stroke");
    SvgElement plain = path("fill", "red");
    asking.children.add(plain);
    assertThat(rewritten(asking)).isSameAs(asking);
    assertThat(asking.elements()).containsExactly(plain);
  }
}
