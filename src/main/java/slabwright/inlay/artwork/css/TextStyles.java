package slabwright.inlay.artwork.css;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import slabwright.inlay.artwork.ArtworkWarning.Kind;
import slabwright.inlay.artwork.WarningCollector;
import slabwright.units.Message;

/**
 * How letters are to be set. What is easily done is done here ({@code text-transform}, spaces that
 * are kept); what a browser does and the SVG library doesn't (vertical lines, lines that break by
 * themselves, small capitals, weights and widths between) is said for each text, so that nobody
 * cuts it unseen.
 */
final class TextStyles {
  private static final Set<String> TEXTS = Set.of("text", "tspan", "textPath", "tref", "a");
  private static final Set<String> PLAIN =
      Set.of("", "normal", "none", "auto", "inherit", "initial");

  /** By property, the values that are drawn as asked, beside the plain ones. */
  private static final Map<String, Pattern> DRAWN =
      Map.ofEntries(
          drawn("writing-mode", "horizontal-tb|lr-tb|lr|rl-tb|rl"),
          drawn("inline-size", "0(px)?"),
          drawn("shape-inside", ""),
          drawn("shape-subtract", ""),
          drawn("font-variant", "no-common-ligatures"),
          drawn("font-variant-ligatures", "common-ligatures|no-common-ligatures"),
          drawn("text-decoration", ""),
          drawn("text-decoration-line", ""),
          drawn("font-variant-caps", ""),
          drawn("font-variant-position", ""),
          drawn("font-variant-numeric", ""),
          drawn("font-variant-alternates", ""),
          drawn("font-variant-east-asian", ""),
          drawn("font-feature-settings", ""),
          drawn("font-variation-settings", ""),
          drawn("font-stretch", "100%"),
          drawn("font-width", "100%"),
          drawn("font-size-adjust", ""),
          drawn("font-weight", "400|700|bold|bolder"),
          drawn("dominant-baseline", "alphabetic"),
          drawn("alignment-baseline", "alphabetic|baseline"),
          drawn("text-transform", "uppercase|lowercase|capitalize"),
          drawn("white-space", "pre|pre-wrap|pre-line|nowrap|break-spaces"));

  /** These hold for their element alone. */
  private static final Set<String> OWN =
      Set.of("inline-size", "shape-inside", "shape-subtract", "alignment-baseline");

  private static final int LONGEST_SHOWN = 40;
  private static final int MOST_TURNED = 2000;

  private final MatchedRules matched;
  private final WarningCollector notes;

  private TextStyles(MatchedRules matched, WarningCollector notes) {
    this.matched = matched;
    this.notes = notes;
  }

  private static Map.Entry<String, Pattern> drawn(String property, String values) {
    return Map.entry(property, Pattern.compile(values));
  }

  static void settle(SvgElement root, MatchedRules matched, WarningCollector notes) {
    new TextStyles(matched, notes).visit(new ArrayList<>(List.of(root)), Map.of());
  }

  private void visit(List<SvgElement> path, Map<String, String> outer) {
    SvgElement e = path.get(path.size() - 1);
    Map<String, String> style = style(path, outer);
    boolean text = TEXTS.contains(e.name) && path.stream().anyMatch(p -> p.is("text"));
    if (text && !e.text().isBlank()) {
      check(e, style);
      change(e, style);
    }
    if (text) {
      turnAll(e);
    }
    Map<String, String> inner = new HashMap<>(style);
    // a line's own measures hold for all that stands in it
    OWN.stream().filter(p -> !text).forEach(inner::remove);
    for (SvgElement child : e.elements()) {
      path.add(child);
      visit(path, inner);
      path.remove(path.size() - 1);
    }
  }

