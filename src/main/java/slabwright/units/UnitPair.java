package slabwright.units;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sentences that give a figure in both systems, such as {@code 14 °C (57 °F)}: what is computed
 * below the pages does not know in which units a job is told. A page shows its own alone, since a
 * crew that reads two numbers takes the wrong one.
 */
public final class UnitPair {
  private static final String NUMBER = "\\d[\\d.,/]*(?: [x×] \\d[\\d.,/]*)*";
  private static final String METRIC = NUMBER + " (?:°C|mm|cm|m|m²|cm²|mm²|m³/h|kg|g|L|mL|µm|mmHg)";
  private static final String FEET =
      "(?:" + NUMBER + " (?:°F|sq ft|sq in|ft|in|gal|fl oz|oz|lb|mil|cfm)|(?:\\d+′ )?\\d[\\d/ ]*″)";
  private static final Pattern METRIC_FIRST =
      Pattern.compile("(" + METRIC + ") \\((" + FEET + ")\\)");
  private static final Pattern FEET_FIRST =
      Pattern.compile("(" + FEET + ") \\((" + METRIC + ")\\)");

  private UnitPair() {}

  /** The text with one figure for each pair. */
  public static String only(String text, UnitSystem units) {
    if (text.indexOf('(') < 0) {
      return text;
    }
    boolean metric = units == UnitSystem.METRIC;
    String once = keep(METRIC_FIRST, text, metric ? 1 : 2);
    return keep(FEET_FIRST, once, metric ? 2 : 1);
  }

  private static String keep(Pattern pair, String text, int group) {
    return pair.matcher(text).replaceAll(m -> Matcher.quoteReplacement(m.group(group)));
  }
}
