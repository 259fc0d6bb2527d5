package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javafx.css.Stylesheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The window's sheets against the library's theme that they are taken from. */
class ThemeSheetsTest {
  private static final Path DESK = Path.of("src/main/java/slabwright/desk");

  @TempDir Path folder;

  @Test
  void the_window_s_sheets_are_the_theme_without_rules_for_controls_it_does_not_have()
      throws IOException {
    for (String look : ThemeSheets.LOOKS) {
      Path made = ThemeSheets.write(look, folder);
      List<String> rules = rules(made.toUri().toURL());
      List<String> kept = rules(DeskWindow.class.getResource(ThemeSheets.name(look)));
      assertThat(kept.equals(rules)).as("made from the theme: " + look).isTrue();
      assertThat(rules).as("rules of " + look).hasSizeGreaterThan(300).doesNotHaveDuplicates();
    }
  }

  /** Each rule with all that it sets; the bytes of two sheets of the same rules may differ. */
  private static List<String> rules(URL sheet) throws IOException {
    return Stylesheet.loadBinary(sheet).getRules().stream()
        .map(
            r ->
                (r.getSelectors() + " " + r.getDeclarations())
                    .replaceAll("@[0-9a-f]+|(file|jar):[^<]*bss", ""))
        .toList();
  }

  @Test
  void a_rule_for_several_keeps_those_that_the_window_has() {
    assertThat(
            ThemeSheets.lean(
                "/* a */ .button, .table-view .button { a: b; } .spinner > .x { c: d; } .text { }"))
        .isEqualTo(".button { a: b; }\n.text { }\n");
  }

  @Test
  void no_control_in_the_window_is_one_whose_rules_are_left_out() throws IOException {
    Pattern control = Pattern.compile("javafx\\.scene\\.(?:control|chart|web)\\.(\\w+)");
    for (String source : sources()) {
      List<String> used =
          control.matcher(source).results().map(c -> styleClass(c.group(1))).toList();
      assertThat(used).doesNotContainAnyElementsOf(ThemeSheets.LEFT_OUT).doesNotContain("*");
    }
  }

  @Test
  void no_style_class_of_the_window_is_one_whose_rules_are_left_out() throws IOException {
    List<String> sources = sources();
    String own = Files.readString(Path.of("src/main/resources/slabwright/desk/desk.css"));
    for (String name : ThemeSheets.LEFT_OUT) {
      assertThat(sources).as(name).noneMatch(s -> s.contains("\"" + name + "\""));
      assertThat(own).doesNotContainPattern("\\." + name + "(?![\\w-])");
    }
  }

  /** As the toolkit names the style class of a control. */
  private static String styleClass(String control) {
    return control.replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
  }

  private static List<String> sources() throws IOException {
    try (Stream<Path> all = Files.walk(DESK)) {
      List<Path> files = all.filter(f -> f.toString().endsWith(".java")).toList();
      List<String> texts = new ArrayList<>();
      for (Path f : files) {
        texts.add(Files.readString(f));
      }
      return texts;
    }
  }
}
