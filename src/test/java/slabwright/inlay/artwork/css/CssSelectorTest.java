package slabwright.inlay.artwork.css;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * CSS selectors held against {@code svg#top > g.blue.wide > path#p[fill='red'][d]}; what depends on
 * brothers and sisters counts as true.
 */
class CssSelectorTest {
  private static List<SvgElement> path() {
    SvgElement svg = new SvgElement("svg");
    svg.attributes.put("id", "top");
    SvgElement g = new SvgElement("g");
    g.attributes.put("class", " blue  wide ");
    SvgElement path = new SvgElement("path");
    path.attributes.put("id", "p");
    path.attributes.put("fill", "red");
    path.attributes.put("d", "M0 0");
    return List.of(svg, g, path);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "path | true",
        "* | true",
        "rect | false",
        "#p | true",
        "#q | false",
        "path#p | true",
        "rect#p | false",
        ".blue | false",
        "g path | true",
        "svg path | true",
        "g > path | true",
        "svg > path | false",
        "svg>g>path | true",
        "svg rect path | false",
        ".blue path | true",
        ".blue.wide > #p | true",
        ".blue.thin path | false",
        "#top .wide path | true",
        "[d] | true",
        "[x] | false",
        "[fill=red] | true",
        "[fill='blue'] | false",
        "[ fill = \"red\" ] | true",
        "[fill^=blu] | true",
        "path:hover | true",
        "path:nth-child(2n + 1) | true",
        "rect + path | true",
        "rect ~ path | true",
        "rect + circle | false",
        "path path | false"
      })
  void it_matches_where_css_does(String selector, boolean matches) {
    assertThat(new CssSelector(selector).matches(path())).isEqualTo(matches);
  }

  @Test
  void a_child_of_a_child_is_within_and_no_child() {
    SvgElement inner = new SvgElement("g");
    List<SvgElement> p = path();
    List<SvgElement> deep = List.of(p.get(0), p.get(1), inner, p.get(2));
    assertThat(new CssSelector(".blue > path").matches(deep)).isFalse();
    assertThat(new CssSelector(".blue path").matches(deep)).isTrue();
    assertThat(new CssSelector("svg > g > path").matches(deep)).isFalse();
    assertThat(new CssSelector("svg > .blue g > path").matches(deep)).isTrue();
  }

  @ParameterizedTest
  @CsvSource({"g path, path", "path.a#b.c, #b", "g > .a.b, .a", "rect *, *", "[fill], *"})
  void its_key_is_what_every_element_it_matches_has(String selector, String key) {
    assertThat(new CssSelector(selector).key()).isEqualTo(key);
  }
}
