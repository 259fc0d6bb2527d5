package slabwright.inlay.artwork.css;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slabwright.inlay.artwork.ArtworkWarning.Kind;
import slabwright.inlay.artwork.WarningCollector;
import slabwright.units.Message;

/**
 * Rewrites the plain parts of SVG 2 and of today's CSS into SVG 1.1, and takes out what can't be
 * painted as outlines. Pictures and links out of the file are refused.
 */
public final class Svg11Rewriter {
  private static final Set<String> SILENT =
      Set.of(
          "script",
          "animate",
          "animateTransform",
          "animateMotion",
          "animateColor",
          "set",
          "metadata",
          "title",
          "desc",
          "view",
          "cursor",
          "feImage");

  /** Which kind of mask it is: by brightness, or {@code alpha}. */
  public static final String MASK_TYPE = "mask-type";

  private static final Set<String> GEOMETRY =
      Set.of("x", "y", "cx", "cy", "r", "rx", "ry", "width", "height", "d");

  /** Elements whose places are lists, a number for each letter. */
  private static final Set<String> LISTS = Set.of("text", "tspan", "tref", "altGlyph");

  private final WarningCollector notes;
  private final StyleRewriter rewriter;
  private final List<StyleSheet> sheets = new ArrayList<>();
  private final Set<String> ids;
  private final MatchedRules matched = new MatchedRules();
  private CssVariables sheetVariables = CssVariables.none();

  private Svg11Rewriter(SvgElement root, WarningCollector notes) {
    this.notes = notes;
    this.ids = ids(root);
    this.rewriter = new StyleRewriter(ids, PercentageBase.of(root), notes);
  }

  /** Rewrites all below the root, and gives the fonts that the graphic carries. */
  public static List<EmbeddedFont> rewrite(SvgElement root, WarningCollector notes) {
    unknown(root, notes);
    Svg11Rewriter m = new Svg11Rewriter(root, notes);
    root.attributes.put(StyleSheet.ROOT_MARK, "1");
    root.walk(m::plainLinks);
    m.prune(root);
    m.readSheets(root);
    UnseenPictures.takeOut(root, m.matched, notes);
    TextStyles.settle(root, m.matched, notes);
    m.rewrite(root, m.sheetVariables);
    m.maskTypes(new ArrayList<>(List.of(root)));
    PaintOrderRewriter.rewrite(root, m.matched, notes);
    return m.sheets.stream().flatMap(s -> s.fonts().stream()).toList();
  }

  private static Set<String> ids(SvgElement root) {
    Set<String> found = new HashSet<>();
    root.walk(e -> found.add(e.get("id")));
    return found;
  }

  private void plainLinks(SvgElement e) {
    String href = e.attributes.remove("href");
    if (href != null) {
      e.attributes.putIfAbsent("xlink:href", href);
    }
    String target = e.get("xlink:href").trim();
    if (e.is("image") && !target.startsWith("#")) {
      return;
    }
    if (e.is("a") || SILENT.contains(e.name)) {
      e.attributes.remove("xlink:href");
    } else if (!target.isEmpty() && !target.startsWith("#")) {
      throw StyleRewriter.external(target);
    }
  }

  /** Takes out what SVG 1.1 has no element for, before links are looked at. */
  private static void unknown(SvgElement e, WarningCollector notes) {
    e.children.removeIf(
        child ->
            child instanceof SvgElement c
                && !SILENT.contains(c.name)
                && !SvgNames.isKnown(c.name)
                && leftOut(c, notes));
    e.elements().forEach(child -> unknown(child, notes));
  }

  private static boolean leftOut(SvgElement e, WarningCollector notes) {
    if (SvgNames.isFlowedText(e.name)) {
      notes.add(Kind.PART_LEFT_OUT, Message.of("inlay.svg11-rewriter.flowed-text"));
    } else if (SvgNames.isMesh(e.name)) {
      notes.add(Kind.PART_LEFT_OUT, Message.of("inlay.svg11-rewriter.mesh"));
    } else if (!SvgNames.isEffect(e.name)) {
      notes.add(Kind.PART_LEFT_OUT, Message.of("inlay.svg11-rewriter.unknown-part", e.name));
    }
    return true;
  }

  private void prune(SvgElement e) {
    e.children.removeIf(
        child -> child instanceof SvgElement c && (SILENT.contains(c.name) || leadsNowhere(c)));
    for (SvgElement child : e.elements()) {
      if (child.is("foreignObject")) {
        // the next of a switch stands in for it
        e.children.remove(child);
        if (!e.is("switch") || e.elements().isEmpty()) {
          notes.add(Kind.PART_LEFT_OUT, Message.of("inlay.svg11-rewriter.other-language"));
        }
      } else {
        prune(child);
      }
    }
  }

