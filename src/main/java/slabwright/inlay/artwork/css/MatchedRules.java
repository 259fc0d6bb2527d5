package slabwright.inlay.artwork.css;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Which style rules hold for an element, in the order they stand. */
final class MatchedRules {
  private record Entry(int order, CssSelector selector, Map<String, String> declarations) {}

  private final Map<String, List<Entry>> byKey = new HashMap<>();
  private int rules;

  /** Adds a rule; {@code selectors} may be several with commas between. */
  void add(String selectors, Map<String, String> declarations) {
    for (String one : CssDeclarations.split(selectors, ',')) {
      CssSelector selector = new CssSelector(one);
      byKey
          .computeIfAbsent(selector.key(), k -> new ArrayList<>())
          .add(new Entry(rules++, selector, declarations));
    }
  }

  /** How many there are, each selector of a list by itself. */
  int count() {
    return rules;
  }

  /** What the rules say of the last element of a path from the root; later rules win. */
  Map<String, String> of(List<SvgElement> path) {
    Map<String, String> all = new LinkedHashMap<>();
    if (byKey.isEmpty()) {
      return all;
    }
    SvgElement e = path.get(path.size() - 1);
    Stream<String> classes = Stream.of(e.get("class").trim().split("\\s+", -1)).map(c -> "." + c);
    Stream.concat(Stream.of("*", e.name, "#" + e.get("id")), classes)
        .distinct()
        .flatMap(key -> byKey.getOrDefault(key, List.of()).stream())
        .sorted((a, b) -> Integer.compare(a.order, b.order))
        .filter(entry -> entry.selector.matches(path))
        .forEach(entry -> all.putAll(entry.declarations));
    return all;
  }
}
