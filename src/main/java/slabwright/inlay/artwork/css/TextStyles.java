package slabwright.inlay.artwork.css;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
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

  /** No unit that is taken from a font's small letters or digits: browsers measure those. */
  private static final String NO_LETTERS_HEIGHT = "(?!.*\\d(ex|ch|ic|cap|lh|rlh)\\b).*";

  /**
   * All of a font in one: styles and weights that are drawn, a size, perhaps a height, families.
   */
  private static final String PLAIN_FONT =
      "(?:(?:normal|italic|oblique|bold|bolder|400|700)\\s+)*"
          + "(?:larger|smaller|[\\d.]+(?:px|pt|pc|mm|cm|in|em|rem|q|%))(?:\\s*/\\s*\\S+)?\\s.*";

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
          drawn("direction", "ltr"),
          drawn("kerning", ""),
          drawn("font", PLAIN_FONT),
          drawn("font-size", NO_LETTERS_HEIGHT),
          drawn("letter-spacing", NO_LETTERS_HEIGHT),
          drawn("word-spacing", NO_LETTERS_HEIGHT),
          drawn("baseline-shift", NO_LETTERS_HEIGHT),
          drawn("text-transform", "uppercase|lowercase|capitalize"),
          drawn("white-space", "pre|pre-wrap|pre-line|nowrap|break-spaces"));

  /** These hold for their element alone. */
  private static final Set<String> OWN =
      Set.of("inline-size", "shape-inside", "shape-subtract", "alignment-baseline");

  private static final int LONGEST_SHOWN = 40;
  private static final int MOST_TURNED = 2000;

  private final MatchedRules matched;
  private final WarningCollector notes;

  /** Which letters' case is asked for, by element. */
  private final IdentityHashMap<SvgElement, String> cases = new IdentityHashMap<>();

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
      TextDoubts.look(path, matched, notes);
      cases.put(e, style.getOrDefault("text-transform", "none"));
    }
    Map<String, String> inner = new HashMap<>(style);
    // a line's own measures hold for all that stands in it
    OWN.stream().filter(p -> !text).forEach(inner::remove);
    for (SvgElement child : e.elements()) {
      path.add(child);
      visit(path, inner);
      path.remove(path.size() - 1);
    }
    if (e.is("text")) {
      transform(e, new boolean[1]);
    }
  }

  /** In the order of reading: a word may run over pieces and over elements. */
  private void transform(SvgElement e, boolean[] inWord) {
    e.children.replaceAll(
        child -> {
          if (child instanceof SvgText t) {
            return new SvgText(transformed(t.text(), cases.getOrDefault(e, "none"), inWord));
          }
          if (child instanceof SvgElement inner && cases.containsKey(inner)) {
            transform(inner, inWord);
          }
          return child;
        });
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
                Message.of("inlay.text-styles.set-otherwise", shown(e.text()), property, value));
          }
        });
  }

  static String shown(String letters) {
    String text = letters.strip().replaceAll("\\s+", " ");
    return text.length() > LONGEST_SHOWN ? text.substring(0, LONGEST_SHOWN) + "…" : text;
  }

  private static void change(SvgElement e, Map<String, String> style) {
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
    String capitalized = capitalized(text, inWord);
    return switch (how) {
      case "uppercase" -> text.toUpperCase(Locale.ROOT);
      case "lowercase" -> text.toLowerCase(Locale.ROOT);
      case "capitalize" -> capitalized;
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
