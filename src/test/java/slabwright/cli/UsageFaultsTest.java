package slabwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.units.Message;
import slabwright.words.Words;

/** Wrong use of the command line in the reader's own words. */
class UsageFaultsTest {
  private static final String PLAN = "sample-plans/bike-workshop.site.json";

  private static String said(Words words, String... args) {
    StringWriter err = new StringWriter();
    List<String> all = new ArrayList<>(List.of(args));
    all.add("--language=" + words.language());
    int code =
        SlabwrightCommand.run(
            new PrintWriter(new StringWriter()), new PrintWriter(err), all.toArray(String[]::new));
    assertThat(code).as(err.toString()).isEqualTo(2);
    return err.toString().lines().findFirst().orElse("");
  }

  private static void saysInBothLanguages(Message what, String... args) {
    for (Words words : List.of(Words.english(), Words.ofTag("es").orElseThrow())) {
      assertThat(said(words, args)).isEqualTo(words.say(what));
    }
  }

  @ParameterizedTest
  @CsvSource({"--nope", "--outt", "-q"})
  void an_option_that_there_is_not_is_said(String option) {
    saysInBothLanguages(Message.of("cli.usage.unknown-option", option), "check", PLAN, option);
  }

  @ParameterizedTest
  @ValueSource(strings = {"nonsense", "jobs"})
  void a_command_that_there_is_not_is_said(String command) {
    saysInBothLanguages(Message.of("cli.usage.unknown-word", command), command);
  }

  @ParameterizedTest
  @CsvSource({"tally,PLAN", "check,PLAN"})
  void a_plan_that_is_not_named_is_said_to_be_missing(String command, String missing) {
    saysInBothLanguages(Message.of("cli.usage.missing", missing), command);
  }

  @ParameterizedTest
  @ValueSource(strings = {"job", "sheets"})
  void an_option_without_which_nothing_is_done_is_said_with_its_value(String command) {
    String label = command.equals("job") ? "--out DIR" : "--out FILE.pdf";
    saysInBothLanguages(Message.of("cli.usage.missing", label), command, PLAN);
    saysInBothLanguages(Message.of("cli.usage.missing", label), command, PLAN, "--out");
  }

  @ParameterizedTest
  @ValueSource(strings = {"x", "1.5", ""})
  void a_number_that_is_none_is_said_with_its_option(String odd) {
    saysInBothLanguages(
        Message.of(
            "cli.usage.value-because", "--pixels N", Message.of("cli.usage.no-whole-number", odd)),
        "picture",
        PLAN,
        "--pixels=" + odd);
  }

  @ParameterizedTest
  @ValueSource(strings = {"furlongs"})
  void a_choice_that_there_is_not_is_said_with_all_that_there_are(String odd) {
    String back = "sample-plans/back-office.tape";
    saysInBothLanguages(
        Message.of("cli.usage.one-of", "--units NAME", "FEET_INCHES, METRIC"),
        "tape",
        back,
        "--units=" + odd);
  }

  @ParameterizedTest
  @ValueSource(strings = {"--out"})
  void an_option_that_is_given_twice_is_said(String option) {
    saysInBothLanguages(
        Message.of("cli.usage.twice", "--out DIR"), "job", PLAN, option, "a", option, "b");
  }

  @ParameterizedTest
  @ValueSource(strings = {"actuals"})
  void a_command_says_in_its_own_words_what_it_lacks(String command) {
    saysInBothLanguages(Message.of("cli.actuals.nothing-measured"), command, PLAN);
  }

  @ParameterizedTest
  @ValueSource(strings = {"--json=maybe"})
  void a_value_for_an_option_that_takes_none_is_said(String option) {
    saysInBothLanguages(Message.of("cli.usage.value", "--json"), "tally", PLAN, option);
  }
}
