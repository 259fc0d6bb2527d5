package slabwright.sheets;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import slabwright.units.QuarterHour;
import slabwright.units.UnitPair;
import slabwright.units.UnitSystem;
import slabwright.work.days.TimeSpan;

/** All values of some JSON files, to look printed numbers up in. */
final class PrintedNumbers {
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("EEE, MMM d, h:mm\u00a0a", Locale.ENGLISH);
  private static final String STATES = "MMM\u00a0d,\u00a0uuuu";
  private static final String NUMBER = "\\d[\\d,]*(?:\\.\\d+)?";
  private static final String UNIT =
      " ?(sq ft|m²|gal|fl oz|mL|L|mil|µm|kg|lb|cfm|m³/h|ppm|%|°F|°C|×|ft|mm|m)(?![\\w²³/])";

  private final List<Double> numbers = new ArrayList<>();

  /** Minutes until air is clear. */
  private final List<Double> clearing = new ArrayList<>();

  private final Set<String> moments = new HashSet<>();
  private final List<Duration> times = new ArrayList<>();
  private final StringBuilder words = new StringBuilder();

  PrintedNumbers(List<String> files) {
    try {
      for (String f : files) {
        take(new ObjectMapper().readTree(f));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void take(JsonNode node) {
    if (node.isNumber()) {
      numbers.add(node.doubleValue());
    } else if (node.isTextual()) {
      text(node.textValue());
    }
    if (node.path("minutes").isNumber()) {
      clearing.add(node.get("minutes").doubleValue());
    }
    if (node.path("starts").isTextual()) {
      LocalDateTime from = LocalDateTime.parse(node.get("starts").textValue());
      LocalDateTime to = LocalDateTime.parse(node.path("ends").textValue());
      moments.add(MOMENT.format(new TimeSpan(from, to).toldAsWork().end()));
    }
    if (node.isArray()) {
      numbers.add((double) node.size());
    }
    node.forEach(this::take);
  }

  private void text(String s) {
    words.append(s).append('\n');
    for (UnitSystem units : UnitSystem.values()) {
      words.append(UnitPair.only(s, units)).append('\n');
    }
    if (s.matches("-?PT[\\dHMS.]+")) {
      times.add(Duration.parse(s));
    } else if (s.matches("\\d{4}-\\d\\d-\\d\\dT[\\d:.]+")) {
      LocalDateTime exact = LocalDateTime.parse(s);
      moments.add(MOMENT.format(QuarterHour.up(exact)));
      moments.add(MOMENT.format(QuarterHour.down(exact)));
    } else if (s.matches("\\d+(\\.\\d+)?")) {
      numbers.add(Double.valueOf(s));
    }
  }

  private static final Pattern DAY =
      Pattern.compile("[A-Z][a-z]{2}\u00a0\\d+,\u00a0\\d{4}|\\d+\u00a0[A-Z][a-z]{2}\u00a0\\d{4}");

  /** A day is a value of its own: in the JSON it stands whole, as a date or in a sentence. */
  private String withoutKnownDays(String text) {
    return DAY.matcher(text).replaceAll(m -> isKnown(day(m.group())) ? "" : m.group());
  }

  private boolean isKnown(LocalDate day) {
    String said = DateTimeFormatter.ofPattern(STATES, Locale.ENGLISH).format(day);
    return words.indexOf("\n" + day + "\n") >= 0 || words.indexOf(said) >= 0;
  }

  private static LocalDate day(String printed) {
    String order = Character.isDigit(printed.charAt(0)) ? "d\u00a0MMM\u00a0uuuu" : STATES;
    return LocalDate.parse(printed, DateTimeFormatter.ofPattern(order, Locale.ENGLISH));
  }

  /** The numbers in a printed text that are not among the values. */
  List<String> missing(String text) {
    String printed = withoutKnownDays(text.replaceFirst("^[●→✓✕!?] ", ""));
    List<String> missing = new ArrayList<>();
    if (words.indexOf(printed) < 0) {
      look(printed, missing);
      missing.removeIf(n -> isQuoted(n, printed));
    }
    return missing;
  }

  /** Whether the words beside a number stand beside it in the JSON too: a wrapped sentence. */
  private boolean isQuoted(String number, String printed) {
    int at = printed.indexOf(number);
    String before = printed.substring(0, at).replaceFirst("^.* (?=\\S+ ?\\S*$)", "");
    String after = printed.substring(at + number.length()).replaceFirst("^(\\S* ?\\S*).*$", "$1");
    String tail = after.replaceFirst("[:;,.)]*( .*)?$", "");
    return (!before.isBlank() && words.indexOf(before + number + tail) >= 0)
        || (!after.isBlank() && words.indexOf(number + after) >= 0);
  }

  private void look(String printed, List<String> missing) {
    String rest =
        strip(
            printed,
            "[A-Z][a-z]{2}, [A-Z][a-z]{2} \\d+, \\d+:\\d\\d\u00a0[AP]M",
            moments::contains,
            missing);
    rest =
        strip(
            rest,
            "(?:\\d+ d )?(?:\\d+ h )?\\d+ min|\\d+ d \\d+ h|\\d+ [hd]\\b",
            this::isTime,
            missing);
    rest =
        strip(
            rest,
            "(?:(\\d+)′ )?(?:(\\d+)(?: (\\d+)/(\\d+))?|(\\d+)/(\\d+))″",
            this::isFeet,
            missing);
    rest = strip(rest, NUMBER + UNIT, this::isQuantity, missing);
    strip(rest, NUMBER, this::isBare, missing);
  }

  private static String strip(
      String text, String pattern, Predicate<String> known, List<String> missing) {
    List<String> found =
        Pattern.compile(pattern).matcher(text).results().map(MatchResult::group).toList();
    found.stream().filter(known.negate()).forEach(missing::add);
    return text.replaceAll(pattern, "");
  }

  /**
   * Times are printed to the minute where a coat is laid against the clock, else in quarter hours,
   * waits never less; those of the air are numbers of minutes.
   */
  private boolean isTime(String s) {
    long minutes = 0;
    for (MatchResult m : Pattern.compile("(\\d+) (d|h|min)").matcher(s).results().toList()) {
      long each =
          switch (m.group(2)) {
            case "d" -> 1440;
            case "h" -> 60;
            default -> 1;
          };
      minutes += each * Long.parseLong(m.group(1));
    }
    double seconds = minutes * 60.0;
    Duration printed = Duration.ofMinutes(minutes);
    return times.stream()
            .anyMatch(
                t ->
                    Math.abs(t.toMillis() / 1000.0 - seconds) <= 30.5
                        || QuarterHour.up(t).equals(printed)
                        || QuarterHour.nearest(t).equals(printed))
        || near(seconds / 60, 1, 0.5)
        || clearing.stream().anyMatch(n -> QuarterHour.up(seconds(n)).equals(printed));
  }

  private static Duration seconds(double minutes) {
    return Duration.ofSeconds((long) Math.ceil(minutes * 60));
  }

  private boolean isFeet(String s) {
    var m = Pattern.compile("(?:(\\d+)′ )?(?:(\\d+)(?: (\\d+)/(\\d+))?|(\\d+)/(\\d+))″").matcher(s);
    if (!m.matches()) {
      return false;
    }
    double inches = whole(m.group(1)) * 12 + whole(m.group(2));
    inches += m.group(3) == null ? 0 : whole(m.group(3)) / whole(m.group(4));
    inches += m.group(5) == null ? 0 : whole(m.group(5)) / whole(m.group(6));
    return near(inches, 1 / 25.4, 1 / 32.0);
  }

  private static double whole(String digits) {
    return digits == null ? 0 : Double.parseDouble(digits);
  }

  private boolean isQuantity(String s) {
    var m = Pattern.compile("(" + NUMBER + ")" + UNIT).matcher(s);
    if (!m.matches()) {
      return false;
    }
    double value = value(m.group(1));
    double half = half(m.group(1));
    if (m.group(2).equals("°F")) {
      return numbers.stream().anyMatch(c -> Math.abs(c * 9 / 5 + 32 - value) <= half + 1e-9);
    }
    return switch (m.group(2)) {
      case "sq ft" -> near(value, 1 / 92903.04, half);
      case "m²" -> near(value, 1e-6, half);
      case "gal" -> near(value, 1 / 3785411.784, half);
      case "lb" -> near(value, 1 / 0.45359237, half);
      case "fl oz" -> near(value, 128 / 3785411.784, half);
      case "mL" -> near(value, 1e-3, half);
      case "L" -> near(value, 1e-6, half);
      case "mil" -> near(value, 1 / 0.0254, half);
      case "µm" -> near(value, 1000, half);
      case "cfm" -> near(value, 1 / 0.028316846592, half);
      case "m³/h" -> near(value, 60, half);
      case "ppm" -> near(value, 1e6, half);
      case "%" -> near(value, 100, half);
      case "ft" -> near(value, 1 / 304.8, half);
      case "m" -> near(value, 1e-3, half);
      default -> near(value, 1, half);
    };
  }

  /** A column's head has the unit: an area, or nothing but a number. */
  private boolean isBare(String s) {
    double half = half(s);
    double value = value(s);
    return near(value, 1, half) || near(value, 1e-6, half) || near(value, 1 / 92903.04, half);
  }

  private boolean near(double value, double factor, double half) {
    return numbers.stream().anyMatch(n -> Math.abs(n * factor - value) <= half + 1e-6);
  }

  private static double value(String s) {
    return Double.parseDouble(s.replace(",", ""));
  }

  /** Half of the last printed digit. */
  private static double half(String s) {
    int dot = s.indexOf('.');
    return 0.5 * Math.pow(10, dot < 0 ? 0 : dot - s.length() + 1);
  }
}
