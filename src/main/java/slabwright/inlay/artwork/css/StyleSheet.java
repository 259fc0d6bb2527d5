package slabwright.inlay.artwork.css;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import slabwright.inlay.artwork.ArtworkWarning.Kind;
import slabwright.inlay.artwork.WarningCollector;
import slabwright.units.Message;

/** The rules of one {@code <style>} element, flattened to those that can matter here. */
final class StyleSheet {
  /** Marks the root element, as {@code :root} is unknown to the SVG library. */
  static final String ROOT_MARK = "data-root";

  private static final Pattern OUTER_SCOPE = Pattern.compile("(:root|svg|\\*|svg:root)");
  private static final Pattern NEVER_NOW = Pattern.compile(".*:(hover|focus|active|visited).*");
  private static final Pattern TOO_NEW = Pattern.compile(".*(::|:(?!root|first-child|link)|~).*");

  private record Rule(String selectors, Map<String, String> declarations) {}

  private final List<Rule> rules = new ArrayList<>();
  private final List<EmbeddedFont> fonts = new ArrayList<>();
  private final WarningCollector notes;

  StyleSheet(String css, WarningCollector notes) {
    this.notes = notes;
    read(CssDeclarations.withoutComments(css));
  }

  /** The fonts that the sheet carries within itself. */
  List<EmbeddedFont> fonts() {
    return List.copyOf(fonts);
  }

  /** Variables set for the whole graphic, or, failing that, anywhere in the sheet. */
  CssVariables variables() {
    Map<String, String> anywhere = new LinkedHashMap<>();
    Map<String, String> outer = new LinkedHashMap<>();
    for (Rule rule : rules) {
      rule.declarations.forEach(anywhere::putIfAbsent);
      for (String selector : rule.selectors.split(",", -1)) {
        if (OUTER_SCOPE.matcher(selector.trim()).matches()) {
          outer.putAll(rule.declarations);
        }
      }
    }
    return CssVariables.none().with(anywhere).with(outer);
  }

  /** Adds what may hold for elements. */
  void addTo(MatchedRules matched) {
    rules.forEach(r -> matched.add(r.selectors, r.declarations));
  }

  String rewritten(StyleRewriter rewriter, CssVariables variables) {
    StringBuilder out = new StringBuilder();
    for (Rule rule : rules) {
      String selectors = usable(rule.selectors);
      if (!selectors.isEmpty()) {
        Map<String, String> d =
            rewriter.rewrite(rule.declarations, variables.with(rule.declarations));
        out.append(selectors).append('{').append(CssDeclarations.print(d)).append("}\n");
      }
    }
    return out.toString();
  }

  private String usable(String selectors) {
    List<String> keep = new ArrayList<>();
    for (String one : CssDeclarations.split(selectors, ',')) {
      String s = one.trim();
      if (s.isEmpty() || NEVER_NOW.matcher(s).matches()) {
        continue;
      }
      if (TOO_NEW.matcher(s).matches()) {
        notes.add(Kind.STYLE_LEFT_OUT, Message.of("inlay.style-sheet.rule-left-out", s));
        continue;
      }
      keep.add(s.replace("svg:root", ":root").replace(":root", "[" + ROOT_MARK + "]"));
    }
    return String.join(",", keep);
  }

  private void read(String css) {
    int i = 0;
    while (i < css.length()) {
      int brace = css.indexOf('{', i);
      int semi = css.indexOf(';', i);
      if (semi >= 0 && (brace < 0 || semi < brace)) {
        statement(css.substring(i, semi).trim());
        i = semi + 1;
      } else if (brace < 0) {
        return;
      } else {
        int end = closing(css, brace);
        block(css.substring(i, brace).trim(), css.substring(brace + 1, end));
        i = end + 1;
      }
    }
  }

  private static int closing(String css, int brace) {
    int depth = 0;
    for (int i = brace; i < css.length(); i++) {
      if (css.charAt(i) == '{') {
        depth++;
      } else if (css.charAt(i) == '}' && --depth == 0) {
        return i;
      }
    }
    return css.length();
  }

  private static void statement(String text) {
    if (text.startsWith("@import")) {
      throw StyleRewriter.external(text.substring(7).trim());
    }
  }

  private void block(String prelude, String body) {
    String p = prelude.toLowerCase(Locale.ROOT);
    if (!p.startsWith("@")) {
      rules.add(new Rule(prelude, CssDeclarations.parse(withoutNested(body))));
    } else if (p.startsWith("@layer") || (p.startsWith("@media") && appliesToScreen(p))) {
      read(body);
    } else if (p.startsWith("@font-face")) {
      EmbeddedFont.of(CssDeclarations.parse(body)).ifPresent(fonts::add);
    } else if (!isQuiet(p)) {
      notes.add(Kind.STYLE_LEFT_OUT, Message.of("inlay.style-sheet.block-left-out", prelude));
    }
  }

  private static boolean isQuiet(String prelude) {
    return prelude.startsWith("@keyframes") || prelude.equals("@media print");
  }

  private static boolean appliesToScreen(String media) {
    return !media.contains("(") && (media.contains("screen") || media.contains("all"));
  }

  private String withoutNested(String body) {
    int brace = body.indexOf('{');
    if (brace < 0) {
      return body;
    }
    notes.add(Kind.STYLE_LEFT_OUT, Message.of("inlay.style-sheet.nested-rules-left-out"));
    int start = body.lastIndexOf(';', brace) + 1;
    int end = Math.min(body.length(), closing(body, brace) + 1);
    return withoutNested(body.substring(0, start) + body.substring(end));
  }
}
