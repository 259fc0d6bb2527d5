package slabwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import slabwright.words.Words;

class ColourNamingTest {
  private static String said(String hex) {
    return Words.english().say(ColourNaming.of(hex));
  }

  private static List<String> said(List<String> colours, Map<String, String> own) {
    return ColourNaming.of(colours, own).values().stream().map(Words.english()::say).toList();
  }

  @Example
  void colours_are_called_as_people_call_them() {
    assertThat(said("#14505c")).isEqualTo("dark teal");
    assertThat(said("#ff0000")).isEqualTo("red");
    assertThat(said("#101010")).isEqualTo("black");
    assertThat(said("#7a1f1f")).isIn("maroon", "dark red");
    assertThat(said("#1b2d5c")).contains("blue");
    assertThat(said("#7f9fb2")).isEqualTo("light steel blue");
    assertThat(said("#8a5a2b")).contains("brown");
    assertThat(said("#d8813c")).contains("orange");
  }

  @Example
  void a_person_s_name_goes_before_any_other() {
    assertThat(said(List.of("#14505c", "#d8813c"), Map.of("#14505c", "Heron", "#d8813c", " ")))
        .startsWith("Heron")
        .doesNotContain(" ");
  }

  @Example
  void the_second_of_a_name_is_lighter_or_darker_and_the_third_is_numbered() {
    assertThat(said(List.of("#14505c", "#16555f", "#124b57", "#15525d"), Map.of()))
        .containsExactly("dark teal", "lighter dark teal", "darker dark teal", "dark teal 2");
  }

  @Property(tries = 300)
  void no_two_colours_of_a_set_share_a_name_and_none_is_a_number_sign(
      @ForAll @Size(min = 1, max = 12) List<@IntRange(max = 0xffffff) Integer> parts) {
    List<String> colours =
        parts.stream().distinct().map(p -> String.format(Locale.ROOT, "#%06x", p)).toList();
    List<String> names = said(colours, Map.of());
    assertThat(names).doesNotHaveDuplicates().hasSameSizeAs(colours);
    assertThat(names).noneMatch(n -> n.contains("#"));
  }

  @Example
  void dark_is_0_62_of_the_lightness_and_light_0_45_of_the_way_to_white() {
    assertThat(ColourName.DARK).isEqualTo(0.62);
    assertThat(ColourName.LIGHT).isEqualTo(0.45);
  }
}
