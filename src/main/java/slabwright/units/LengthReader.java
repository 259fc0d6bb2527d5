package slabwright.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads lengths as people write them on site: {@code 24' 6 1/2"}, {@code 24-6 1/2} (feet and
 * inches), {@code 24 ft 6.5 in}, {@code 7.47 m}, {@code 7,47 m}, {@code 7470 mm} and sums such as
 * {@code 12' + 3' 4"} or {@code 3 m - 20 mm}. The arithmetic is decimal and exact; thirds are kept
 * to 34 digits.
 *
 * <p>Refused: a number without a unit (only 0 needs none), a comma that may be a decimal or a
 * thousands mark ({@code 7,470}), anything left over, more than 1,000 km.
 */
final class LengthReader {
  private static final String NUMBER = "\\d+(?:[.,]\\d+)?|[.,]\\d+";
  private static final String WHOLE_AND_FRACTION =
      "(?:(" + NUMBER + ")(?!\\d*/)(?:\\s+|-)?)?(?:(\\d+)/(\\d+))?";
  private static final Pattern PIECE =
      Pattern.compile("\\s*" + WHOLE_AND_FRACTION + "\\s*([a-zA-Z]+\\.?|'|\")?");
  private static final Pattern FEET_DASH_INCHES =
      Pattern.compile(
          "\\s*(\\d+)\\s?'?-\\s?(\\d+(?:\\.\\d+)?(?:\\s+\\d+/\\d+)?|\\d+/\\d+)\\s*(?:\"|in)?\\s*");
  private static final Pattern TERM = Pattern.compile("^\\s*-|\\s[+-]\\s|\\+");
  private static final Pattern UNCERTAIN_COMMA = Pattern.compile("\\d,\\d{3}(?!\\d)");

  /** Longer than any floor, and far below what a number of the computations holds. */
  private static final BigDecimal MOST_MM = BigDecimal.valueOf(1_000_000_000);

  /** How much of a text that is too long is shown. */
  private static final int HEAD = 30;

  private static final String TOO_LONG = "units.length-reader.longer-than-any-floor";

  private LengthReader() {}

  static Result<Length> read(String text) {
    String plain = plain(text);
    if (plain.isBlank()) {
      return Result.refused(Message.of("units.length-reader.no-length-given"));
    }
    if (UNCERTAIN_COMMA.matcher(plain).find()) {
      return Result.refused(Message.of("units.length-reader.can-be-read-two-ways", text));
    }
    if (plain.strip().equals("0")) {
      return Result.ok(new Length(0, text.strip()));
    }
    BigDecimal sum = BigDecimal.ZERO;
    for (Term term : terms(plain)) {
      Optional<BigDecimal> mm = term(term.text());
      if (mm.isEmpty()) {
        return Result.refused(refusal(text, term.text()));
      }
      sum = term.minus() ? sum.subtract(mm.get()) : sum.add(mm.get());
    }
    if (sum.abs().compareTo(MOST_MM) > 0) {
      return Result.refused(Message.of("units.length-reader.longer-than-any-floor", head(text)));
    }
    return Result.ok(new Length(sum.doubleValue(), text.strip()));
  }

  private static String head(String text) {
    return text.length() <= HEAD ? text : text.substring(0, HEAD) + "…";
  }

  /**
   * Reads a line in a field that states a unit: a term that leaves its unit out has that one. What
   * is kept as typed has the unit, so that it can be read again anywhere.
   */
  static Result<Length> read(String text, BareUnit bare) {
    String plain = plain(text);
    if (plain.isBlank()
        || plain.strip().equals("0")
        || UNCERTAIN_COMMA.matcher(plain).find()
        || read(text).isOk()) {
      return read(text);
    }
    StringBuilder full = new StringBuilder();
    for (Term term : terms(plain)) {
      Result<String> whole = bare.completed(term.text());
      if (whole instanceof Result.Refused<String> refused) {
        return Result.refused(refused.message());
      }
      if (!full.isEmpty() || term.minus()) {
        full.append(full.isEmpty() ? "-" : term.minus() ? " - " : " + ");
      }
      full.append(whole.orThrow().strip());
    }
    Result<Length> read = read(full.toString());
    boolean told =
        read instanceof Result.Refused<Length> refused && refused.message().key().equals(TOO_LONG);
    return read.isOk() || told ? read : Result.refused(refusal(text, plain));
  }

  /** The first unit that is written out in a length; feet for {@code 24-6}. */
  static Optional<LengthUnit> firstUnit(String text) {
    String plain = plain(text);
    if (FEET_DASH_INCHES.matcher(plain).matches()) {
      return Optional.of(LengthUnit.FOOT);
    }
    return PIECE
        .matcher(plain)
        .results()
        .flatMap(m -> Optional.ofNullable(m.group(4)).stream())
        .findFirst()
        .flatMap(LengthUnit::named);
  }

  private record Term(boolean minus, String text) {}

  private static List<Term> terms(String plain) {
    List<Term> terms = new ArrayList<>();
    Matcher m = TERM.matcher(plain);
    int from = 0;
    boolean minus = false;
    while (m.find()) {
      if (m.start() > 0) {
        terms.add(new Term(minus, plain.substring(from, m.start())));
      }
      minus = m.group().contains("-");
      from = m.end();
    }
    terms.add(new Term(minus, plain.substring(from)));
    return terms;
  }

  private static Optional<BigDecimal> term(String text) {
    Matcher dash = FEET_DASH_INCHES.matcher(text);
    if (dash.matches()) {
      return term(dash.group(1) + "' " + dash.group(2) + "\"");
    }
    BigDecimal sum = BigDecimal.ZERO;
    Matcher m = PIECE.matcher(text);
    int at = 0;
    LengthUnit last = null;
    while (at < text.stripTrailing().length()) {
      if (!m.find(at) || m.start() != at || m.end() == at) {
        return Optional.empty();
      }
      Optional<LengthUnit> unit = unit(m.group(4), last);
      Optional<BigDecimal> value = value(m.group(1), m.group(2), m.group(3));
      if (unit.isEmpty()
          || value.isEmpty()
          || (last != null && unit.get().mm().compareTo(last.mm()) >= 0)) {
        return Optional.empty();
      }
      sum = sum.add(value.get().multiply(unit.get().mm()));
      last = unit.get();
      at = m.end();
    }
    return last == null ? Optional.empty() : Optional.of(sum);
  }

  /** After feet a number without a unit is inches, as in {@code 24' 6}. */
  private static Optional<LengthUnit> unit(String word, LengthUnit last) {
    if (word == null) {
      return last == LengthUnit.FOOT ? Optional.of(LengthUnit.INCH) : Optional.empty();
    }
    return LengthUnit.named(word);
  }

  private static Optional<BigDecimal> value(String whole, String top, String bottom) {
    if (whole == null && top == null) {
      return Optional.empty();
    }
    BigDecimal v = whole == null ? BigDecimal.ZERO : new BigDecimal(whole.replace(',', '.'));
    if (top == null) {
      return Optional.of(v);
    }
    BigDecimal below = new BigDecimal(bottom);
    return below.signum() == 0
        ? Optional.empty()
        : Optional.of(v.add(new BigDecimal(top).divide(below, MathContext.DECIMAL128)));
  }

  private static Message refusal(String text, String part) {
    return part.strip().matches(NUMBER)
        ? Message.of("units.length-reader.has-no-unit", text, part.strip())
        : Message.of("units.length-reader.is-not-a-length", text);
  }

  /** Typographic primes, quotes and fractions in their typewriter form. */
  private static String plain(String text) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '\u2032', '\u2019', '\u2018', '\u00b4', '`' -> out.append('\'');
        case '\u2033', '\u201d', '\u201c' -> out.append('"');
        case '\u00bd' -> out.append(" 1/2");
        case '\u00bc' -> out.append(" 1/4");
        case '\u00be' -> out.append(" 3/4");
        case '\u215b' -> out.append(" 1/8");
        case '\u215c' -> out.append(" 3/8");
        case '\u215d' -> out.append(" 5/8");
        case '\u215e' -> out.append(" 7/8");
        case '\u2212', '\u2013' -> out.append('-');
        case '\u2044' -> out.append('/');
        case '\u00a0', '\u202f' -> out.append(' ');
        default -> out.append(c);
      }
    }
    return out.toString().replace("''", "\"");
  }
}
