package slabwright.cli;

import java.util.Arrays;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import slabwright.units.Message;
import slabwright.words.Words;

/** What a key reads in English, to look for in what a command printed. */
final class Spoken {
  /** Stands for a value or words that are not compared. */
  static final String ANY = "§";

  private static final Words WORDS = Words.english();

  private Spoken() {}

  /** The sentence of a key with its values. */
  static Pattern of(String key, Object... values) {
    return pattern(WORDS.say(key, values));
  }

  /** The same with a capital letter, as it begins a line. */
  static Pattern line(String key, Object... values) {
    return pattern(WORDS.line(Message.of(key, values)));
  }

  private static Pattern pattern(String sentence) {
    return Pattern.compile(
        Arrays.stream(sentence.split(ANY, -1))
            .map(Pattern::quote)
            .collect(Collectors.joining(".*")));
  }
}
