package slabwright.tape.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Result;

/** The words of one line, taken from the left. What can't be read is thrown with its column. */
final class LineScanner {
  private static final Pattern WORD = Pattern.compile("±|[^\\s±]+");
  private static final Pattern DEGREES =
      Pattern.compile(
          "(\\d+(?:[.,]\\d+)?)\\s*(?:°|deg|degrees)(?:\\s*(\\d+(?:[.,]\\d+)?)\\s*['′])?");

  /** A word that can't be understood, for {@link TapeReader} to turn into a value. */
  static final class TapeSyntaxException extends Exception {
    private static final long serialVersionUID = 1;
    private final int column;

    // not kept when an exception is written out, which nobody does
    private final transient Message why;

    TapeSyntaxException(int column, Message why) {
      super(why.toString());
      this.column = column;
      this.why = why;
    }

    Message why() {
      return why;
    }

    int column() {
      return column;
    }
  }

  private record Word(String text, int column) {}

  private final String line;
  private final List<Word> words = new ArrayList<>();
  private int next;

  LineScanner(String line) {
    int comment = line.indexOf('#');
    this.line = comment < 0 ? line : line.substring(0, comment);
    Matcher m = WORD.matcher(this.line);
    while (m.find()) {
      words.add(new Word(m.group(), m.start() + 1));
    }
  }

  boolean isAtEnd() {
    return next >= words.size();
  }

  /** Column of the next word, from 1; past the last word where there is none. */
  int column() {
    return isAtEnd() ? line.stripTrailing().length() + 1 : words.get(next).column();
  }

  String peek() {
    return isAtEnd() ? "" : words.get(next).text().toLowerCase(Locale.ROOT);
  }

  /** Takes the next word if it is this one. */
  boolean accept(String word) {
    boolean is = peek().equals(word);
    next += is ? 1 : 0;
    return is;
  }

  /** Whether the word after the next is this one. */
  boolean nextIs(String word) {
    return next + 1 < words.size() && words.get(next + 1).text().equalsIgnoreCase(word);
  }

  boolean acceptPlusMinus() {
    return accept("±") || accept("+/-") || accept("+-");
  }

  void expect(String word, Message why) throws TapeSyntaxException {
    if (!accept(word)) {
      throw syntaxError(why);
    }
  }

  TapeSyntaxException syntaxError(Message why) {
    return new TapeSyntaxException(column(), why);
  }

  void expectEnd() throws TapeSyntaxException {
    if (!isAtEnd()) {
      throw syntaxError(Message.of("tape.line-scanner.not-expected", words.get(next).text()));
    }
  }

  String word(Message why) throws TapeSyntaxException {
    if (isAtEnd()) {
      throw syntaxError(why);
    }
    return words.get(next++).text();
  }

  /** Everything before the next of these words, as typed. */
  private String before(List<String> stops) {
    int from = next;
    while (!isAtEnd() && !stops.contains(peek())) {
      next++;
    }
    return from == next
        ? ""
        : line.substring(
            words.get(from).column() - 1,
            words.get(next - 1).column() - 1 + words.get(next - 1).text().length());
  }

  Length length(String... stops) throws TapeSyntaxException {
    int column = column();
    return above(column, lengthFromZero(stops));
  }

  Length lengthFromZero(String... stops) throws TapeSyntaxException {
    int column = column();
    Result<Length> length = Length.parse(before(List.of(stops)));
    if (length instanceof Result.Refused<Length> bad) {
      throw new TapeSyntaxException(column, bad.message());
    }
    return length.orThrow();
  }

  private static Length above(int column, Length length) throws TapeSyntaxException {
    if (length.mm() <= 0) {
      throw new TapeSyntaxException(
          column, Message.of("tape.line-scanner.not-more-than-nothing", length.typed()));
    }
    return length;
  }

  double degrees(String... stops) throws TapeSyntaxException {
    int column = column();
    String text = before(List.of(stops));
    Matcher m = DEGREES.matcher(text.replace('º', '°'));
    if (!m.matches()) {
      throw new TapeSyntaxException(column, Message.of("tape.line-scanner.no-angle", text));
    }
    return number(m.group(1)) + (m.group(2) == null ? 0 : number(m.group(2)) / 60);
  }

  static double number(String text) {
    return Double.parseDouble(text.replace(',', '.'));
  }
}
