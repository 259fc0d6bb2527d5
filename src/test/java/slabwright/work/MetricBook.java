package slabwright.work;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slabwright.work.book.BookField;
import slabwright.work.book.BookForm;
import slabwright.work.book.ShopBookText;

/** A shop book written anew with every value in metric units. */
final class MetricBook {
  private record To(double factor, String unit) {}

  private static final Map<String, To> UNITS = new LinkedHashMap<>();

  static {
    double gallon = 3.785411784;
    double foot2 = 0.09290304;
    UNITS.put("ft2/gal", new To(foot2 / gallon, "m2/L"));
    UNITS.put("oz/gal", new To(28.349523125 / gallon, "g/L"));
    UNITS.put("floz", new To(gallon / 128 * 1000, "mL"));
    UNITS.put("gal", new To(gallon, "L"));
    UNITS.put("qt", new To(gallon / 4, "L"));
    UNITS.put("ft2/h", new To(foot2, "m2/h"));
    UNITS.put("ft/h", new To(0.3048, "m/h"));
    UNITS.put("cfm", new To(0.028316846592 * 60, "m3/h"));
    UNITS.put("lb", new To(0.45359237, "kg"));
    UNITS.put("in", new To(25.4, "mm"));
    UNITS.put("ft2", new To(foot2, "m2"));
  }

  private static final Pattern VALUE =
      Pattern.compile("(\\d+(?:\\.\\d+)?) (" + String.join("|", UNITS.keySet()) + "|F)\\b(?!/)");

  private MetricBook() {}

  static ShopBookText of(ShopBookText book) {
    ShopBookText metric = book;
    for (BookForm.Section s : BookForm.of(book).sections()) {
      for (BookField f : s.fields()) {
        if (!f.isMissing()) {
          metric = metric.with(f.kind(), f.section(), f.key(), converted(f.value()));
        }
      }
    }
    return metric;
  }

  static String converted(String value) {
    Matcher m = VALUE.matcher(value);
    StringBuilder out = new StringBuilder();
    while (m.find()) {
      double number = Double.parseDouble(m.group(1));
      To to = UNITS.get(m.group(2));
      String text =
          to == null
              ? plain((number - 32) * 5 / 9) + " C"
              : plain(number * to.factor()) + " " + to.unit();
      m.appendReplacement(out, Matcher.quoteReplacement(text));
    }
    return m.appendTail(out).toString();
  }

  private static String plain(double v) {
    return new BigDecimal(v).round(new MathContext(16)).stripTrailingZeros().toPlainString();
  }
}
