package slabwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import slabwright.words.Words;

/** In whose words the commands speak. */
class LanguageOptionTest {
  private static final String PLAN = "sample-plans/bike-workshop.site.json";

  private static final String TALLY_HELP = "slabwright.tally.usage.description";

  private static String said(int code, String... args) {
    StringWriter both = new StringWriter();
    PrintWriter to = new PrintWriter(both);
    assertThat(SlabwrightCommand.run(to, to, args)).isEqualTo(code);
    return both.toString();
  }

  /** What is said of the plan in a language when nothing is wrong. */
  private static String right(String language) {
    return Words.ofTag(language)
        .orElseThrow()
        .say("cli.check.nothing-wrong", "Spoke Street Bike Workshop", 1, 4);
  }

  @Test
  void commands_and_their_help_speak_the_language_asked_for_wherever_it_is_written() {
    assertThat(said(0, "check", PLAN, "--language", "es")).contains(right("es"));
    assertThat(said(0, "--language=es-MX", "check", PLAN)).contains(right("es"));
    assertThat(said(0, "check", PLAN, "--language", "en")).contains(right("en"));
    assertThat(said(0, "tally", "--help", "--language", "es"))
        .contains(Words.ofTag("es").orElseThrow().bundle("cli-options").getString(TALLY_HELP));
    assertThat(said(3, "check", "no.site.json", "--language", "es")).doesNotContain("there is");
  }

  @Test
  void the_systems_language_is_spoken_when_none_is_asked_for() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("es-MX"));
      assertThat(said(0, "check", PLAN)).contains(right("es"));
      Locale.setDefault(Locale.forLanguageTag("pl-PL"));
      assertThat(said(0, "check", PLAN)).contains(right("en"));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void json_is_the_same_in_every_language() {
    String english = said(0, "tally", PLAN, "--json", "--language", "en");
    assertThat(said(0, "tally", PLAN, "--json", "--language", "es")).isEqualTo(english);
  }

  @Test
  void a_language_that_nobody_has_written_is_refused_with_the_choice() {
    assertThat(said(2, "check", PLAN, "--language", "pl"))
        .containsPattern(Spoken.of("cli.slabwright.no-language", "pl"));
  }
}