  private boolean leadsNowhere(SvgElement e) {
    boolean lost = e.is("use") && !ids.contains(e.localLink());
    if (lost) {
      notes.add(
          Kind.PART_LEFT_OUT, Message.of("inlay.svg11-rewriter.copy-of-nothing", e.localLink()));
    }
    return lost;
  }

  private void readSheets(SvgElement root) {
    root.walk(
        e -> {
          if (e.is("style")) {
            StyleSheet sheet = new StyleSheet(e.text(), notes);
            sheets.add(sheet);
            sheet.addTo(matched);
            sheetVariables = sheetVariables.with(sheet.variables());
          }
        });
    CssVariables rootVariables = sheetVariables.with(CssDeclarations.parse(root.get("style")));
    int[] next = {0};
    root.walk(
        e -> {
          if (e.is("style")) {
            e.children.clear();
            e.children.add(new SvgText(sheets.get(next[0]++).rewritten(rewriter, rootVariables)));
            e.attributes.put("type", "text/css");
          }
        });
  }

  /** The kind of each mask as an attribute, as the SVG library knows no such property. */
  private void maskTypes(List<SvgElement> path) {
    SvgElement e = path.get(path.size() - 1);
    if (e.is("mask")) {
      Map<String, String> said = matched.of(path);
      said.putAll(CssDeclarations.parse(e.get("style")));
      Optional.ofNullable(said.get(MASK_TYPE)).ifPresent(t -> e.attributes.put(MASK_TYPE, t));
    }
    for (SvgElement child : e.elements()) {
      path.add(child);
      maskTypes(path);
      path.remove(path.size() - 1);
    }
  }

  private void rewrite(SvgElement e, CssVariables outer) {
    Map<String, String> style = CssDeclarations.parse(e.get("style"));
    CssVariables variables = outer.with(style);
    if (!style.isEmpty()) {
      Map<String, String> fresh = rewriter.rewrite(style, variables);
      promote(e, fresh);
      e.attributes.put("style", CssDeclarations.print(fresh));
    }
    presentation(e, variables);
    TransformRewriter.rewrite(e, notes);
    for (SvgElement child : e.elements()) {
      rewrite(child, variables);
    }
  }

  /** Geometry given as style is moved to where SVG 1.1 looks for it. */
  private static void promote(SvgElement e, Map<String, String> style) {
    for (String property : List.copyOf(style.keySet())) {
      boolean placed = property.equals("transform") || property.equals("transform-origin");
      if (placed || GEOMETRY.contains(property)) {
        String value = style.remove(property);
        e.attributes.put(property, value.replaceAll("^path\\(\\s*['\"]|['\"]\\s*\\)$", ""));
      }
    }
  }

  /** Null, which takes it out, when it can't be worked out. */
  private String length(String name, String value) {
    String plain = rewriter.plainLength(name, value);
    return plain.isEmpty() ? null : plain;
  }

  /** Takes out sizes that are none, and ends paths and points at their first error. */
  private void readable(SvgElement e) {
    for (String name : GEOMETRY) {
      String value = e.get(name);
      boolean list = name.equals("d") || LISTS.contains(e.name) || value.trim().equals("auto");
      if (!value.isEmpty() && !list && !SvgNumbers.isLength(value)) {
        e.attributes.remove(name);
        notes.add(
            Kind.PART_LEFT_OUT, Message.of("inlay.svg11-rewriter.no-size", e.name, name, value));
      }
    }
    cut(e, "d", SvgNumbers.path(e.get("d")));
    cut(e, "points", SvgNumbers.points(e.get("points")));
  }

  private void cut(SvgElement e, String name, String read) {
    if (e.attributes.containsKey(name)) {
      if (!SvgNumbers.isWhole(e.get(name), read)) {
        notes.add(Kind.PART_LEFT_OUT, Message.of("inlay.svg11-rewriter.broken-tail", e.name));
      }
      e.attributes.put(name, read);
    }
  }

  private void presentation(SvgElement e, CssVariables variables) {
    Map<String, String> mine = new LinkedHashMap<>();
    for (String name : List.copyOf(e.attributes.keySet())) {
      if (StyleRewriter.handles(name)) {
        mine.put(name, e.attributes.remove(name));
      } else if (GEOMETRY.contains(name) && !name.equals("d")) {
        e.attributes.computeIfPresent(name, (k, v) -> length(k, v));
      }
    }
    e.attributes.putAll(rewriter.rewrite(mine, variables));
    readable(e);
    GeometryRewriter.rewrite(e);
    if (e.is("marker") && e.get("orient").equals("auto-start-reverse")) {
      e.attributes.put("orient", "auto");
      notes.add(Kind.STYLE_LEFT_OUT, Message.of("inlay.svg11-rewriter.arrow-head-at-start"));
    }
  }
}