  private Map<String, String> style(List<SvgElement> path, Map<String, String> outer) {
    SvgElement e = path.get(path.size() - 1);
    Map<String, String> said = new LinkedHashMap<>();
    DRAWN.keySet().stream().filter(p -> !e.get(p).isEmpty()).forEach(p -> said.put(p, e.get(p)));
    said.putAll(matched.of(path));
    said.putAll(CssDeclarations.parse(e.get("style")));
    Map<String, String> all = new HashMap<>(outer);
    said.forEach(
        (property, value) -> {
          String plain = value.replaceFirst("\\s*!\\s*important\\s*$", "").trim();
          if (DRAWN.containsKey(property) && !plain.equals("inherit")) {
            all.put(property, plain.toLowerCase(Locale.ROOT));
          }
        });
    return all;
  }

  private void check(SvgElement e, Map<String, String> style) {
    style.forEach(
        (property, value) -> {
          if (!PLAIN.contains(value) && !DRAWN.get(property).matcher(value).matches()) {
            notes.add(
                Kind.TEXT_SET_OTHERWISE,
                Message.of("inlay.text-styles.set-otherwise", shown(e), property, value));
          }
        });
    boolean spread = !e.get("textLength").isBlank() && e.text().strip().length() > 2;
    if (spread && !e.get("lengthAdjust").equals("spacingAndGlyphs")) {
      // the SVG library spreads wide letters more than narrow ones
      notes.add(
          Kind.TEXT_SET_OTHERWISE,
          Message.of(
              "inlay.text-styles.set-otherwise", shown(e), "textLength", e.get("textLength")));
    }
  }

  private static String shown(SvgElement e) {
    String text = e.text().strip().replaceAll("\\s+", " ");
    return text.length() > LONGEST_SHOWN ? text.substring(0, LONGEST_SHOWN) + "…" : text;
  }

  private static void change(SvgElement e, Map<String, String> style) {
    String how = style.getOrDefault("text-transform", "none");
    // a text may be kept in pieces, and a word run over them
    boolean[] inWord = {false};
    e.children.replaceAll(
        child ->
            child instanceof SvgText t ? new SvgText(transformed(t.text(), how, inWord)) : child);
    if (Stream.of("font-variant", "font-variant-ligatures")
        .map(p -> style.getOrDefault(p, ""))
        .anyMatch(v -> v.equals("none") || v.equals("no-common-ligatures"))) {
      // letters with a distance of their own don't join; this one is too small to be seen
      e.attributes.putIfAbsent("letter-spacing", "0.00001");
    }
    String space = style.getOrDefault("white-space", "normal");
    if (space.startsWith("pre") || space.equals("break-spaces")) {
      e.attributes.put("xml:space", "preserve");
    }
  }

  /** The last turn holds for all letters that follow; the SVG library leaves them upright. */
  private static void turnAll(SvgElement e) {
    String[] turns = e.get("rotate").strip().split("[\\s,]+", -1);
    if (!turns[0].isEmpty()) {
      int[] letters = {0};
      e.walk(inside -> letters[0] += inside.text().length());
      String more = " " + turns[turns.length - 1];
      int lacking = Math.max(0, Math.min(MOST_TURNED, letters[0]) - turns.length);
      e.attributes.put("rotate", String.join(" ", turns) + more.repeat(lacking));
    }
  }

  private static String transformed(String text, String how, boolean[] inWord) {
    return switch (how) {
      case "uppercase" -> text.toUpperCase(Locale.ROOT);
      case "lowercase" -> text.toLowerCase(Locale.ROOT);
      case "capitalize" -> capitalized(text, inWord);
      default -> text;
    };
  }

  private static String capitalized(String text, boolean[] inWord) {
    StringBuilder out = new StringBuilder();
    for (int c : text.codePoints().toArray()) {
      boolean letter = Character.isLetterOrDigit(c) || (inWord[0] && (c == '\'' || c == '’'));
      out.appendCodePoint(letter && !inWord[0] ? Character.toTitleCase(c) : c);
      inWord[0] = letter;
    }
    return out.toString();
  }
}
