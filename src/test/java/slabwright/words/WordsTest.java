package slabwright.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.units.Message;

class WordsTest {
  private final Words words = Words.english();

  @Test
  void a_message_becomes_its_sentence_with_the_values_in_place() {
    assertThat(words.say(Message.of("words.trial.plain", "A", 3))).isEqualTo("A's 3rd wall");
  }

  @Test
  void a_message_inside_a_message_is_said_in_its_place() {
    Message inner = Message.of("words.trial.plain", "B", 2);
    assertThat(words.say("words.trial.outer", inner)).isEqualTo("(B's 2rd wall)");
  }

  @Test
  void a_line_of_its_own_begins_with_a_capital() {
    assertThat(words.line(Message.of("words.trial.plain", "\u00f8", 2)))
        .isEqualTo("\u00d8's 2rd wall");
    assertThat(words.line(Message.of("words.trial.outer", "b"))).isEqualTo("(b)");
  }

  @ParameterizedTest
  @CsvSource({"0.25, 0.3", "0.15, 0.2", "2.5, 2.5", "-0.25, -0.3", "1234.5, 1234.5"})
  void a_number_is_rounded_half_up_as_it_is_written(double value, String text) {
    assertThat(words.say("words.trial.tenth", value)).isEqualTo(text + " mm");
    assertThat(words.say("words.trial.tenth", value))
        .isEqualTo(String.format(Locale.ROOT, "%.1f mm", value));
  }

  @Test
  void what_a_file_says_is_quoted_on_one_line_and_never_without_end() {
    assertThat(words.say("words.trial.quoted", "a\nb\u001b[2J"))
        .isEqualTo("\"a b [2J\" is no length.");
    assertThat(words.say("words.trial.quoted", "9".repeat(5000)))
        .hasSizeLessThan(300)
        .endsWith("9…\" is no length.");
    assertThat(words.say("words.trial.outer", "two\nlines")).isEqualTo("(two\nlines)");
  }

  @Test
  void whole_numbers_have_no_commas_unless_asked() {
    assertThat(words.say("words.trial.plain", "A", 12345)).isEqualTo("A's 12345rd wall");
    assertThat(words.say("words.trial.grouped", 12345)).isEqualTo("12,345");
  }

  @Test
  void one_and_many_are_told_apart() {
    assertThat(words.say("words.trial.choice", 1)).isEqualTo("1 seam");
    assertThat(words.say("words.trial.choice", 2)).isEqualTo("2 seams");
    assertThat(words.say("words.trial.choice", 0)).isEqualTo("0 seams");
  }

  @Test
  void another_language_takes_its_own_words_and_english_where_it_has_none() {
    Words german = Words.of(Locale.GERMAN);
    assertThat(german.say("words.trial.tenth", 2.5)).isEqualTo("genau 2,5 mm");
    assertThat(german.say("words.trial.plain", "A", 3)).isEqualTo("A's 3rd wall");
  }

  @Test
  void spanish_has_the_points_and_commas_of_the_americas_wherever_it_is_read() {
    for (String tag : List.of("es", "es-MX", "es-ES")) {
      Words spanish = Words.ofTag(tag).orElseThrow();
      assertThat(spanish.say("words.trial.tenth", 2.5)).contains("2.5");
      assertThat(spanish.say("words.trial.grouped", 12345)).isEqualTo("12,345");
      assertThat(spanish.language()).isEqualTo("es");
    }
  }

  @Test
  void a_language_that_nobody_has_written_has_no_words() {
    assertThat(Words.ofTag("en-GB")).isPresent();
    assertThat(Words.ofTag("pl")).isEmpty();
    assertThat(Words.ofTag("")).isEmpty();
  }

  @Test
  void a_key_without_words_is_a_fault_that_names_it() {
    assertThatThrownBy(() -> words.say("words.trial.nothing"))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("words.trial.nothing");
    assertThatThrownBy(() -> words.say("nowhere.at.all"))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("nowhere.at.all");
  }
}
