package slabwright.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.FieldPosition;
import java.text.Format;
import java.text.MessageFormat;
import java.text.ParsePosition;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import slabwright.units.Message;
import slabwright.units.UnitPair;
import slabwright.units.UnitSystem;

/** The words of one language. */
public final class Words {
  private static final ResourceBundle.Control ASKED_LANGUAGE_ONLY =
      ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

  /** Numbers in Spanish as in the Americas: no page mixes a decimal comma with a point. */
  private static final Locale SPANISH = Locale.forLanguageTag("es-US");

  /** A path of a file is longer than anything else that is worth quoting whole. */
  private static final int LONGEST_QUOTED = 240;

  private static final List<Locale> WRITTEN = List.of(Locale.ENGLISH, SPANISH);

  private final Locale locale;
  private final Optional<UnitSystem> units;

  private Words(Locale locale, Optional<UnitSystem> units) {
    this.locale = locale;
    this.units = units;
  }

  /**
   * The same, showing one figure where a sentence gives it in both systems. English is spelled as
   * in the States, and as in Britain where a job is in metres.
   */
  public Words inUnits(UnitSystem system) {
    boolean british = locale.equals(Locale.ENGLISH) && system == UnitSystem.METRIC;
    return new Words(british ? Locale.UK : locale, Optional.of(system));
  }

  /**
   * The same in the same spelling, showing one figure where a sentence gives it in both systems.
   */
  public Words showing(UnitSystem system) {
    return new Words(locale, Optional.of(system));
  }

  /** The words of a language; English where a sentence has none in it. */
  public static Words of(Locale locale) {
    boolean spanish = locale.getLanguage().equals(SPANISH.getLanguage());
    return new Words(spanish ? SPANISH : locale, Optional.empty());
  }

  /** The words of a tag such as {@code es} or {@code es-MX}; none where nobody has written them. */
  public static Optional<Words> ofTag(String tag) {
    Locale asked = Locale.forLanguageTag(tag);
    return WRITTEN.stream().anyMatch(l -> l.getLanguage().equals(asked.getLanguage()))
        ? Optional.of(of(asked))
        : Optional.empty();
  }

  /** The words of the system's language; English where nobody has written that one. */
  public static Words ofSystem() {
    return ofTag(Locale.getDefault().toLanguageTag()).orElseGet(Words::english);
  }

  public static Words english() {
    return of(Locale.ENGLISH);
  }

  /** The language, for names of days and months. */
  public Locale locale() {
    return locale;
  }

  /** The language alone, such as {@code es}, as in file names. */
  public String language() {
    return locale.getLanguage();
  }

  /**
   * The sentence of a message.
   *
   * @throws IllegalStateException when no bundle has its key
   */
  public String say(Message message) {
    MessageFormat format = format(pattern(message.key()));
    String said = format.format(message.values().stream().map(this::value).toArray());
    return units.map(u -> UnitPair.only(said, u)).orElse(said);
  }

  /** The sentence of a key with its values, as {@link #say(Message)}. */
  public String say(String key, Object... values) {
    return say(new Message(key, List.of(values)));
  }

  /** The sentence of a message with a capital letter, to stand on a line of its own. */
  public String line(Message message) {
    String said = say(message);
    int first = said.isEmpty() ? 0 : said.offsetByCodePoints(0, 1);
    return said.substring(0, first).toUpperCase(locale) + said.substring(first);
  }

  /**
   * All words of a bundle as they stand there, for a library that makes its own sentences of them.
   *
   * @throws java.util.MissingResourceException when there is no such bundle
   */
  public ResourceBundle bundle(String name) {
    return ResourceBundle.getBundle("slabwright.words." + name, locale, ASKED_LANGUAGE_ONLY);
  }

  private Object value(Object v) {
    if (v instanceof Message m) {
      return say(m);
    }
    if (v instanceof String text) {
      return printable(text);
    }
    return v instanceof TemporalAccessor t ? told(t) : v;
  }

  /** A day, an hour, or both as the reader writes them: Dec 17 and 10:15 AM in the States. */
  private String told(TemporalAccessor t) {
    String pattern =
        t instanceof LocalTime
            ? this.say("units.message.hour-as-java-pattern")
            : t instanceof LocalDate
                ? this.say("units.message.day-as-java-pattern")
                : this.say("units.message.moment-as-java-pattern");
    return DateTimeFormatter.ofPattern(pattern, locale).format(t);
  }

  /** Without the signs that no reader sees but a terminal or a page may trip over. */
  private static String printable(String text) {
    return text.chars().anyMatch(Words::isHidden)
        ? text.codePoints()
            .map(c -> isHidden(c) ? ' ' : c)
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
            .toString()
        : text;
  }

  private static boolean isHidden(int c) {
    return Character.isISOControl(c) && c != '\n';
  }

  private String pattern(String key) {
    int dot = key.indexOf('.');
    try {
      return bundle(key.substring(0, Math.max(dot, 0))).getString(key);
    } catch (MissingResourceException e) {
      throw new IllegalStateException("there are no words for " + key, e);
    }
  }

  private MessageFormat format(String pattern) {
    MessageFormat format = new MessageFormat(pattern, locale);
    Format[] parts = format.getFormats();
    for (int i = 0; i < parts.length; i++) {
      if (parts[i] == null) {
        format.setFormat(i, new Plain());
      } else if (parts[i] instanceof DecimalFormat d && d.getClass() == DecimalFormat.class) {
        format.setFormat(i, new HalfUp(d));
      }
    }
    for (int i = 0; pattern.contains("{" + i); i++) {
      if (pattern.contains("\"{" + i + "}\"")) {
        format.setFormatByArgumentIndex(i, new Quoted());
      }
    }
    return format;
  }

  /** A value as it is, without the commas that MessageFormat puts between thousands. */
  private static final class Plain extends Format {
    private static final long serialVersionUID = 1;

    @Override
    public StringBuffer format(Object o, StringBuffer to, FieldPosition at) {
      return to.append(o);
    }

    @Override
    public Object parseObject(String text, ParsePosition at) {
      throw new UnsupportedOperationException();
    }
  }

  /** What a file says, between quotation marks: on one line, and no longer than one can read. */
  private static final class Quoted extends Format {
    private static final long serialVersionUID = 1;

    @Override
    public StringBuffer format(Object o, StringBuffer to, FieldPosition at) {
      String line = String.valueOf(o).replace('\n', ' ');
      int end = Math.min(line.length(), LONGEST_QUOTED);
      return line.length() <= LONGEST_QUOTED
          ? to.append(line)
          : to.append(line, 0, Character.isHighSurrogate(line.charAt(end - 1)) ? end - 1 : end)
              .append('…');
    }

    @Override
    public Object parseObject(String text, ParsePosition at) {
      throw new UnsupportedOperationException();
    }
  }

  /** A number rounded half up in its decimal digits, as people round. */
  private static final class HalfUp extends Format {
    private static final long serialVersionUID = 1;
    private final DecimalFormat format;

    HalfUp(DecimalFormat format) {
      this.format = format;
      format.setRoundingMode(RoundingMode.HALF_UP);
    }

    @Override
    public StringBuffer format(Object o, StringBuffer to, FieldPosition at) {
      boolean exact = o instanceof Double d && Double.isFinite(d);
      return format.format(exact ? BigDecimal.valueOf((Double) o) : o, to, at);
    }

    @Override
    public Object parseObject(String text, ParsePosition at) {
      throw new UnsupportedOperationException();
    }
  }
}
