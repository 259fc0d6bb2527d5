package slabwright.inlay.artwork.css;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One selector of a style rule. It matches where CSS does, and beyond that: what depends on
 * brothers and sisters is taken as true, so that what it links to is never counted too low.
 */
final class CssSelector {
  private static final Pattern TOKEN =
      Pattern.compile(
          "\\s*([>+~])\\s*|\\s+|([\\w*-]+)|#([\\w-]+)|\\.([\\w-]+)|\\[([^\\]]*)\\]|:[\\w-]+(\\([^)]*\\))?");
  private static final char WITHIN = ' ';
  private static final char CHILD = '>';

  /** What one element must be; {@code before} is how it stands to the part before it. */
  private static final class Part {
    private final char before;
    private String tag = "*";
    private final List<String> ids = new ArrayList<>();
    private final List<String> classes = new ArrayList<>();
    private final List<String> attributes = new ArrayList<>();

    Part(char before) {
      this.before = before;
    }

    boolean matches(SvgElement e) {
      List<String> own = List.of(e.get("class").trim().split("\\s+", -1));
      return (tag.equals("*") || e.is(tag))
          && ids.stream().allMatch(e.get("id")::equals)
          && own.containsAll(classes)
          && attributes.stream().allMatch(a -> has(e, a));
    }

    private static boolean has(SvgElement e, String attribute) {
      int equal = attribute.indexOf('=');
      if (equal < 0) {
        return e.attributes.containsKey(attribute.trim());
      }
      String name = attribute.substring(0, equal).trim();
      boolean exact = !name.isEmpty() && Character.isLetterOrDigit(name.charAt(name.length() - 1));
      String value = attribute.substring(equal + 1).trim().replaceAll("^['\"]|['\"]$", "");
      return !exact || e.get(name).equals(value);
    }
  }

  private final List<Part> parts = new ArrayList<>();

  /** A selector without commas. */
  CssSelector(String text) {
    Part part = new Part(WITHIN);
    Matcher m = TOKEN.matcher(text.trim());
    while (m.lookingAt()) {
      if (m.group(2) != null) {
        part.tag = m.group(2);
      } else if (m.group(3) != null) {
        part.ids.add(m.group(3));
      } else if (m.group(4) != null) {
        part.classes.add(m.group(4));
      } else if (m.group(5) != null) {
        part.attributes.add(m.group(5));
      } else if (m.group(1) != null || m.group().isBlank()) {
        parts.add(part);
        part = new Part(m.group(1) == null ? WITHIN : m.group(1).charAt(0));
      }
      m.region(m.end(), m.regionEnd());
    }
    parts.add(part);
  }

  /** What any element it matches has: {@code #id}, {@code .class} or a name; {@code *} for all. */
  String key() {
    Part last = parts.get(parts.size() - 1);
    if (!last.ids.isEmpty()) {
      return "#" + last.ids.get(0);
    }
    return last.classes.isEmpty() ? last.tag : "." + last.classes.get(0);
  }

  /** Whether it matches the last element of a path from the root. */
  boolean matches(List<SvgElement> path) {
    return matches(parts.size() - 1, path, path.size() - 1);
  }

  private boolean matches(int part, List<SvgElement> path, int at) {
    if (!parts.get(part).matches(path.get(at))) {
      return false;
    }
    char before = parts.get(part).before;
    if (part == 0 || (before != WITHIN && before != CHILD)) {
      return true;
    }
    for (int above = at - 1; above >= 0; above--) {
      if (matches(part - 1, path, above)) {
        return true;
      }
      if (before == CHILD) {
        return false;
      }
    }
    return false;
  }
}
