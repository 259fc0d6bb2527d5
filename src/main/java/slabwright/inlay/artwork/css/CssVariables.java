package slabwright.inlay.artwork.css;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * CSS custom properties in scope somewhere in a graphic. The plain cases are right: set on the
 * root, on an element that encloses the use, or in the same rule.
 */
final class CssVariables {
  private static final int LONGEST = 10_000;
  private static final int MOST_STEPS = 200;

  private final Map<String, String> values;

  private CssVariables(Map<String, String> values) {
    this.values = values;
  }

  static CssVariables none() {
    return new CssVariables(Map.of());
  }

  /** These, overridden by the custom properties among the declarations. */
  CssVariables with(Map<String, String> declarations) {
    if (declarations.keySet().stream().noneMatch(k -> k.startsWith("--"))) {
      return this;
    }
    Map<String, String> merged = new HashMap<>(values);
    declarations.forEach(
        (key, value) -> {
          if (key.startsWith("--")) {
            merged.put(key, value);
          }
        });
    return new CssVariables(merged);
  }

  /** These, overridden by the others. */
  CssVariables with(CssVariables others) {
    return with(others.values);
  }

  /** The value with every {@code var()} replaced; empty when one has neither value nor fallback. */
  Optional<String> expand(String value) {
    String s = value;
    for (int step = 0; s.contains("var("); step++) {
      int start = s.lastIndexOf("var(");
      int end = closing(s, start + 3);
      if (end < 0 || step > MOST_STEPS || s.length() > LONGEST) {
        return Optional.empty();
      }
      Optional<String> inner = lookUp(s.substring(start + 4, end));
      if (inner.isEmpty()) {
        return Optional.empty();
      }
      s = s.substring(0, start) + inner.get() + s.substring(end + 1);
    }
    return Optional.of(s);
  }

  /** Where the bracket opened at {@code open} closes, brackets inside it passed; -1 if nowhere. */
  private static int closing(String s, int open) {
    int depth = 0;
    for (int k = open; k < s.length(); k++) {
      char c = s.charAt(k);
      depth += c == '(' ? 1 : c == ')' ? -1 : 0;
      if (depth == 0) {
        return k;
      }
    }
    return -1;
  }

  private Optional<String> lookUp(String inside) {
    int comma = inside.indexOf(',');
    String name = (comma < 0 ? inside : inside.substring(0, comma)).trim();
    String found = values.get(name);
    if (found != null) {
      return Optional.of(found);
    }
    return comma < 0 ? Optional.empty() : Optional.of(inside.substring(comma + 1).trim());
  }
}
