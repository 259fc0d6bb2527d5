package slabwright.fuzz;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;

/** Spoils a text as careless hands and broken programs do: its numbers, words, lines and signs. */
final class TextMutator {
  private static final Pattern TOKENS =
      Pattern.compile("-?\\d+(?:\\.\\d+)?(?:[eE][-+]?\\d+)?|[\\p{L}_:#-]+|\\s+|.", Pattern.DOTALL);
  private static final int LONGEST = 400_000;
  private static final int DEEP = 3000;

  static final List<String> NUMBERS =
      List.of(
          "0",
          "-0",
          "-1",
          "1",
          "0.5",
          "1e-9",
          "5e-324",
          "1e9",
          "1e15",
          "-1e15",
          "1e308",
          "1e400",
          "-1e308",
          "2147483648",
          "-2147483649",
          "99999999999999999999999999999999",
          "0.00000000000000000000000000000001",
          "NaN",
          "Infinity",
          "1,5",
          "0x10",
          "");

  private static final List<String> SIGNS =
      List.of(
          "\u0000", "\ufeff", "\ud800", "\u202e", "\t", "\r", "\n", "'", "\"", "<", ">", "&", "{",
          "}", "[", "]", "(", ")", "%", "#", "=", "\\", "/", "null", "é", "🦩", "½", "″", "-",
          "..");

  private final Random random;
  private final List<String> snippets;

  /**
   * A mutator.
   *
   * @param snippets of the kind of text at hand, put in now and then
   */
  TextMutator(Random random, List<String> snippets) {
    this.random = random;
    this.snippets = snippets;
  }

  String spoil(String text) {
    String spoilt = text;
    int times = 1 + random.nextInt(1 + random.nextInt(5));
    for (int i = 0; i < times; i++) {
      spoilt = once(spoilt);
    }
    return spoilt.length() > LONGEST ? spoilt.substring(0, LONGEST) : spoilt;
  }

  private String once(String text) {
    if (text.isEmpty()) {
      return pick(SIGNS);
    }
    return switch (random.nextInt(10)) {
      case 0, 1, 2 -> token(text, true);
      case 3, 4 -> token(text, false);
      case 5 -> lines(text);
      case 6 -> piece(text);
      case 7 -> insert(text, pick(SIGNS));
      case 8 -> snippets.isEmpty() ? token(text, true) : insertAtTag(text, pick(snippets));
      default -> rarely(text);
    };
  }

  private String token(String text, boolean number) {
    List<String> tokens = new ArrayList<>();
    TOKENS.matcher(text).results().forEach(m -> tokens.add(m.group()));
    List<Integer> of = new ArrayList<>();
    for (int i = 0; i < tokens.size(); i++) {
      if (!tokens.get(i).isBlank() && isNumber(tokens.get(i)) == number) {
        of.add(i);
      }
    }
    if (of.isEmpty()) {
      return piece(text);
    }
    int at = of.get(random.nextInt(of.size()));
    int other = of.get(random.nextInt(of.size()));
    String old = tokens.get(at);
    switch (random.nextInt(5)) {
      case 0 -> tokens.set(at, "");
      case 1 -> tokens.set(at, old + " " + old);
      case 2 -> {
        tokens.set(at, tokens.get(other));
        tokens.set(other, old);
      }
      default -> tokens.set(at, number ? otherNumber(old) : tokens.get(other));
    }
    return String.join("", tokens);
  }

  private static boolean isNumber(String token) {
    return token.chars().anyMatch(Character::isDigit);
  }

  /** One that stands for nothing, or the old one a little or a lot off. */
  String otherNumber(String old) {
    try {
      double v = Double.parseDouble(old);
      return switch (random.nextInt(8)) {
        case 0 -> String.valueOf(-v);
        case 1 -> String.valueOf(v * 1000);
        case 2 -> String.valueOf(v / 1000);
        case 3 -> String.valueOf((long) v + 1);
        case 4 -> String.valueOf(v * (0.5 + random.nextDouble()));
        default -> pick(NUMBERS);
      };
    } catch (NumberFormatException e) {
      return pick(NUMBERS);
    }
  }

  private String lines(String text) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    if (lines.size() < 2) {
      return piece(text);
    }
    int at = random.nextInt(lines.size());
    int other = random.nextInt(lines.size());
    switch (random.nextInt(3)) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(other, lines.get(at));
      default -> lines.set(at, lines.set(other, lines.get(at)));
    }
    return String.join("\n", lines);
  }

  /** A piece cut out, doubled or put elsewhere. */
  private String piece(String text) {
    int from = random.nextInt(text.length());
    int to = Math.min(text.length(), from + 1 + random.nextInt(60));
    String cut = text.substring(0, from) + text.substring(to);
    return switch (random.nextInt(3)) {
      case 0 -> cut;
      case 1 -> text.substring(0, to) + text.substring(from);
      default -> insert(cut, text.substring(from, to));
    };
  }

  private String insert(String text, String what) {
    int at = random.nextInt(text.length() + 1);
    return text.substring(0, at) + what + text.substring(at);
  }

  private String insertAtTag(String text, String what) {
    int at = text.indexOf('>', random.nextInt(text.length()));
    return at < 0 ? insert(text, what) : text.substring(0, at + 1) + what + text.substring(at + 1);
  }

  private String rarely(String text) {
    int at = random.nextInt(text.length());
    String piece = text.substring(at, Math.min(text.length(), at + 1 + random.nextInt(80)));
    return switch (random.nextInt(6)) {
      case 0 -> text.substring(0, at);
      case 1 -> insert(text, piece.repeat(2 + random.nextInt(400)));
      case 2 -> insert(text, pick(List.of("[", "{\"a\":", "<g>", "(", "[[")).repeat(DEEP));
      case 3 -> text.substring(at);
      case 4 -> text + text;
      default -> insert(text, "9".repeat(1 + random.nextInt(400)));
    };
  }

  private String pick(List<String> from) {
    return from.get(random.nextInt(from.size()));
  }
}
