package slabwright.inlay.artwork.css;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slabwright.units.SortedCopy;

/**
 * What elements link to by properties that are handed down: paints and markers, by attribute, style
 * or rule. Ids by property.
 */
final class InheritedLinks {
  private static final Pattern URL = Pattern.compile("url\\(\\s*['\"]?#([^'\")]+)");
  private static final Set<String> HANDED_DOWN =
      Set.of("fill", "stroke", "marker-start", "marker-mid", "marker-end");
  private static final Set<String> OWN = Set.of("mask", "clip-path", "filter");

  private final MatchedRules rules;
  private final Map<SvgElement, Map<String, String>> said = new HashMap<>();
  private final Map<SvgElement, Map<String, String>> around = new HashMap<>();

  InheritedLinks(SvgElement root, MatchedRules rules) {
    this.rules = rules;
    read(new ArrayList<>(List.of(root)), Map.of());
  }

  private void read(List<SvgElement> path, Map<String, String> outer) {
    SvgElement e = path.get(path.size() - 1);
    Map<String, String> all = new HashMap<>(e.attributes);
    all.putAll(rules.of(path));
    all.putAll(CssDeclarations.parse(e.get("style")));
    said.put(e, links(all));
    around.put(e, outer);
    Map<String, String> inner = handedDown(e, outer);
    for (SvgElement child : e.elements()) {
      path.add(child);
      read(path, inner);
      path.remove(path.size() - 1);
    }
  }

  /** Every property that matters here that says something; "" where it says no link. */
  private static Map<String, String> links(Map<String, String> declarations) {
    Map<String, String> found = new HashMap<>();
    String marker = declarations.get("marker");
    for (String property : HANDED_DOWN) {
      String value = declarations.getOrDefault(property, property.startsWith("m") ? marker : null);
      if (value != null && !value.trim().equals("inherit")) {
        found.put(property, id(value));
      }
    }
    for (String property : OWN) {
      if (declarations.containsKey(property)) {
        found.put(property, id(declarations.get(property)));
      }
    }
    return found;
  }

  private static String id(String value) {
    Matcher m = URL.matcher(value);
    return m.find() ? m.group(1) : "";
  }

  /** What the element's own parents hand down to it where it stands in the file. */
  Map<String, String> around(SvgElement e) {
    return around.getOrDefault(e, Map.of());
  }

  /** What holds for the element itself and is handed down to what is in it. */
  Map<String, String> handedDown(SvgElement e, Map<String, String> outer) {
    Map<String, String> all = new HashMap<>(outer);
    said.getOrDefault(e, Map.of())
        .forEach(
            (property, id) -> {
              if (HANDED_DOWN.contains(property)) {
                all.put(property, id);
              }
            });
    all.values().removeIf(String::isEmpty);
    return SortedCopy.of(all);
  }

  /** Its mask, clip and filter. */
  List<String> own(SvgElement e) {
    return said.getOrDefault(e, Map.of()).entrySet().stream()
        .filter(entry -> OWN.contains(entry.getKey()) && !entry.getValue().isEmpty())
        .map(Map.Entry::getValue)
        .toList();
  }
}
