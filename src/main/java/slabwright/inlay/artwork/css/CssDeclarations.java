package slabwright.inlay.artwork.css;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** CSS declarations as text and as a map from property to value. */
final class CssDeclarations {
  private CssDeclarations() {}

  static Map<String, String> parse(String text) {
    Map<String, String> map = new LinkedHashMap<>();
    for (String one : split(text, ';')) {
      int colon = one.indexOf(':');
      if (colon > 0) {
        String property = one.substring(0, colon).trim();
        String key = property.startsWith("--") ? property : property.toLowerCase(Locale.ROOT);
        map.put(key, one.substring(colon + 1).trim());
      }
    }
    return map;
  }

  static String print(Map<String, String> map) {
    return map.entrySet().stream()
        .filter(e -> !e.getKey().startsWith("--"))
        .map(e -> e.getKey() + ":" + e.getValue())
        .collect(Collectors.joining(";"));
  }

  /** Splits at a separator that stands outside quotes and brackets. */
  static List<String> split(String text, char separator) {
    List<String> parts = new ArrayList<>();
    int depth = 0;
    char quote = 0;
    int from = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (quote != 0) {
        quote = c == quote ? 0 : quote;
      } else if (c == '"' || c == '\'') {
        quote = c;
      } else if (c == '(' || c == '[') {
        depth++;
      } else if (c == ')' || c == ']') {
        depth--;
      } else if (c == separator && depth <= 0) {
        parts.add(text.substring(from, i));
        from = i + 1;
      }
    }
    parts.add(text.substring(from));
    return parts;
  }

  static String withoutComments(String css) {
    StringBuilder out = new StringBuilder();
    int i = 0;
    while (i < css.length()) {
      int start = css.indexOf("/*", i);
      if (start < 0) {
        break;
      }
      out.append(css, i, start).append(' ');
      int end = css.indexOf("*/", start + 2);
      i = end < 0 ? css.length() : end + 2;
    }
    return out.append(css.substring(i)).toString().replace("<!--", " ").replace("-->", " ");
  }
}
