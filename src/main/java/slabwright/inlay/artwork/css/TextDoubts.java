package slabwright.inlay.artwork.css;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import slabwright.inlay.artwork.ArtworkWarning.Kind;
import slabwright.inlay.artwork.WarningCollector;
import slabwright.units.Message;

/**
 * What the elements of a text ask for that the SVG library sets otherwise than browsers, beside its
 * styles. Each was seen by laying the library's letters on a browser's.
 */
final class TextDoubts {
  private static final Set<String> OPAQUE = Set.of("", "1", "1.0", "100%", "inherit", "initial");
  private static final Set<String> PLACES = Set.of("x", "y", "dx", "dy");
  private static final Pattern OF_LETTERS = Pattern.compile("\\d(ex|ch)\\b");
  private static final Pattern NOTHING = Pattern.compile("\\s*[+-]?0*\\.?0*\\s*(%|[a-z]+)?\\s*");

  private final List<SvgElement> path;
  private final SvgElement e;
  private final WarningCollector notes;

  private TextDoubts(List<SvgElement> path, WarningCollector notes) {
    this.path = path;
    this.notes = notes;
    e = path.get(path.size() - 1);
  }

  /**
   * Says what the last of the elements asks for.
   *
   * @param path from the root to an element of a text
   */
  static void look(List<SvgElement> path, MatchedRules matched, WarningCollector notes) {
    TextDoubts doubts = new TextDoubts(path, notes);
    doubts.fading(matched);
    doubts.length();
    doubts.places();
    doubts.shift(matched);
    doubts.onPath();
    doubts.kerning();
    if (doubts.e.is("tref")) {
      // browsers draw none
      doubts.ask("tref", doubts.e.get("xlink:href"));
    }
  }

  /** The SVG library spreads wide letters more than narrow ones, and stretches a little too far. */
  private void length() {
    boolean stretched = e.get("lengthAdjust").equals("spacingAndGlyphs");
    if (!e.get("textLength").isBlank() && letters(e).strip().length() > (stretched ? 0 : 1)) {
      ask("textLength", e.get("textLength"));
    }
  }

  private void places() {
    PLACES.stream()
        .sorted()
        .filter(p -> OF_LETTERS.matcher(e.get(p)).find())
        .forEach(p -> ask(p, e.get(p)));
  }

  /** How far a small figure is set off is taken from the text around it in browsers. */
  private void shift(MatchedRules matched) {
    String by = said(path, matched, "baseline-shift");
    boolean sized = Stream.of("font-size", "font").anyMatch(p -> !said(path, matched, p).isEmpty());
    if (sized && Set.of("sub", "super").contains(by)) {
      ask("baseline-shift", by);
    }
  }

  /** What the last of the elements says of a property; empty when nothing. */
  private static String said(List<SvgElement> path, MatchedRules matched, String property) {
    SvgElement of = path.get(path.size() - 1);
    Map<String, String> said = new HashMap<>(Map.of(property, of.get(property)));
    said.putAll(matched.of(path));
    said.putAll(CssDeclarations.parse(of.get("style")));
    return said.get(property).strip();
  }

  private void onPath() {
    if (!e.is("textPath")) {
      return;
    }
    boolean measured =
        find(path.get(0), e.localLink()).filter(p -> !p.get("pathLength").isBlank()).isPresent();
    if (measured && !NOTHING.matcher(e.get("startOffset")).matches()) {
      ask("pathLength", e.get("startOffset"));
    }
    SvgElement outer = path.get(path.size() - 2);
    List<SvgNode> after =
        outer.children.subList(outer.children.indexOf(e) + 1, outer.children.size());
    for (SvgNode child : after) {
      String text = child instanceof SvgElement c ? letters(c) : ((SvgText) child).text();
      boolean another = child instanceof SvgElement c && c.is("textPath");
      if (!another && !text.isBlank()) {
        notes.add(
            Kind.TEXT_SET_OTHERWISE,
            Message.of("inlay.text-styles.after-path", text.strip().replaceAll("\\s+", " ")));
      }
    }
  }

  private static Stream<SvgElement> found(SvgElement from, String id) {
    return Stream.concat(
        Stream.of(from).filter(x -> x.get("id").equals(id)),
        from.elements().stream().flatMap(x -> found(x, id)));
  }

  private static Optional<SvgElement> find(SvgElement root, String id) {
    return id.isEmpty() ? Optional.empty() : found(root, id).findFirst();
  }

  /** The SVG library lets elements within a text fade by themselves, not with those around them. */
  private void fading(MatchedRules matched) {
    for (int i = path.size() - 1; i > 1 && !e.text().isBlank(); i--) {
      SvgElement outer = path.get(i - 1);
      if (outer.is("text")) {
        return;
      }
      String opacity = said(path.subList(0, i), matched, "opacity");
      if (!OPAQUE.contains(opacity)) {
        ask("opacity", opacity);
      }
    }
  }

  /** A style of CSS, which browsers don't take from an attribute. */
  private void kerning() {
    if (!e.text().isBlank() && path.stream().anyMatch(p -> p.get("font-kerning").equals("none"))) {
      ask("font-kerning", "none");
    }
  }

  private static String letters(SvgElement e) {
    StringBuilder all = new StringBuilder();
    e.walk(x -> all.append(x.text()));
    return all.toString();
  }

  private void ask(String property, String value) {
    String own = e.text().isBlank() ? letters(e) : e.text();
    String shown = own.isBlank() ? letters(path.get(path.size() - 2)) : own;
    notes.add(
        Kind.TEXT_SET_OTHERWISE,
        Message.of("inlay.text-styles.set-otherwise", TextStyles.shown(shown), property, value));
  }
}
