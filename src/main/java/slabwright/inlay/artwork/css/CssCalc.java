package slabwright.inlay.artwork.css;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Evaluates {@code calc()} (CSS Values 4, sums and products) to a plain number of px or a
 * percentage. A sum of both is settled by the length that a percentage is of.
 */
final class CssCalc {
  private static final Pattern TERM =
      Pattern.compile("\\s*([+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:e[+-]?\\d+)?)([a-z%]*)\\s*");
  private static final int DEEPEST = 30;

  /** A number, or a length as px and percent together. */
  private record Amount(double px, double percent, boolean length) {
    Amount plus(Amount other, int sign) {
      if (length != other.length) {
        throw new NumberFormatException("a number and a length");
      }
      return new Amount(px + sign * other.px, percent + sign * other.percent, length);
    }

    Amount times(double k) {
      return new Amount(px * k, percent * k, length);
    }
  }

  private final String text;
  private final double whole;
  private int at;

  private CssCalc(String text, double whole) {
    this.text = text;
    this.whole = whole;
  }

  /**
   * The value with every {@code calc()} replaced; empty when one can't be evaluated.
   *
   * @param whole what 100 % is, px
   */
  static Optional<String> plain(String value, double whole) {
    String s = value.toLowerCase(Locale.ROOT);
    int start = s.indexOf("calc(");
    if (start < 0) {
      return Optional.of(value);
    }
    CssCalc calc = new CssCalc(s, whole);
    calc.at = start;
    try {
      String number = calc.print(calc.unit(0));
      return plain(value.substring(0, start) + number + value.substring(calc.at), whole);
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  private String print(Amount a) {
    double px = a.percent == 0 ? a.px : a.px + a.percent / 100 * whole;
    if (!Double.isFinite(px)) {
      throw new NumberFormatException("no finite number");
    }
    return String.valueOf(px);
  }

  private Amount sum(int depth) {
    Amount all = product(depth);
    while (next('+') || next('-')) {
      int sign = text.charAt(at++) == '+' ? 1 : -1;
      all = all.plus(product(depth), sign);
    }
    return all;
  }

  private Amount product(int depth) {
    Amount all = unit(depth);
    while (next('*') || next('/')) {
      boolean over = text.charAt(at++) == '/';
      Amount by = unit(depth);
      if (by.length && (over || all.length)) {
        throw new NumberFormatException("a length by a length");
      }
      all = by.length ? by.times(all.px) : all.times(over ? 1 / by.px : by.px);
    }
    return all;
  }

  private Amount unit(int depth) {
    skipSpace();
    if (depth > DEEPEST) {
      throw new NumberFormatException("too deep");
    }
    if (text.startsWith("calc(", at)) {
      at += 4;
    }
    if (next('(')) {
      at++;
      Amount inside = sum(depth + 1);
      if (!next(')')) {
        throw new NumberFormatException("a bracket is open");
      }
      at++;
      return inside;
    }
    return term();
  }

  private Amount term() {
    Matcher m = TERM.matcher(text);
    m.region(at, text.length());
    if (!m.lookingAt()) {
      throw new NumberFormatException("no number");
    }
    at = m.end();
    double number = Double.parseDouble(m.group(1));
    return switch (m.group(2)) {
      case "" -> new Amount(number, 0, false);
      case "%" -> new Amount(0, number, true);
      default ->
          new Amount(number * CssLength.pxPer(m.group(2)).orElseThrow(CssCalc::unknown), 0, true);
    };
  }

  private static NumberFormatException unknown() {
    return new NumberFormatException("an unknown unit");
  }

  private boolean next(char c) {
    skipSpace();
    return at < text.length() && text.charAt(at) == c;
  }

  private void skipSpace() {
    while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
  }
}
